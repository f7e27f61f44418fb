import { expect, test } from 'vitest';
import { usualCurrency } from '../../../src/app/jobs/usualCurrency.ts';

// Codes of ISO 4217, regions of ISO 3166-1.
test.each([
  ['en-GB', 'GBP'],
  ['en-IE', 'EUR'],
  ['de-CH', 'CHF'],
  ['es-US', 'USD'],
  ['en', 'USD'],
])('%s prices in %s', (language, currency) => expect(usualCurrency(language)).toBe(currency));
