import type { Point } from '../geometry/floorShape.ts';
import { ringToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawJointArgs = NewItem & {
  readonly path: readonly Point[];
  readonly kind: 'control' | 'construction' | 'isolation';
  readonly treat: 'carried' | 'filled';
  readonly widthMm?: number;
  readonly depthMm?: number;
};

export const drawJoint: Command<DrawJointArgs> = {
  name: 'drawJoint',
  refuse: (doc, args) => refuseNewItem(doc, args, 'joint'),
  write: (doc, args) =>
    newItemCells(doc, args, 'joint', {
      path: ringToGrid(args.path),
      kind: args.kind,
      treat: args.treat,
      widthMm: args.widthMm,
      depthMm: args.depthMm,
    }),
};
