import { divide, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { keptOf } from './keptShapes.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured, rateTerm } from './terms.ts';

/** A run of crack or joint, or a spot, in a zone: its record, its name in the working, and its m or m2. */
export interface Named {
  readonly id: Line['records'][number];
  readonly name: string;
  readonly value: number;
}

/** Records by their numbers, told apart where two carry the same one. */
export function named(
  items: readonly { readonly id: Named['id']; readonly tag: string; readonly value: number }[],
): Named[] {
  const names = uniqueNames(items.map((item) => item.tag));
  return items.map(({ id, tag, value }, i) => ({ id, name: names[i] ?? tag, value }));
}

/** Hours by the metre, h: all runs together / rate (m/h). */
export function runHours(site: Site, zone: ZoneWork, code: string, rate: string, runs: readonly Named[]): Line {
  const { records, sum, terms } = partsOf(runs);
  return makeLine({
    code,
    trade: 'hours',
    unit: 'h',
    zone: zone.prep.zone,
    records,
    formula: divide(sum, term('rate')),
    terms: [...terms, rateTerm('rate', site.book.rate(rate))],
  });
}

/** Made once for all steps of work along the same runs: thousands of cracks, and four steps each. */
const partsOf = keptOf((runs: readonly Named[]) => ({
  records: runs.map(({ id }) => id),
  sum: sumOf(runs.map(({ name }) => name)),
  terms: lengthTerms(runs, 'm'),
}));

/** Each run or spot as a term, in m or m2 as the unit says. */
export function lengthTerms(runs: readonly Named[], unit: string): Term[] {
  return runs.map(({ id, name, value }) => measured(name, value, unit, id));
}
