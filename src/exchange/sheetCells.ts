import type { RowCell } from './takeoffRows.ts';

export type SheetCell = string | number | null;

export const CASES = ['low', 'likely', 'high'] as const;

/** Low, likely and high in three cells; the word where a hold stands. */
export function cellsOf(cell: RowCell | null): SheetCell[] {
  if (!cell) return [null, null, null];
  if (cell.held !== null) return ['held', 'held', 'held'];
  return CASES.map((which) => tidy(cell[which]));
}

/** Four decimals are more than any of these numbers knows. */
export function tidy(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
