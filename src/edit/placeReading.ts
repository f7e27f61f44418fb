import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type PlaceReadingArgs = NewItem & {
  readonly at: Point;
  readonly kind: string;
  readonly value: number | null;
  readonly unit: string;
  readonly limit?: string;
  readonly passes?: boolean | null;
  readonly takenOn?: string;
  readonly takenBy?: string;
  readonly instrument?: string;
  readonly serial?: string;
  readonly calibratedOn?: string;
};

export const placeReading: Command<PlaceReadingArgs> = {
  name: 'placeReading',
  refuse: (doc, args) => refuseNewItem(doc, args, 'reading'),
  write: (doc, args) =>
    newItemCells(doc, args, 'reading', {
      at: pointToGrid(args.at),
      kind: args.kind,
      value: args.value,
      unit: args.unit,
      limit: args.limit,
      passes: args.passes,
      takenOn: args.takenOn,
      takenBy: args.takenBy,
      instrument: args.instrument,
      serial: args.serial,
      calibratedOn: args.calibratedOn,
    }),
};
