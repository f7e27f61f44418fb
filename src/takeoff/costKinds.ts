import type { Line } from './line.ts';

/** Kinds of cost, in the order in which a price is built up. `other` takes every direct cost that has no kind here. */
export const COST_KINDS = [
  'labour',
  'equipment',
  'goods',
  'waste',
  'travel',
  'other',
  'contingency',
  'overhead',
  'margin',
] as const;
export type CostKind = (typeof COST_KINDS)[number];

const CODES: Readonly<Record<string, CostKind>> = {
  'money.labour': 'labour',
  'money.night': 'labour',
  'money.equipment': 'equipment',
  'money.delivery': 'equipment',
  'money.power': 'equipment',
  'money.haul': 'waste',
  'money.tip': 'waste',
  'money.drums': 'waste',
  'money.wasteTests': 'waste',
  'money.travel': 'travel',
  'money.driving': 'travel',
  'money.lodging': 'travel',
  'money.mobilisation': 'travel',
  'money.remobilisation': 'travel',
  'money.contingency': 'contingency',
  'money.overhead': 'overhead',
  'money.margin': 'margin',
};

const GOODS = 'money.goods.';

/** The kind of cost that a line of money belongs to. */
export function costKindOf(code: string): CostKind {
  return code.startsWith(GOODS) ? 'goods' : (CODES[code] ?? 'other');
}

export interface CostShare {
  readonly kind: CostKind;
  /** What it adds up, in minor units. */
  readonly lines: readonly Line[];
}

/**
 * The parts of the price, each line of money in one kind: what the direct cost adds up, then contingency, overhead and
 * margin. They add up to the price; kinds that are nothing are left out.
 */
export function costShares(lines: readonly Line[]): readonly CostShare[] {
  const direct = lines.find(({ code }) => code === 'money.direct');
  const ends = ['money.contingency', 'money.overhead', 'money.margin'];
  const parts = lines.filter(
    (line) => ends.includes(line.code) || direct?.working.terms.some(({ from }) => from === line.key),
  );
  return COST_KINDS.map((kind) => ({ kind, lines: parts.filter(({ code }) => costKindOf(code) === kind) })).filter(
    (share) => share.lines.some(({ quantity }) => quantity.high > 0),
  );
}
