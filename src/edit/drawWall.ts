import type { Point } from '../geometry/floorShape.ts';
import { ringToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawWallArgs = NewItem & { readonly path: readonly Point[]; readonly thicknessMm: number };

export const drawWall: Command<DrawWallArgs> = {
  name: 'drawWall',
  refuse: (doc, args) => refuseNewItem(doc, args, 'wall'),
  write: (doc, args) => newItemCells(doc, args, 'wall', { path: ringToGrid(args.path), thicknessMm: args.thicknessMm }),
};
