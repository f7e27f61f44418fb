import { parseFigures } from './parseNumber.ts';
import { lengthToMm, onGrid, type LengthUnit } from './units.ts';

/**
 * Reading a length as people type it. A bare number is in the unit of its field; two bare numbers in a feet field
 * are feet and inches. Nothing is guessed: what can be read two ways is refused with a code for a sentence.
 *
 *     12'6   12' 6 1/2"   12-6.5   12 6   12ft 6in   6 1/2"   3.81m   3,81 m   381 cm   3 m 81 cm   3810
 */
export type LengthFault =
  | 'empty'
  | 'notALength'
  | 'negative'
  /** `1,234`: a thousand and more, or one and a bit. */
  | 'ambiguousComma'
  /** `12-1/2` in a feet field: twelve and a half feet, or twelve feet and half an inch. */
  | 'ambiguousFraction'
  /** Two numbers where the field is not in feet. */
  | 'twoNumbers'
  /** Units that do not go together, or in the wrong order. */
  | 'unitsMixed'
  /** `12' 14"` */
  | 'inchesOver12'
  /** `12.5' 6"` */
  | 'brokenFeetWithInches'
  | 'divideByZero'
  | 'tooLong';

export type ParsedLength =
  | { readonly ok: true; readonly mm: number }
  /** `what` is the piece that could not be read, for the sentence. */
  | { readonly ok: false; readonly fault: LengthFault; readonly what: string };

/** Ten kilometres: no floor is longer, and a typed telephone number is. */
const LONGEST_MM = 10_000_000;

interface Piece {
  readonly value: number;
  readonly unit: LengthUnit | null;
  readonly text: string;
}
type Token =
  | { readonly kind: 'number' | 'fraction'; readonly value: number; readonly text: string }
  | { readonly kind: 'unit'; readonly unit: LengthUnit; readonly text: string }
  | { readonly kind: 'dash'; readonly text: string };
type Fail = Extract<ParsedLength, { ok: false }>;

const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = {
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  '"': 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
  m: 'm',
  meter: 'm',
  meters: 'm',
  metre: 'm',
  metres: 'm',
  cm: 'cm',
  mm: 'mm',
};

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

function fail(fault: LengthFault, what: string): Fail {
  return { ok: false, fault, what };
}

function isFail(answer: object): answer is Fail {
  return 'ok' in answer && answer.ok === false;
}

/** One way of writing each sign: straight quotes, plain spaces, plain minus, fractions with a slash. */
function plainSigns(typed: string): string {
  return typed
    .replaceAll(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${FRACTION_SIGNS[sign] ?? ''}`)
    .replaceAll('\u2044', '/')
    .replaceAll(/[\u2032\u2018\u2019´`]/g, "'")
    .replaceAll(/[\u2033\u201c\u201d]|''/g, '"')
    .replaceAll(/[\u2010-\u2015\u2212]/g, '-')
    .replaceAll(/[\u00a0\u2009\u202f\s]+/g, ' ')
    .trim()
    .toLowerCase();
}

const TOKEN = /^(?:(?<fraction>\d+ ?\/ ?\d+)|(?<number>[\d.,]*\d)|(?<unit>['"]|[a-z]+\.?)|(?<dash>-))/;

function readToken(found: RegExpExecArray): Token | Fail {
  const text = found[0];
  const { fraction, number, unit } = found.groups ?? {};
  if (fraction !== undefined) {
    const [top = 0, bottom = 0] = fraction.split('/').map(Number);
    return bottom === 0 ? fail('divideByZero', text) : { kind: 'fraction', value: top / bottom, text };
  }
  if (number !== undefined) {
    const parsed = parseFigures(number);
    if (parsed.ok) return { kind: 'number', value: parsed.value, text };
    return fail(parsed.fault === 'ambiguousComma' ? 'ambiguousComma' : 'notALength', text);
  }
  if (unit !== undefined) {
    const known = UNIT_WORDS[unit.replace('.', '')];
    return known ? { kind: 'unit', unit: known, text } : fail('notALength', text);
  }
  return { kind: 'dash', text };
}

function readTokens(text: string): Token[] | Fail {
  const tokens: Token[] = [];
  let rest = text;
  while (rest !== '') {
    const found = TOKEN.exec(rest);
    if (!found) return fail('notALength', rest);
    const token = readToken(found);
    if (isFail(token)) return token;
    tokens.push(token);
    rest = rest.slice(found[0].length).trimStart();
  }
  return tokens;
}

/** Numbers with the fraction and the unit that belong to each. */
function readPieces(tokens: readonly Token[]): Piece[] | Fail {
  const pieces: Piece[] = [];
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at];
    if (token?.kind === 'dash' && pieces.length > 0) {
      at += 1;
      continue;
    }
    if (token?.kind !== 'number' && token?.kind !== 'fraction') return fail('notALength', token?.text ?? '');
    let value = token.value;
    let text = token.text;
    let dashed = false;
    at += 1;
    if (token.kind === 'number') {
      const dash = tokens[at]?.kind === 'dash';
      const fraction = tokens[dash ? at + 1 : at];
      if (fraction?.kind === 'fraction') {
        if (!Number.isInteger(token.value)) return fail('notALength', `${text} ${fraction.text}`);
        value += fraction.value;
        text += (dash ? '-' : ' ') + fraction.text;
        dashed = dash;
        at += dash ? 2 : 1;
      }
    }
    const next = tokens[at];
    const unit = next?.kind === 'unit' ? next.unit : null;
    if (unit) at += 1;
    if (dashed && !unit && pieces.length === 0) return fail('ambiguousFraction', text);
    pieces.push({ value, unit, text });
  }
  return pieces;
}

function feetAndInches(feet: Piece, inches: Piece): ParsedLength {
  if (!Number.isInteger(feet.value)) return fail('brokenFeetWithInches', feet.text);
  if (inches.value >= 12) return fail('inchesOver12', inches.text);
  return sum([lengthToMm(feet.value, 'ft'), lengthToMm(inches.value, 'in')], `${feet.text} ${inches.text}`);
}

function sum(lengthsMm: readonly number[], what: string): ParsedLength {
  const mm = onGrid(lengthsMm.reduce((total, one) => total + one, 0));
  return mm > LONGEST_MM ? fail('tooLong', what) : { ok: true, mm };
}

function addPieces(pieces: readonly Piece[], field: LengthUnit): ParsedLength {
  const [first, second] = pieces;
  const what = pieces.map((piece) => piece.text).join(' ');
  if (!first) return fail('empty', '');
  if (!second) return sum([lengthToMm(first.value, first.unit ?? field)], what);
  const units = pieces.map((piece) => piece.unit);
  if (pieces.length === 2) {
    const bare = first.unit === null && second.unit === null;
    if (bare) return field === 'ft' ? feetAndInches(first, second) : fail('twoNumbers', what);
    const feetFirst = first.unit === 'ft' || first.unit === null;
    const inchesNext = second.unit === 'in' || second.unit === null;
    if (feetFirst && inchesNext) return feetAndInches(first, second);
  }
  const metric = ['m', 'cm', 'mm'];
  const ranks = units.map((unit) => metric.indexOf(unit ?? ''));
  const descending = ranks.every((rank, index) => rank >= 0 && (index === 0 || rank > (ranks[index - 1] ?? 9)));
  if (!descending) return fail(units.every((unit) => unit === null) ? 'twoNumbers' : 'unitsMixed', what);
  return sum(
    pieces.map((piece) => lengthToMm(piece.value, piece.unit ?? field)),
    what,
  );
}

/** Millimetres on the 1/320 mm grid, or why not. `field` is the unit that a bare number is in. */
export function parseLength(typed: string, field: LengthUnit): ParsedLength {
  const text = plainSigns(typed);
  if (text === '') return fail('empty', '');
  if (text.startsWith('-')) return fail('negative', text);
  // `3 810 mm`: a space that groups by threes, where feet and inches cannot be meant.
  const metric = field !== 'ft' && field !== 'in' && !/['"fi]/.test(text);
  const ungrouped = metric ? text.replace(/^(\d{1,3}(?: \d{3})+)(?![\d/])/, (run) => run.replaceAll(' ', '')) : text;
  const tokens = readTokens(ungrouped);
  if (isFail(tokens)) return tokens;
  const pieces = readPieces(tokens);
  return isFail(pieces) ? pieces : addPieces(pieces, field);
}
