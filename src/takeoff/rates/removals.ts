import { methods } from './methods.ts';
import { PRACTICE, type RateRow } from './rateRow.ts';

/** Code of the concrete that a method takes off in one pass. */
export function removalCode(method: string): string {
  return `removal/${method}`;
}

/**
 * Concrete taken off in one pass, mm, of every method that takes any. Likely is the middle of low and high: 0.3 mm for a
 * planetary grinder. Common practice, no source; a job that has weighed its dust sets its own.
 */
export const removals: readonly RateRow[] = methods.flatMap(({ id, term, removalMm: [low, high] }): RateRow[] =>
  high > 0
    ? [
        {
          code: removalCode(id),
          term: `${term}: taken off in a pass`,
          unit: 'mm',
          low,
          likely: (low + high) / 2,
          high,
          note: 'likely is the middle of low and high',
          ...PRACTICE,
        },
      ]
    : [],
);
