import type { Point } from '../geometry/floorShape.ts';
import type { Command } from './command.ts';
import { cornerAt, edgeFrom, type EdgeArgs } from './edges.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

export type DrawSlabArgs = NewItem & {
  readonly ring: readonly Point[];
  /** One an edge, edge i from corner i; walls where nothing is said. */
  readonly edges?: readonly EdgeArgs[];
  readonly thicknessMm?: number;
  readonly builtUp?: 'onGround' | 'suspended';
};

export const drawSlab: Command<DrawSlabArgs> = {
  name: 'drawSlab',
  refuse: (doc, args) => refuseNewItem(doc, args, 'slab'),
  write: (doc, args) =>
    newItemCells(doc, args, 'slab', {
      outline: args.ring.map((at, index) => cornerAt(at, edgeFrom(args.edges?.[index]))),
      thicknessMm: args.thicknessMm,
      builtUp: args.builtUp,
    }),
};
