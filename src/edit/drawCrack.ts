import type { Point } from '../geometry/floorShape.ts';
import { ringToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawCrackArgs = NewItem & {
  readonly path: readonly Point[];
  /** Null: not measured yet. */
  readonly widthMm: number | null;
  readonly depthMm: number | null;
  readonly behaviour: 'notJudged' | 'static' | 'working' | 'structural';
};

export const drawCrack: Command<DrawCrackArgs> = {
  name: 'drawCrack',
  refuse: (doc, args) => refuseNewItem(doc, args, 'crack'),
  write: (doc, args) =>
    newItemCells(doc, args, 'crack', {
      path: ringToGrid(args.path),
      widthMm: args.widthMm,
      depthMm: args.depthMm,
      behaviour: args.behaviour,
    }),
};
