import { codeWords } from './codeWords.ts';
import { unitOnScreen } from './showQuantity.ts';
import { textInUnits } from './textInUnits.ts';
import { passName } from '../prep/passName.ts';
import { zoneName, zoneNumber } from '../prep/zoneNames.ts';
import type { RecordId } from '../../model/cell.ts';
import { onFloor, recordOf, recordsOf, type Doc, type Held } from '../../model/doc.ts';
import { isRecordId } from '../../model/id.ts';
import type { Units } from '../../model/units.ts';
import type { Line, Term } from '../../takeoff/line.ts';
import type { TableRow } from '../../takeoff/lineTable.ts';
import { standInMethod } from '../../takeoff/prep.ts';
import { abrasiveOf } from '../../takeoff/rates/abrasives.ts';
import { findingRowOf } from '../../takeoff/rates/findings.ts';
import { methodOf } from '../../takeoff/rates/methods.ts';
import { kindWords } from '../../words/orderWords.ts';
import { takeoffText, whyText } from '../../words/whyWords.ts';

/** What people call the lines, rows, zones and terms of one floor's takeoff. */
export interface Names {
  /** A line with its zone, for sentences. */
  line(line: Line): string;
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
  const title = (code: string): string => textInUnits(codeWords(code), units);
  const of = (parts: readonly string[]): string[] => parts.map((part) => nameOf(part, doc));

  return {
    line({ key, code, zone }) {
      // A figure that adds lines up has all their keys: it is named by its code alone.
      const apart = key.includes(' + ') ? [] : key.split('|').slice(2);
      return [title(code), ...of(apart), ...(zone === null ? [] : [zonePhrase(zone)])].join(', ');
    },
    row: ({ key, code }) => [title(code), ...of(key.split('|').slice(1))].join(', '),
    zone(zone) {
      if (zone === null) return whyText.whole;
      const record = zoneRecord(zone);
      if (!record) return takeoffText.rest;
      return record.name ? `${zoneNumber(record)} ${record.name}` : zoneName(record);
    },
    term({ name }) {
      // Terms that are lines of their own carry a key: code, zone, and what it is of.
      const [code = '', zone, ...apart] = name.split('|');
      if (zone === undefined)
        return sentenceStart(isRecordId(name) ? nameOf(name, doc) : textInUnits(nameOf(name, doc), units));
      return [title(code), ...of(apart), ...(zone === 'floor' ? [] : [zonePhrase(zone)])].join(', ');
    },
  };
}

/** The number people see on a record, the term of a method or finding, or the word as it is. */
function nameOf(part: string, doc: Doc): string {
  const standIn = standInMethod(part);
  if (standIn !== null) return methodOf(standIn)?.term ?? standIn;
  if (!isRecordId(part))
    return methodOf(part)?.term ?? findingRowOf(part)?.term ?? abrasiveOf(part)?.term ?? kindWords[part] ?? part;
  const pass = recordOf(doc, 'pass', part);
  if (pass) return passText(doc, pass);
  const { name, tag } = (doc.get(part) ?? {}) as { readonly name?: string; readonly tag?: string };
  return tag ?? name ?? part;
}

/** Passes of one recipe may have the same abrasive: then their number tells them apart. */
function passText(doc: Doc, pass: Held<'pass'>): string {
  const name = passName(pass.method, pass.abrasive ?? null);
  const all = recordsOf(doc, 'pass').filter((other) => other.recipe === pass.recipe);
  return all.length > 1 ? whyText.pass(all.findIndex((other) => other.id === pass.id) + 1, name) : name;
}

function sentenceStart(text: string): string {
  return unitOnScreen(text.charAt(0).toUpperCase() + text.slice(1));
}
