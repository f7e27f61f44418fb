import type { CostSite } from './costInputs.ts';
import { multiply, sumOf, term } from './formula.ts';
import type { Line } from './line.ts';
import { moneyLine, priceTerm } from './moneyLine.ts';
import { ORDERED, type OrderedItem } from './orders.ts';
import { lineTerm } from './terms.ts';

/** Code of the money line of an item of the order list. */
export const GOODS = 'money.goods.';

/**
 * Tooling and goods in minor units: tooling by what the job wears off (the rest of a set goes on to the next job),
 * single-use goods by whole packs (common practice, no source).
 */
export function goodsLines(site: CostSite, material: readonly Line[], missing: Set<string>): Line[] {
  return ORDERED.flatMap((item) => {
    const lines = chargedLines(item, material);
    if (item.priceCode === null || lines.length === 0) return [];
    const price = site.book.price(item.priceCode);
    if (!price) {
      missing.add(item.priceCode);
      return [];
    }
    const terms = lines.map((line) => lineTerm(line.key, line));
    return [
      moneyLine({
        code: `${GOODS}${item.item}`,
        records: lines.flatMap((line) => line.records),
        formula: multiply(sumOf(terms.map(({ name }) => name)), term('price')),
        terms: [...terms, priceTerm('price', price)],
      }),
    ];
  });
}

function chargedLines({ charge, code, usedBy }: OrderedItem, material: readonly Line[]): Line[] {
  const codes = charge === 'used' ? usedBy : [code];
  return material.filter((line) => codes.includes(line.code) && line.quantity.high > 0);
}
