import type { Line, Range, Term } from './line.ts';

/** What a number of hours is spent on: so many m2, m or pieces, and the lines of quantity that say so. */
export interface WorkedAmount {
  readonly quantity: Range;
  readonly unit: string;
  /** Empty where the amount is that of single records: then the hours themselves say which. */
  readonly lines: readonly Line[];
}

/** Hours over both stop lines and doorways are told by the metre: the larger measure comes first. */
const UNITS: readonly string[] = ['m2', 'm', 'number'];
const PER_HOUR = '/h';

/**
 * How much floor, edge or run the hours of these lines are for, in m2, m or pieces, read off their own terms; null where
 * they depend on nothing measured (set-up). Several passes over one field are told by the field, once.
 */
export function workedAmount(hours: readonly Line[], quantities: ReadonlyMap<string, Line>): WorkedAmount | null {
  const measured = hours.flatMap((line) => line.working.terms.filter(isMeasured).map((term) => ({ term, of: line })));
  // Edge by the metre carries the area of its strip as well: what the rate goes by is what the hours are for.
  const rate = hours.flatMap((line) => line.working.terms).find((term) => term.unit.endsWith(PER_HOUR));
  const byRate = rate?.unit.slice(0, -PER_HOUR.length);
  const unit = [byRate, ...UNITS].find((each) => measured.some(({ term }) => term.unit === each));
  if (unit === undefined) return null;
  const inUnit = measured.filter(({ term }) => term.unit === unit);
  const ofLines = inUnit.filter(({ term }) => term.from !== null && quantities.has(term.from));
  // A field names the findings that slow a part of it as well: where a line of quantity speaks, it speaks for all.
  const counted = new Map((ofLines.length > 0 ? ofLines : inUnit).map(({ term, of }) => [nameOf(term, of), term]));
  return {
    quantity: sum([...counted.values()].map(({ value }) => value)),
    unit,
    lines: [...new Set(ofLines.flatMap(({ term }) => quantities.get(term.from ?? '') ?? []))].filter(
      (line) => line.quantity.high > 0,
    ),
  };
}

function isMeasured({ provenance, value }: Term): boolean {
  return provenance === 'measured' && value.high > 0;
}

/** One thing measured is counted once, whichever lines work it; a part of a crack in another zone is another part. */
function nameOf({ name, from, value }: Term, { zone }: Line): string {
  return [from ?? name, zone ?? 'floor', value.likely].join('|');
}

function sum(ranges: readonly Range[]): Range {
  const of = (which: keyof Range): number => ranges.reduce((all, range) => all + range[which], 0);
  return { low: of('low'), likely: of('likely'), high: of('high') };
}
