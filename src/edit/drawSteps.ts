import type { Point } from '../geometry/floorShape.ts';
import { ringToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawStepsArgs = NewItem & {
  readonly ring: readonly Point[];
  readonly count: number;
  readonly riseMm: number;
  readonly goingMm: number;
};

export const drawSteps: Command<DrawStepsArgs> = {
  name: 'drawSteps',
  refuse: (doc, args) => refuseNewItem(doc, args, 'steps'),
  write: (doc, args) =>
    newItemCells(doc, args, 'steps', {
      ring: ringToGrid(args.ring),
      count: args.count,
      riseMm: args.riseMm,
      goingMm: args.goingMm,
    }),
};
