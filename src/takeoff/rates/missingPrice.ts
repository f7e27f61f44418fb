import { methodOf } from './methods.ts';
import type { PriceRow } from './priceRow.ts';

/** What a price that nobody has set is called and counted by; `day/` and a method is the day rate of its tool. */
export function missingPrice(code: string): Omit<PriceRow, 'amount'> {
  const [, method] = code.split('day/');
  return method === undefined
    ? { code, term: code, unit: 'each' }
    : { code, term: methodOf(method)?.term ?? method, unit: 'per day' };
}
