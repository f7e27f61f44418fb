import type { MethodGroup, MethodRow } from './methodRow.ts';
import { cleanMethods } from './methodsClean.ts';
import { grindMethods } from './methodsGrind.ts';
import { impactMethods } from './methodsImpact.ts';
import { removeMethods } from './methodsRemove.ts';

/** Every method of the book, in the order of a job: clean, take off, grind, go rougher. */
export const methods: readonly MethodRow[] = [...cleanMethods, ...removeMethods, ...grindMethods, ...impactMethods];

const byId = new Map(methods.map((row) => [row.id, row]));

/** The row of a method, or null for an id that this book does not know. */
export function methodOf(id: string): MethodRow | null {
  return byId.get(id) ?? null;
}

const HELD_IN_HAND: readonly MethodGroup[] = ['handGrind', 'handImpact', 'handScrape', 'chase'];

/** Tools that a person carries: they have no reach to be computed, only floor and metres. */
export function isHandMethod(row: MethodRow): boolean {
  return HELD_IN_HAND.includes(row.group);
}
