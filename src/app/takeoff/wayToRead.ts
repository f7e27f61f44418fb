import { create } from 'zustand';
import { nextSort, type Sort } from './sortRows.ts';
import type { Range } from '../../takeoff/line.ts';

/** How the takeoff is read: zones as columns, work as a list, by phase, what drives the price, what to buy and carry. */
export const WAYS_TO_READ = ['zones', 'work', 'phases', 'drivers', 'orders'] as const;
export type WayToRead = (typeof WAYS_TO_READ)[number];
export type Which = keyof Range;

interface HowRead {
  readonly way: WayToRead;
  /** Which end of a range the zones show. */
  readonly which: Which;
  /** null: the order of the work. */
  readonly sort: Sort | null;
}

/** Belongs to this screen, not to the job: it stays while stages change, and is never saved. */
export const useWayToRead = create<HowRead>()(() => ({ way: 'zones', which: 'likely', sort: null }));

export function readAs(way: WayToRead): void {
  // Columns differ from one way to the next.
  useWayToRead.setState({ way, sort: null });
}

export function showWhich(which: Which): void {
  useWayToRead.setState({ which });
}

export function sortBy(by: string): void {
  useWayToRead.setState(({ sort }) => ({ sort: nextSort(sort, by) }));
}
