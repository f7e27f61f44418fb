import type { Names } from './names.ts';
import { showQuantity } from './showQuantity.ts';
import { whyKey } from './whyLine.ts';
import type { RecordId } from '../../model/cell.ts';
import { recordOf, type Doc } from '../../model/doc.ts';
import { figureText, type Figure } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { costShares } from '../../takeoff/costKinds.ts';
import { grouped } from '../../takeoff/grouped.ts';
import type { Line, Range, Term } from '../../takeoff/line.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { priceMoves, type PriceMove } from '../../takeoff/priceMoves.ts';
import { bookRow } from '../../takeoff/rates/book.ts';
import { workList } from '../../takeoff/workList.ts';
import { costTitleOf, driverWords } from '../../words/workWords.ts';

/** One bar: a name, a number with its low and high, and the line that answers why. */
export interface DriverBar extends Range {
  readonly key: string;
  readonly name: string;
  /** More about it in small letters; empty: nothing. */
  readonly more: string;
  readonly why: string | null;
}

export interface DriverBars {
  /** Kinds of cost in minor units; likely, they add up to the price. */
  readonly money: readonly DriverBar[];
  /** Hours of the work in zones, h. */
  readonly hours: readonly DriverBar[];
  /** What the likely price becomes with one number at its low or high, minor units. */
  readonly moves: readonly DriverBar[];
  /** Null: there is no price. */
  readonly priceMinor: number | null;
}

/** What the words of the bars are made with. */
export interface BarNames {
  readonly doc: Doc;
  readonly names: Names;
  readonly units: Units;
  readonly currency: string;
}

/** Bars of what drives the price, the longest first. */
export function driverBars(takeoff: Takeoff, wording: BarNames): DriverBars {
  const moves = priceMoves(takeoff.lines);
  return {
    money: costShares(takeoff.lines)
      .map(({ kind, lines }) => barOf(`cost.${kind}`, costTitleOf(`cost.${kind}`) ?? kind, lines))
      .toSorted(byLikely),
    hours: hourBars(takeoff, wording),
    moves: (moves?.moves ?? []).map((move) => moveBar(move, moves?.likely ?? 0, wording)),
    priceMinor: moves?.likely ?? null,
  };
}

function byLikely(a: DriverBar, b: DriverBar): number {
  return b.likely - a.likely;
}

function barOf(key: string, name: string, lines: readonly Line[]): DriverBar {
  const something = lines.filter(({ quantity }) => quantity.high > 0);
  const of = (which: keyof Range): number => something.reduce((sum, { quantity }) => sum + quantity[which], 0);
  return { key, name, more: '', why: whyKey(something), low: of('low'), likely: of('likely'), high: of('high') };
}

function hourBars(takeoff: Takeoff, { names }: BarNames): readonly DriverBar[] {
  const rows = workList(takeoff, 'zone').flatMap((group) =>
    group.kind === 'zone' ? group.rows.flatMap(({ line }) => line ?? []) : [],
  );
  return [...grouped(rows, ({ code }) => code)]
    .map(([code, lines]) => barOf(code, names.work({ key: code, code }), lines))
    .toSorted(byLikely);
}

function moveBar({ key, term, lines, low, high }: PriceMove, likely: number, wording: BarNames): DriverBar {
  const [first] = lines;
  return {
    key,
    name: numberName(term, lines, wording),
    more: ownRange(term, wording),
    why: first?.key ?? null,
    low,
    likely,
    high,
  };
}

/** A rate by what the rate book calls it; any other number by the work that it is for. */
function numberName(term: Term, lines: readonly Line[], { doc, names }: BarNames): string {
  const rate = recordOf(doc, 'rate', term.from as RecordId | null);
  const row = rate ? bookRow(rate.code) : null;
  if (row) return names.term({ ...term, name: row.term });
  const [line] = lines;
  const what = names.term(term);
  if (!line) return what;
  // Numbers that each zone has for itself are told apart by it.
  const oneZone = lines.every(({ zone }) => zone === line.zone);
  return `${names.line({ ...line, key: line.code, zone: oneZone ? line.zone : null })}: ${lowerFirst(what)}`;
}

function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** The number itself: likely, and from where to where it may lie. */
function ownRange({ value, unit }: Term, { units, currency }: BarNames): string {
  const show = (of: number): Figure => showQuantity(of, unit, units, currency);
  const [likely, least, most] = [
    show(value.likely),
    show(Math.min(value.low, value.high)),
    show(Math.max(value.low, value.high)),
  ];
  // Small amounts take a smaller unit: then each says its own.
  const oneUnit = likely.unit === least.unit && likely.unit === most.unit;
  const bare = (figure: Figure): string => (oneUnit ? figure.figure : figureText(figure));
  return `${bare(likely)}, ${driverWords.from(bare(least), figureText(most))}`;
}
