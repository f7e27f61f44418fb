import type { FamilyName } from './families.ts';

/** Plans on which the engine once was wrong, and what it was. They run first, with every law. */
export const PINNED: readonly { readonly family: FamilyName; readonly seed: number; readonly was: string }[] = [];
