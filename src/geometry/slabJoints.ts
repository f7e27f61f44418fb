import type { FloorShape, Ring } from './floorShape.ts';
import { besideFace } from './boundary.ts';
import { type Face, faceBetween, partOfFace } from './hardFace.ts';
import { along } from './point.ts';
import { type RegionIndex, insideShares } from './regionIndex.ts';
import { corner } from './ring.ts';

/*
 * Where two slabs meet and an edge between them is hard, the floor is united but nothing crosses:
 *
 *   +-------+-------+        a skin far thinner than a hair is taken out along that edge,
 *   |  s1   |  s2   |   ->   so that both sides are outline and have faces of their own
 *   +-------+-------+
 */

/** Half the thickness of a skin, in mm: 0.04 mm2 of floor a millimetre. */
const SKIN_HALF_MM = 0.02;

/** Rings to take out along hard edges that have floor on both sides. `gross` is the floor of all slabs united. */
export function skinsBetweenSlabs(shape: FloorShape, gross: RegionIndex): readonly Ring[] {
  if (shape.slabs.length < 2) return [];
  return shape.slabs.flatMap((slab) =>
    slab.ring.flatMap((a, i): Ring[] => {
      const kind = slab.faces[i] ?? 'wall';
      if (kind === 'run') return [];
      const face = faceBetween(a, corner(slab.ring, i + 1), kind, slab.id);
      return insideShares(gross, face.a, face.b, 2 * SKIN_HALF_MM)
        .map(([from, to]) => partOfFace(face, from, to))
        .filter((part) => isFloorOnBothSides(part, gross))
        .map(skinAlong);
    }),
  );
}

function isFloorOnBothSides(face: Face, gross: RegionIndex): boolean {
  return face.lengthMm > 1 && [1, -1].every((off) => gross.contains(besideFace(face, 0.5, off)));
}

function skinAlong({ a, b, run, inward }: Face): Ring {
  const [start, end] = [along(a, run, -2 * SKIN_HALF_MM), along(b, run, 2 * SKIN_HALF_MM)];
  return [
    along(start, inward, -SKIN_HALF_MM),
    along(end, inward, -SKIN_HALF_MM),
    along(end, inward, SKIN_HALF_MM),
    along(start, inward, SKIN_HALF_MM),
  ];
}
