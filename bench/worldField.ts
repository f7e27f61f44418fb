import type { FloorShape, Point, Region, Ring } from '../src/geometry/floorShape.ts';
import { angleOf, arcPoints } from '../src/geometry/arc.ts';
import { subtract } from '../src/geometry/clip.ts';
import { minus, quarterTurn, times } from '../src/geometry/point.ts';
import { corner, wound } from '../src/geometry/ring.ts';
import { WORLD_MACHINE } from './worlds.ts';

const BAND_MM = WORLD_MACHINE.clearanceMm.wall + WORLD_MACHINE.lapMm;

/**
 * The floor of a world less a band along every face: close to the machine field of the engine, corners of columns
 * rounded in the same way, and independent of it. Zones are not minded, so all of the floor is one field.
 */
export function worldField(shape: FloorShape): Region {
  const slabs: Region = shape.slabs.map(({ ring }) => [ring]);
  const edges = shape.slabs.flatMap(({ ring, faces }) =>
    ring.flatMap((from, i) => (faces[i] === 'run' ? [] : [[from, corner(ring, i + 1)]])),
  );
  const bodies = shape.walls.flatMap(({ body, gaps }) =>
    taken(
      [[body]],
      gaps.map(({ ring }) => [ring]),
    ),
  );
  const faces: Region = [...edges, ...shape.solids.map(({ ring }) => ring), ...bodies.map(([ring = []]) => ring)].map(
    (ring) => [grown(ring)],
  );
  return taken(slabs, faces);
}

function taken(from: Region, away: Region): Region {
  const result = subtract(from, away);
  if (!result.ok) throw new Error(result.code);
  return result.region;
}

/** A convex ring with a band around it, round at the corners. Two points are a ring as well. */
function grown(ring: Ring): Ring {
  const convex = wound(ring, true);
  return convex.flatMap((at, i): readonly Point[] => {
    const before = outwards(minus(at, corner(convex, i - 1)));
    const after = outwards(minus(corner(convex, i + 1), at));
    const turn = angleOf(after) - angleOf(before);
    return arcPoints(at, BAND_MM, angleOf(before), turn < 0 ? turn + 2 * Math.PI : turn, 'area');
  });
}

function outwards(run: Point): Point {
  return times(quarterTurn(run), -1);
}
