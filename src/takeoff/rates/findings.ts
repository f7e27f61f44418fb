import { coverings } from './coverings.ts';
import type { FindingRow } from './findingRow.ts';
import { soiling } from './soiling.ts';

export const findingRows: readonly FindingRow[] = [...soiling, ...coverings];

const byKind = new Map(findingRows.map((row) => [row.id, row]));

/** The row of a finding, or null for a kind that this book does not know. */
export function findingRowOf(kind: string): FindingRow | null {
  return byKind.get(kind) ?? null;
}
