import { createRequire } from 'node:module';
import type { Clipper2ZFactoryFunction, MainModule, PathD, PathsD, PolyPathD } from 'clipper2-wasm/dist/clipper2z';
import type { Point, Ring } from '../../../src/geometry/floorShape.ts';
import { arcToleranceMm } from './arcTolerance.ts';
import type { PlaneSets } from './planeSets.ts';
import { leftTurning } from './ringTests.ts';

const MITRE_LIMIT = 2;

/** Sets by Clipper2 in WebAssembly (clipper2-wasm): integers of 10^-digits mm. `quadrantSegments` is for its own offsets. */
export async function clipperWasmSets(quadrantSegments: number, digits: number): Promise<PlaneSets<PathsD>> {
  const { default: load } = createRequire(import.meta.url)('clipper2-wasm') as { default: Clipper2ZFactoryFunction };
  const clipper: MainModule = await load();
  const { NonZero } = clipper.FillRule;
  const made: { delete(): void }[] = [];
  const kept = <T extends { delete(): void }>(one: T): T => {
    made.push(one);
    return one;
  };
  const paths = (list: readonly (readonly Point[])[]): PathsD => {
    const whole = kept(new clipper.PathsD());
    for (const points of list) {
      const path = new clipper.PathD();
      path.assign(flat(points));
      whole.push_back(path);
      path.delete();
    }
    return whole;
  };
  const joined = (sets: readonly PathsD[]): PathsD => {
    const whole = kept(new clipper.PathsD());
    for (const set of sets) eachPath(set, (path) => whole.push_back(path));
    return kept(clipper.UnionSelfD(whole, NonZero, digits));
  };

  return {
    name: 'clipper2-wasm',
    fill: (ring) => kept(clipper.UnionSelfD(paths([ring]), NonZero, digits)),
    cover: (rings) => kept(clipper.UnionSelfD(paths(rings.map(leftTurning)), NonZero, digits)),
    union: joined,
    subtract: (from, what) => kept(clipper.DifferenceD(from, what, NonZero, digits)),
    intersect: (one, other) => kept(clipper.IntersectD(one, other, NonZero, digits)),
    grow: (set, byMm) =>
      kept(
        clipper.InflatePathsD(
          set,
          byMm,
          clipper.JoinType.Round,
          clipper.EndType.Polygon,
          MITRE_LIMIT,
          digits,
          arcToleranceMm(byMm, quadrantSegments),
        ),
      ),
    window: (set, { minX, minY, maxX, maxY }) => {
      const rect = new clipper.RectD(minX, minY, maxX, maxY);
      const seen = kept(clipper.RectClipPathsD(rect, set, digits));
      rect.delete();
      return seen;
    },
    pieces: (set) => {
      const tree = new clipper.PolyPathD();
      const nothing = new clipper.PathsD();
      clipper.BooleanOpOutD(clipper.ClipType.Union, NonZero, set, nothing, tree, digits);
      const pieces = outerPaths(tree).map(([outer, ...holes]) => {
        const piece = kept(new clipper.PathsD());
        for (const path of [outer, ...holes]) if (path) piece.push_back(path);
        return piece;
      });
      tree.delete();
      nothing.delete();
      return pieces;
    },
    outlines: (set) => {
      const rings: Ring[] = [];
      eachPath(set, (path) => rings.push(pointsOf(path)));
      return rings;
    },
    areaMm2: (set) => clipper.AreaPathsD(set),
    lengthMm: (path, set) => {
      const machine = new clipper.ClipperD(digits);
      const [closed, open] = [new clipper.PathsD(), new clipper.PathsD()];
      machine.AddOpenSubject(paths([path]));
      machine.AddClip(set);
      machine.ExecutePath(clipper.ClipType.Intersection, NonZero, closed, open);
      let sum = 0;
      eachPath(open, (piece) => (sum += lengthOf(pointsOf(piece))));
      for (const used of [machine, closed, open]) used.delete();
      return sum;
    },
    release: () => {
      for (const one of made) one.delete();
      made.length = 0;
    },
  };
}

/** x, y and an unused z a point, as the library keeps them. */
function flat(points: readonly Point[]): Float64Array {
  const values = new Float64Array(points.length * 3);
  for (const [i, [x, y]] of points.entries()) {
    values[3 * i] = x;
    values[3 * i + 1] = y;
  }
  return values;
}

function pointsOf(path: PathD): Point[] {
  const values = path.view();
  return Array.from({ length: values.length / 3 }, (_, i): Point => [values[3 * i] ?? NaN, values[3 * i + 1] ?? NaN]);
}

function eachPath(set: PathsD, act: (path: PathD) => void): void {
  for (let i = 0; i < set.size(); i += 1) {
    const path = set.get(i);
    act(path);
    path.delete();
  }
}

/** Each outer path with its holes; what lies in a hole is a piece of its own. */
function outerPaths(node: PolyPathD): PathD[][] {
  return children(node).flatMap((outer) => {
    const holes = children(outer);
    return [[outer.polygon(), ...holes.map((hole) => hole.polygon())], ...holes.flatMap(outerPaths)];
  });
}

function children(node: PolyPathD): PolyPathD[] {
  return Array.from({ length: node.count() }, (_, i) => node.child(i));
}

function lengthOf(points: readonly Point[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i += 1) {
    const [[ax, ay], [bx, by]] = [points[i - 1] as Point, points[i] as Point];
    sum += Math.hypot(bx - ax, by - ay);
  }
  return sum;
}
