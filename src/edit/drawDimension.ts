import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawDimensionArgs = NewItem & { readonly from: Point; readonly to: Point; readonly offsetMm?: number };

export const drawDimension: Command<DrawDimensionArgs> = {
  name: 'drawDimension',
  refuse: (doc, args) => refuseNewItem(doc, args, 'dimension'),
  write: (doc, args) =>
    newItemCells(doc, args, 'dimension', {
      from: pointToGrid(args.from),
      to: pointToGrid(args.to),
      offsetMm: args.offsetMm,
    }),
};
