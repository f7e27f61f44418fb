import { boxesMeet, boxOf, boxOfRegion, grownBox } from '../geometry/box.ts';
import { regionIndex } from '../geometry/regionIndex.ts';
import type { Point, TightPiece, ZoneMeasure } from '../geometry/floorShape.ts';

/**
 * The piece of hand floor under a point, or the nearest one within reach that has a reason of its own (what a round head
 * leaves in a corner has none, and is only met when it is hit). Reach in mm of the floor. Null for none.
 */
export function tightAt(zone: ZoneMeasure, at: Point, reachMm: number): TightPiece | null {
  let best: { readonly piece: TightPiece; readonly off: number } | null = null;
  for (const piece of zone.tight) {
    const off = distanceTo(piece, at, hasReason(piece) ? reachMm : 0);
    if (off !== null && (!best || off < best.off)) best = { piece, off };
  }
  return best?.piece ?? null;
}

function hasReason({ kind, gap, blockedBy, keptOff }: TightPiece): boolean {
  return kind === 'cutOff' || Boolean(gap ?? blockedBy ?? keptOff);
}

function distanceTo({ region }: TightPiece, at: Point, reachMm: number): number | null {
  if (!boxesMeet(grownBox(boxOfRegion(region), reachMm), boxOf([at]))) return null;
  const index = regionIndex(region);
  if (index.contains(at)) return 0;
  return index.nearest(at, reachMm)?.distance ?? null;
}
