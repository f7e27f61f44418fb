import {
  Clipper,
  Clipper64,
  ClipType,
  EndType,
  FillRule,
  JoinType,
  PolyTree64,
  type Path64,
  type Paths64,
  type PolyPath64,
  type Rect64,
} from 'clipper2-ts';
import type { Point } from '../../../src/geometry/floorShape.ts';
import { arcToleranceMm } from './arcTolerance.ts';
import type { PlaneSets } from './planeSets.ts';
import { leftTurning } from './ringTests.ts';

const MITRE_LIMIT = 2;

/** Sets by Clipper2 in TypeScript (clipper2-ts): integers of 10^-digits mm. `quadrantSegments` is for its own offsets. */
export function clipperTsSets(quadrantSegments: number, digits: number): PlaneSets<Paths64> {
  const scale = 10 ** digits;
  const path = (points: readonly Point[]): Path64 =>
    points.map(([x, y]) => ({ x: Math.round(x * scale), y: Math.round(y * scale) }));
  const points = (one: Path64): Point[] => one.map(({ x, y }) => [x / scale, y / scale]);
  const { NonZero } = FillRule;
  return {
    name: 'clipper2-ts',
    fill: (ring) => Clipper.union([path(ring)], NonZero),
    cover: (rings) =>
      Clipper.union(
        rings.map((ring) => path(leftTurning(ring))),
        NonZero,
      ),
    union: (sets) => Clipper.union(sets.flat(), NonZero),
    subtract: (from, what) => Clipper.difference(from, what, NonZero),
    intersect: (one, other) => Clipper.intersect(one, other, NonZero),
    grow: (set, byMm) =>
      Clipper.inflatePaths(
        set,
        byMm * scale,
        JoinType.Round,
        EndType.Polygon,
        MITRE_LIMIT,
        arcToleranceMm(byMm * scale, quadrantSegments),
      ),
    // An overlay: its own rectClip drops a corner of the box now and then (2.0.1: 6 of some 900 pieces of floor).
    window: (set, { minX, minY, maxX, maxY }) => {
      const box = path([
        [minX, minY],
        [maxX, minY],
        [maxX, maxY],
        [minX, maxY],
      ]);
      const near = set.filter((one) => boundsMeet(Clipper.getBounds(one), Clipper.getBounds(box)));
      return Clipper.intersect(near, [box], NonZero);
    },
    pieces: (set) => {
      const tree = new PolyTree64();
      Clipper.booleanOpWithPolyTree(ClipType.Union, set, null, tree, NonZero);
      return outerPaths(tree);
    },
    outlines: (set) => set.map(points),
    areaMm2: (set) => Clipper.areaPaths(set) / scale ** 2,
    lengthMm: (line, set) => {
      const machine = new Clipper64();
      const open: Paths64 = [];
      machine.addOpenSubject([path(line)]);
      machine.addClip(set);
      machine.execute(ClipType.Intersection, NonZero, [], open);
      return open.reduce((sum, piece) => sum + lengthOf(piece) / scale, 0);
    },
    release: () => {
      // Nothing outside the JavaScript heap.
    },
  };
}

function boundsMeet(one: Rect64, other: Rect64): boolean {
  return one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom;
}

/** Each outer path with its holes; what lies in a hole is a piece of its own. */
function outerPaths(node: PolyPath64): Paths64[] {
  return children(node).flatMap((outer) => {
    const holes = children(outer);
    const whole = [outer, ...holes].flatMap((one) => (one.polygon ? [one.polygon] : []));
    return [whole, ...holes.flatMap(outerPaths)];
  });
}

function children(node: PolyPath64): PolyPath64[] {
  return Array.from({ length: node.count }, (_, i) => node.child(i));
}

function lengthOf(line: Path64): number {
  return line.slice(1).reduce((sum, b, i) => {
    const a = line[i] ?? b;
    return sum + Math.hypot(b.x - a.x, b.y - a.y);
  }, 0);
}
