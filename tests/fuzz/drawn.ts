import type { FloorShape, Ring } from '../../src/geometry/floorShape.ts';
import type { Dice } from './dice.ts';

/** What a family draws; plan.ts adds the machines, and what is left out. */
export interface Drawn extends Partial<Omit<FloorShape, 'zones' | 'machines'>> {
  readonly slabs: FloorShape['slabs'];
  readonly zones?: readonly { readonly id: string; readonly ring: Ring }[];
}

export type Family = (dice: Dice) => Drawn;
