import { codeWords } from './codeWords.ts';
import { recordOf, recordsOf, type Doc, type Held } from '../model/doc.ts';
import { isRecordId } from '../model/id.ts';
import { textInUnits } from '../model/textInUnits.ts';
import type { Units } from '../model/units.ts';
import { standInMethod } from '../takeoff/prep.ts';
import { abrasiveOf } from '../takeoff/rates/abrasives.ts';
import { findingRowOf } from '../takeoff/rates/findings.ts';
import { methodOf } from '../takeoff/rates/methods.ts';
import { kindWords } from '../words/orderWords.ts';
import { whyText } from '../words/whyWords.ts';

/** Title of a line by its code, measures in it in the units that are shown. */
export function titleOf(code: string, units: Units): string {
  return textInUnits(codeWords(code), units);
}

/** A row of a table: passes of a recipe stand in one row, so it names only what tells rows apart. */
export function rowName(
  doc: Doc,
  { key, code }: { readonly key: string; readonly code: string },
  units: Units,
): string {
  return joined(doc, code, key.split('|').slice(1), units);
}

/** A line without its zone: where it stands under one, the zone is said already. */
export function lineName(
  doc: Doc,
  { key, code }: { readonly key: string; readonly code: string },
  units: Units,
): string {
  // A figure that adds lines up has all their keys: it is named by its code alone.
  return joined(doc, code, key.includes(' + ') ? [] : key.split('|').slice(2), units);
}

function joined(doc: Doc, code: string, apart: readonly string[], units: Units): string {
  return [titleOf(code, units), ...apart.map((part) => thingName(doc, part, units))].join(', ');
}

/** The number that people see on a record, the term of a method or finding, or the word as it is. */
export function thingName(doc: Doc, part: string, units: Units): string {
  const standIn = standInMethod(part);
  if (standIn === null && isRecordId(part)) return recordName(doc, part);
  const term = methodOf(standIn ?? part)?.term ?? findingRowOf(part)?.term ?? kindWords[part] ?? abrasiveOf(part)?.term;
  return term === undefined ? part : textInUnits(term, units);
}

function recordName(doc: Doc, id: Parameters<Doc['get']>[0]): string {
  const pass = recordOf(doc, 'pass', id);
  if (pass) return passText(doc, pass);
  const { name, tag } = (doc.get(id) ?? {}) as { readonly name?: string; readonly tag?: string };
  return tag ?? name ?? id;
}

/** A pass by its abrasive if it has one, else its method; passes of one recipe may have the same: then their number tells them apart. */
function passText(doc: Doc, pass: Held<'pass'>): string {
  const name = abrasiveOf(pass.abrasive ?? '')?.term ?? methodOf(pass.method)?.term ?? pass.method;
  const all = recordsOf(doc, 'pass').filter((other) => other.recipe === pass.recipe);
  return all.length > 1 ? whyText.pass(all.findIndex((other) => other.id === pass.id) + 1, name) : name;
}
