import type { Point } from '../geometry/floorShape.ts';
import { ringToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawFindingArgs = NewItem & {
  readonly ring: readonly Point[];
  /** An id of the findings table in the rate book. */
  readonly kind: string;
  readonly thicknessMm?: number;
  readonly layers?: number;
  readonly bond?: 'loose' | 'fair' | 'sound';
  readonly ageYears?: number;
  readonly depthMm?: number;
};

export const drawFinding: Command<DrawFindingArgs> = {
  name: 'drawFinding',
  refuse: (doc, args) => refuseNewItem(doc, args, 'finding'),
  write: (doc, args) =>
    newItemCells(doc, args, 'finding', {
      kind: args.kind,
      ring: ringToGrid(args.ring),
      thicknessMm: args.thicknessMm,
      layers: args.layers,
      bond: args.bond,
      ageYears: args.ageYears,
      depthMm: args.depthMm,
    }),
};
