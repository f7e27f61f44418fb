import { codeWords } from './codeWords.ts';
import { recordName } from './recordName.ts';
import { zoneName, zoneNumber } from '../prep/zoneNames.ts';
import { recordOf, type Doc } from '../../model/doc.ts';
import type { Line } from '../../takeoff/line.ts';
import type { TableRow } from '../../takeoff/lineTable.ts';
import { takeoffText, whyText } from '../../words/whyWords.ts';

/** What a line is called in its row: its code, and what it is of. */
export function lineName(line: Line, doc: Doc): string {
  // A figure that adds lines up has all their keys: it is named by its code alone.
  const of = line.key.includes(' + ') ? [] : line.key.split('|').slice(2);
  return [codeWords(line.code), ...of.map((part) => recordName(part, doc))].join(', ');
}

/** What a row of the table is called: passes of a recipe stand in one row, so a row names only what tells rows apart. */
export function rowName(row: TableRow, doc: Doc): string {
  const of = row.key
    .split('|')
    .slice(1)
    .map((part) => recordName(part, doc));
  return [codeWords(row.code), ...of].join(', ');
}

/** The zone of a line as a column is headed. */
export function zoneTitle(zone: Line['zone'], doc: Doc): string {
  if (zone === null) return whyText.whole;
  if (zone === 'rest') return takeoffText.rest;
  const record = recordOf(doc, 'zone', zone);
  if (!record) return takeoffText.rest;
  return record.name ? `${zoneNumber(record)} ${record.name}` : zoneName(record);
}

/** A line with its zone, for sentences. */
export function lineTitle(line: Line, doc: Doc): string {
  if (line.zone === null) return lineName(line, doc);
  const record = line.zone === 'rest' ? null : recordOf(doc, 'zone', line.zone);
  return `${lineName(line, doc)}, ${record ? whyText.zone(zoneNumber(record)) : whyText.rest}`;
}
