import type { Point } from '../geometry/floorShape.ts';
import { ringToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawOutOfScopeArgs = NewItem & { readonly ring: readonly Point[]; readonly reason?: string };

export const drawOutOfScope: Command<DrawOutOfScopeArgs> = {
  name: 'drawOutOfScope',
  refuse: (doc, args) => refuseNewItem(doc, args, 'outOfScope'),
  write: (doc, args) => newItemCells(doc, args, 'outOfScope', { ring: ringToGrid(args.ring), reason: args.reason }),
};
