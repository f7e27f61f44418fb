import type { Estimate } from '../model/records/estimate.ts';
import { evaluate } from './formula.ts';
import { totalOf, type FrozenEstimate, type FrozenLine, type FrozenRate } from './frozenEstimate.ts';
import type { Range } from './line.ts';

/** Lines of an issued estimate, as they were. What another app wrote and cannot be read is left out. */
export function frozenLines({ lines }: Pick<Estimate, 'lines'>): FrozenLine[] {
  return (lines as unknown as readonly Partial<FrozenLine>[]).filter(
    (line): line is FrozenLine => typeof line?.key === 'string' && Array.isArray(line.working?.terms),
  );
}

/** Rates and prices of an issued estimate, as they were; what cannot be read is left out. */
export function frozenRates({ rates }: Pick<Estimate, 'rates'>): FrozenRate[] {
  return (rates as unknown as readonly Partial<FrozenRate>[]).filter(
    (rate): rate is FrozenRate => typeof rate?.code === 'string' && typeof rate.likely === 'number',
  );
}

const CASES = ['low', 'likely', 'high'] as const;

/** Less than this is a last bit of a float; an amount of money is compared to the cent. */
const HAIR = 1e-9;

/**
 * Keys of frozen lines that do not come out of their own terms, or differ from the line they took a term from; and
 * `total` where the total is not what the price says. Empty: the estimate works out again to the cent.
 */
export function brokenLines(estimate: Pick<Estimate, 'lines' | 'totalMinor' | 'lowMinor' | 'highMinor'>): string[] {
  const lines = frozenLines(estimate);
  const byKey = new Map(lines.map((line) => [line.key, line]));
  const broken = lines.filter(({ quantity, working, code }) => {
    // The engine sums the field on rings of its own.
    if (code === 'field') return false;
    if (!isSame(evaluate(working.formula, working.terms), quantity)) return true;
    return working.terms.some(({ from, source, value }) => {
      const origin = source === 'line' && from !== null ? byKey.get(from) : undefined;
      return origin !== undefined && origin.unit !== 'h' && !isSame(value, origin.quantity);
    });
  });
  const total = totalOf(lines);
  const asked = { low: estimate.lowMinor, likely: estimate.totalMinor, high: estimate.highMinor };
  const wrong = !total || CASES.some((which) => asked[which] !== undefined && asked[which] !== total[which]);
  return [...broken.map(({ key }) => key), ...(wrong ? ['total'] : [])];
}

function isSame(a: Range, b: Range): boolean {
  return CASES.every((which) => Math.abs(a[which] - b[which]) <= HAIR * Math.max(1, Math.abs(b[which])));
}

/** One number of an estimate that is another one today; null: it was not there, or is there no more. */
export interface Difference {
  readonly what: string;
  readonly unit: string;
  readonly before: number | null;
  readonly after: number | null;
}

export interface Differences {
  /** Costs and price in the likely case, by code and what they are of. */
  readonly money: readonly Difference[];
  readonly rates: readonly Difference[];
}

/** What an estimate would say otherwise if it were issued today. Nothing of it changes the estimate. */
export function differencesNow(estimate: Estimate, now: FrozenEstimate | null): Differences {
  const moneyOf = (from: Pick<Estimate, 'lines'>): Map<string, FrozenLine> =>
    new Map(frozenLines(from).flatMap((line) => (isTold(line) ? [[line.key, line]] : [])));
  const ratesOf = (from: Pick<Estimate, 'rates'>): Map<string, FrozenRate> =>
    new Map(frozenRates(from).map((rate) => [rate.code, rate]));
  const none = { lines: [], rates: [] };
  return {
    money: changed(moneyOf(estimate), moneyOf(now ?? none), ({ quantity, unit }) => [quantity.likely, unit]),
    rates: changed(ratesOf(estimate), ratesOf(now ?? none), ({ likely, unit, isPrice }) => [
      likely,
      isPrice ? 'minor' : unit,
    ]),
  };
}

/** Shares of zones and the markup follow from the price. */
function isTold({ trade, unit, code }: FrozenLine): boolean {
  return trade === 'money' && unit === 'minor' && code !== 'money.priceShare';
}

function changed<T>(
  then: ReadonlyMap<string, T>,
  now: ReadonlyMap<string, T>,
  read: (of: T) => readonly [number, string],
): Difference[] {
  const keys = new Set([...then.keys(), ...now.keys()]);
  return [...keys].flatMap((what): Difference[] => {
    const [was, is] = [then.get(what), now.get(what)];
    const [before, unitThen] = was ? read(was) : [null, null];
    const [after, unitNow] = is ? read(is) : [null, null];
    if (before === after) return [];
    return [{ what, unit: unitThen ?? unitNow ?? '', before, after }];
  });
}
