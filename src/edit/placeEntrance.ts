import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type PlaceEntranceArgs = NewItem & {
  readonly at: Point;
  /** Narrowest clear width and height on the way from the truck; null when not measured. */
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly stairs?: number;
  readonly liftKg?: number | null;
};

export const placeEntrance: Command<PlaceEntranceArgs> = {
  name: 'placeEntrance',
  refuse: (doc, args) => refuseNewItem(doc, args, 'entrance'),
  write: (doc, args) =>
    newItemCells(doc, args, 'entrance', {
      at: pointToGrid(args.at),
      widthMm: args.widthMm,
      heightMm: args.heightMm,
      stairs: args.stairs,
      liftKg: args.liftKg,
    }),
};
