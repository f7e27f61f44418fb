import type { TightPiece } from '../geometry/floorShape.ts';

/** Depth of a thick wall, mm: floor no deeper than this is that of the passage itself; common practice, no source. */
const WALL_DEPTH_MM = 500;

/**
 * The passage that keeps a machine out of a piece of floor worth the name, or null. Where zones meet in a doorway, a
 * sliver inside the wall belongs to one of them and is worked from the other side: there nobody is kept out of anything.
 */
export function keptOutBy({ blockedBy, areaM2 }: TightPiece): TightPiece['blockedBy'] {
  if (!blockedBy) return null;
  return areaM2 * 1e6 > blockedBy.passage.widthMm * WALL_DEPTH_MM ? blockedBy : null;
}
