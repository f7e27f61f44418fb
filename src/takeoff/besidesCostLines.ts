import type { CostSite } from './costInputs.ts';
import { add, multiply, term } from './formula.ts';
import type { Line, Term } from './line.ts';
import { moneyLine, priceTerm } from './moneyLine.ts';
import { lineTerm } from './terms.ts';

/** Which quantity of the plan takes which price; their hours are among the hours. */
const ROWS = [
  { code: 'money.tests', of: { 'tests.rh': 'test/rh', 'tests.pull': 'test/pull' } },
  { code: 'money.mockUp', of: { mockUp: 'mockUp' } },
] as const;

/** Material of tests and mock-up, minor units; masking film is among the goods. What a hold stands on has no price. */
export function besidesCostLines(site: CostSite, quantities: readonly Line[], missing: Set<string>): Line[] {
  return ROWS.flatMap(({ code, of }) => {
    const parts = Object.entries(of).flatMap(([quantity, priceCode]) => {
      const lines = quantities.filter((line) => line.code === quantity && line.held === null && line.quantity.high > 0);
      if (lines.length === 0) return [];
      const price = site.book.price(priceCode);
      if (price) return [{ lines, price: priceTerm(price.term, price) }];
      missing.add(priceCode);
      return [];
    });
    if (parts.length === 0) return [];
    const terms: Term[] = parts.flatMap(({ lines, price }) => [
      ...lines.map((line) => lineTerm(line.key, line)),
      price,
    ]);
    return [
      moneyLine({
        code,
        records: parts.flatMap(({ lines }) => lines.flatMap((line) => line.records)),
        formula: add(
          ...parts.map(({ lines, price }) => multiply(add(...lines.map((line) => term(line.key))), term(price.name))),
        ),
        terms,
      }),
    ];
  });
}
