import { unitOnScreen } from './showQuantity.ts';
import { zoneName, zoneNumber } from '../prep/zoneNames.ts';
import type { RecordId } from '../../model/cell.ts';
import { lineName, rowName, thingName, titleOf } from '../../exchange/lineNames.ts';
import { onFloor, recordOf, type Doc, type Held } from '../../model/doc.ts';
import { isRecordId } from '../../model/id.ts';
import { textInUnits } from '../../model/textInUnits.ts';
import type { Units } from '../../model/units.ts';
import type { Line, Term } from '../../takeoff/line.ts';
import type { TableRow } from '../../takeoff/lineTable.ts';
import { takeoffText, whyText } from '../../words/whyWords.ts';

/** What people call the lines, rows, zones and terms of one floor's takeoff. */
export interface Names {
  /** A line with its zone, for sentences. */
  line(line: Line): string;
  /** A line under the heading of its zone. */
  work(line: Pick<Line, 'key' | 'code'>): string;
  /** A row of the table: passes of a recipe stand in one row, so it names only what tells rows apart. */
  row(row: TableRow): string;
  /** A zone as its column is headed. */
  zone(zone: Line['zone']): string;
  term(term: Term): string;
}

export function namesIn(doc: Doc, floor: RecordId | null, units: Units): Names {
  function zoneRecord(zone: string): Held<'zone'> | null {
    if (zone !== 'rest') return recordOf(doc, 'zone', zone as RecordId);
    const zones = floor ? onFloor(doc, 'zone', floor) : [];
    return zones.find((each) => each.covers === 'rest') ?? null;
  }
  function zonePhrase(zone: string): string {
    const record = zoneRecord(zone);
    return record ? whyText.zone(zoneNumber(record)) : whyText.rest;
  }
  const thing = (part: string): string => thingName(doc, part, units);

  return {
    line: (line) =>
      [unitOnScreen(lineName(doc, line, units)), ...(line.zone === null ? [] : [zonePhrase(line.zone)])].join(', '),
    work: (line) => unitOnScreen(lineName(doc, line, units)),
    row: (row) => unitOnScreen(rowName(doc, row, units)),
    zone(zone) {
      if (zone === null) return whyText.whole;
      const record = zoneRecord(zone);
      if (!record) return takeoffText.rest;
      return record.name ? `${zoneNumber(record)} ${record.name}` : zoneName(record);
    },
    term({ name }) {
      // Terms that are lines of their own carry a key: code, zone, and what it is of.
      const [code = '', zone, ...apart] = name.split('|');
      if (zone === undefined) return sentenceStart(isRecordId(name) ? thing(name) : textInUnits(thing(name), units));
      return [titleOf(code, units), ...apart.map(thing), ...(zone === 'floor' ? [] : [zonePhrase(zone)])].join(', ');
    },
  };
}

function sentenceStart(text: string): string {
  return unitOnScreen(text.charAt(0).toUpperCase() + text.slice(1));
}
