import { findingRows } from './findings.ts';
import type { RateRow } from './rateRow.ts';

/** Code of what is put on a finding, L/m2. */
export function chemicalCode(kind: string): string {
  return `consumables/chemical/${kind}`;
}

/** Code of what it is rinsed with, L/m2. */
export function rinseCode(kind: string): string {
  return `consumables/rinse/${kind}`;
}

const ONE = 'one value: nobody has written a range';

/** Chemical and rinse of each finding as rates of the book, so that a job can have its own. One value, no range. */
export const findingRates: readonly RateRow[] = findingRows.flatMap((row): RateRow[] => {
  const { source, provenance, fromMemory } = row;
  const rate = (code: string, what: string, value: number): RateRow[] =>
    value > 0
      ? [
          {
            code,
            term: `${row.term}: ${what}`,
            unit: 'L per m2',
            low: value,
            likely: value,
            high: value,
            note: ONE,
            source,
            provenance,
            fromMemory,
          },
        ]
      : [];
  return [...rate(chemicalCode(row.id), 'wash', row.chemicalLM2), ...rate(rinseCode(row.id), 'rinse', row.rinseLM2)];
});
