import type { Doc } from '../model/doc.ts';
import { evaluate } from '../takeoff/formula.ts';
import type { Formula, Line, Range, Term } from '../takeoff/line.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { findingRowOf } from '../takeoff/rates/findings.ts';
import { tagOf, zoneLabel } from '../takeoff/tagOf.ts';
import { lineTitleOf } from '../words/takeoffWords.ts';

/*
 * Every line of a floor with its working, to be checked by hand:
 *
 *   Machine passes, Z1 Hall                               8.05 h   5.03 to 13.41
 *     = 218.15 x 2 / (65 x 0.85 x 1.00)
 *       field          218.15 m2          the plan
 *       rate           65 m2/h, 40 to 100 common practice, no source
 *
 * Money is in whole minor units (cents), as it is worked out.
 */
export function workingText(doc: Doc, takeoff: Takeoff): string {
  return takeoff.lines.map((line) => `${lineText(doc, takeoff, line).join('\n')}\n`).join('\n');
}

function lineText(doc: Doc, takeoff: Takeoff, line: Line): string[] {
  const title = lineTitleOf(line.code, (kind) => findingRowOf(kind)?.term ?? kind);
  const zone = line.zone === null ? null : (zoneLabel(doc, takeoff.floor, line.zone) ?? line.zone);
  const { formula, terms } = line.working;
  const titleOf = titlesOf(doc, takeoff, terms);
  return [
    `${zone === null ? title : `${title}, ${zone}`}  ${rangeText(line.quantity, line.unit)}`,
    `  = ${formulaText(formula, terms)}`,
    ...terms.map(
      (term) =>
        `    ${titleOf(term)}  ${rangeText(term.value, term.unit)}  ${term.source}${term.fromMemory ? ', from memory' : ''}`,
    ),
  ];
}

/** A term that is another line bears the title of that line; one that is a record of the plan its number. */
function titlesOf(doc: Doc, takeoff: Takeoff, terms: readonly Term[]): (term: Term) => string {
  const asked = new Set(terms.map(({ from }) => from));
  const lines = new Map(takeoff.lines.filter(({ key }) => asked.has(key)).map((line) => [line.key, line]));
  return ({ name, from }) => {
    const line = from === null ? undefined : lines.get(from);
    if (!line || name !== line.key) return name.includes(':') ? tagOf(doc, name) : name;
    const title = lineTitleOf(line.code, (kind) => findingRowOf(kind)?.term ?? kind);
    return line.zone === null ? title : `${title}, ${zoneLabel(doc, takeoff.floor, line.zone) ?? line.zone}`;
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
