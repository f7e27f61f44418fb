import type { Region, Ring } from '../floorShape.ts';
import { boxHolds, boxOf } from '../box.ts';
import { between } from '../point.ts';
import { corner, ringArea, ringContains, signedArea } from '../ring.ts';
import { boxIndex } from '../spatial.ts';

/*
 *     +-----------+       Three rings, two polygons: the middle ring is a hole of the outer one, and the island in it
 *     |  +-----+  |       stands for itself.
 *     |  | +-+ |  |
 *     |  | +-+ |  |
 *     |  +-----+  |
 *     +-----------+
 */

/** Rings to polygons: each hole, wound the other way, goes to the smallest outer ring around it. */
export function polygonsOf(rings: readonly Ring[]): Region {
  const outers = rings
    .filter((ring) => signedArea(ring) > 0)
    .map((ring) => ({ rings: [ring], box: boxOf(ring), area: ringArea(ring) }));
  const index = boxIndex(outers.map((outer) => outer.box));
  for (const hole of rings) {
    if (signedArea(hole) > 0) continue;
    const box = boxOf(hole);
    const around = index
      .meeting(box)
      .flatMap((i) => outers[i] ?? [])
      .filter((outer) => boxHolds(outer.box, box))
      .toSorted((a, b) => a.area - b.area);
    const home = around.length === 1 ? around[0] : around.find((outer) => holds(outer.rings[0] as Ring, hole));
    home?.rings.push(hole);
  }
  return outers.map((outer) => outer.rings);
}

/** Most of the hole's edges have their middle inside: a hole may touch the ring around it. */
function holds(outer: Ring, hole: Ring): boolean {
  const inside = hole.filter((at, i) => ringContains(outer, between(at, corner(hole, i + 1), 0.5))).length;
  return inside * 2 > hole.length;
}
