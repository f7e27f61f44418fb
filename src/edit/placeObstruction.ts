import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid, ringToGrid } from '../geometry/grid.ts';
import type { Json } from '../model/cell.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';
import type { UpstandArgs } from './setUpstand.ts';

export type ObstructionShape =
  | {
      readonly form: 'rectangle';
      /** The middle. */
      readonly at: Point;
      readonly widthMm: number;
      readonly depthMm: number;
      readonly turnDeg: number;
    }
  | { readonly form: 'circle'; readonly at: Point; readonly diameterMm: number }
  | { readonly form: 'polygon'; readonly ring: readonly Point[] };

export type ObstructionKind = 'column' | 'pier' | 'island' | 'equipment' | 'pit' | 'drain' | 'post' | 'platform';

export type PlaceObstructionArgs = NewItem & {
  readonly kind: ObstructionKind;
  readonly shape: ObstructionShape;
  readonly under: 'none' | 'outOfScope' | 'byHand' | 'clearedBefore';
  readonly upstand?: UpstandArgs;
};

export const placeObstruction: Command<PlaceObstructionArgs> = {
  name: 'placeObstruction',
  refuse: (doc, args) => refuseNewItem(doc, args, 'obstruction') ?? sizeFault(args.shape),
  write: (doc, args) =>
    newItemCells(doc, args, 'obstruction', {
      kind: args.kind,
      shape: shapeOnGrid(args.shape),
      under: args.under,
      upstand: args.upstand,
    }),
};

function sizeFault(shape: ObstructionShape): string | null {
  if (shape.form === 'polygon') return null;
  const sizes = shape.form === 'circle' ? [shape.diameterMm] : [shape.widthMm, shape.depthMm];
  return sizes.every((size) => size > 0) ? null : 'noSize';
}

/** The middle may lie between two places of the grid when the corners are on it, so only rings are rounded by corner. */
function shapeOnGrid(shape: ObstructionShape): Json {
  return shape.form === 'polygon'
    ? { ...shape, ring: ringToGrid(shape.ring) }
    : { ...shape, at: pointToGrid(shape.at) };
}
