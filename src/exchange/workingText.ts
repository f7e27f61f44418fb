import type { Doc } from '../model/doc.ts';
import { isRecordId } from '../model/id.ts';
import { evaluate } from '../takeoff/formula.ts';
import type { Formula, Line, Range, Term } from '../takeoff/line.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { findingRowOf } from '../takeoff/rates/findings.ts';
import { tagOf, zoneLabel } from '../takeoff/tagOf.ts';
import { lineName } from './lineNames.ts';

/*
 * Every line of a floor with its working, to be checked by hand:
 *
 *   Machine passes, pass 1, Z1 Hall  8.05 h (5.03 to 13.41)
 *     = 218.15 x 2 / (65 x 0.85 x 1)
 *       field  218.15 m2  the plan
 *       rate  65 m2/h (100 to 40)  common practice, no source
 *
 * Money is in whole minor units (cents), as it is worked out.
 */
export function workingText(doc: Doc, takeoff: Takeoff): string {
  return takeoff.lines.map((line) => `${lineText(doc, takeoff, line).join('\n')}\n`).join('\n');
}

function lineText(doc: Doc, takeoff: Takeoff, line: Line): string[] {
  const { formula, terms } = line.working;
  const nameOf = termNames(doc, takeoff, terms);
  return [
    `${nameWithZone(doc, takeoff, line)}  ${rangeText(line.quantity, line.unit)}`,
    `  = ${formulaText(formula, terms)}`,
    ...terms.map(
      (term) =>
        `    ${nameOf(term)}  ${rangeText(term.value, term.unit)}  ${term.source}${term.fromMemory ? ', from memory' : ''}`,
    ),
  ];
}

function nameWithZone(doc: Doc, { floor }: Takeoff, line: Line): string {
  const name = lineName(doc, line, 'metric');
  return line.zone === null ? name : `${name}, ${zoneLabel(doc, floor, line.zone) ?? line.zone}`;
}

/** A term that is another line bears the name of that line; one that is a record of the plan its number. */
function termNames(doc: Doc, takeoff: Takeoff, terms: readonly Term[]): (term: Term) => string {
  const asked = new Set(terms.map(({ name }) => name));
  const lines = new Map(takeoff.lines.filter(({ key }) => asked.has(key)).map((line) => [line.key, line]));
  return ({ name }) => {
    const line = lines.get(name);
    if (line) return nameWithZone(doc, takeoff, line);
    const [kind = '', ...more] = name.split(', ');
    const words = isRecordId(name) ? tagOf(doc, name) : (findingRowOf(kind)?.term ?? kind);
    return isRecordId(name) ? words : [words, ...more].join(', ');
  };
}

function rangeText({ low, likely, high }: Range, unit: string): string {
  const alone = `${numberText(likely)} ${unit}`;
  return low === high ? alone : `${alone} (${numberText(low)} to ${numberText(high)})`;
}

const PLACES = 4;

function numberText(value: number): string {
  return String(Number(value.toFixed(PLACES)));
}

/** How tightly a piece holds together, so that it is known where brackets are needed. */
const SUM = 1;
const PRODUCT = 2;
const ONE = 3;

/** A formula with its likely numbers, as it would be typed into a calculator. */
export function formulaText(formula: Formula, terms: readonly Term[]): string {
  return written(formula, terms).text;
}

interface Written {
  readonly text: string;
  readonly holds: number;
}

function written(formula: Formula, terms: readonly Term[]): Written {
  const inside = (piece: Formula, least: number): string => {
    const { text, holds } = written(piece, terms);
    return holds < least ? `(${text})` : text;
  };
  const all = (of: readonly Formula[], sign: string, least: number): Written => {
    const [only] = of;
    if (only && of.length === 1) return written(only, terms);
    return { text: of.map((piece) => inside(piece, least)).join(sign), holds: least };
  };
  switch (formula.op) {
    case 'term':
    case 'number':
      return { text: numberText(evaluate(formula, terms).likely), holds: ONE };
    case 'add':
      return formula.of.length === 0 ? { text: '0', holds: ONE } : all(formula.of, ' + ', SUM);
    case 'multiply':
      return all(formula.of, ' x ', PRODUCT);
    case 'subtract':
      return { text: `${inside(formula.left, SUM)} - ${inside(formula.right, PRODUCT)}`, holds: SUM };
    case 'divide':
      return { text: `${inside(formula.left, PRODUCT)} / ${inside(formula.right, ONE)}`, holds: PRODUCT };
    case 'max':
      return { text: `largest of (${formula.of.map((piece) => inside(piece, 0)).join(', ')})`, holds: ONE };
    case 'ceil':
      return { text: `up to whole (${inside(formula.of, 0)})`, holds: ONE };
    case 'round':
      return { text: `rounded (${inside(formula.of, 0)})`, holds: ONE };
  }
}
