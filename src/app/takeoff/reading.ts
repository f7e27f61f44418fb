import { create } from 'zustand';
import { nextSort, type Sort } from './sortRows.ts';
import type { Range } from '../../takeoff/line.ts';

/** How the takeoff is read: zones as columns, work as a list, by phase, what drives the price, what to buy and carry. */
export const READINGS = ['zones', 'work', 'phases', 'drivers', 'orders'] as const;
export type Reading = (typeof READINGS)[number];
export type Which = keyof Range;

interface HowRead {
  readonly reading: Reading;
  /** Which end of a range the zones show. */
  readonly which: Which;
  /** null: the order of the work. */
  readonly sort: Sort | null;
}

/** Belongs to this screen, not to the job: it stays while stages change, and is never saved. */
export const useReading = create<HowRead>()(() => ({ reading: 'zones', which: 'likely', sort: null }));

export function readAs(reading: Reading): void {
  // Columns differ from one reading to the next.
  useReading.setState({ reading, sort: null });
}

export function showWhich(which: Which): void {
  useReading.setState({ which });
}

export function sortBy(by: string): void {
  useReading.setState(({ sort }) => ({ sort: nextSort(sort, by) }));
}
