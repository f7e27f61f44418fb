import type { FloorShape, Point, Ring } from '../../../src/geometry/floorShape.ts';
import { windingOf } from './ringTests.ts';

/*
 *   +--------+--------+
 *   | slab 1 # slab 2 |     apron: beyond an edge where the floor runs on, for the head to lean out
 *   +--------+-- run -+     skin (#): a hard edge with floor or apron on both sides, made a slit
 *            | apron  |     so thin that no area feels it
 */

/** Half the thickness of a skin, in mm: wider than the libraries' grid, far under what shows in an area. */
const SKIN_HALF_MM = 5e-5;
/** How far aprons lap over what they join, in mm, so that no rounding leaves a slit. */
const SEAM_MM = 5e-5;
/** The same for fans, in radians: they lap over the rectangles beside them. */
const SEAM_ANGLE = 0.01;
/** How far beside an edge, in mm, one looks what lies there. */
const BESIDE_MM = 1e-3;

/**
 * Rectangles beyond the `run` edges that have no floor behind them, and a fan where two of them meet at a corner that
 * juts out. They go on past the ends of the edges by `beyondMm`.
 */
export function apronsOf(slabs: FloorShape['slabs'], depthMm: number, beyondMm = SEAM_MM): Ring[] {
  const edges = openEdges(slabs);
  const rectangles = edges.map(({ a, b }) => rectangle(a, b, -depthMm, SEAM_MM, beyondMm));
  const fans = edges.flatMap((edge) =>
    edges
      .filter((next) => next.a[0] === edge.b[0] && next.a[1] === edge.b[1])
      .flatMap((next) => fanBetween(edge, next, depthMm)),
  );
  return [...rectangles, ...fans];
}

interface OpenEdge {
  readonly a: Point;
  readonly b: Point;
}

/** `run` edges with floor on one side alone, each with the floor on its left. */
function openEdges(slabs: FloorShape['slabs']): OpenEdge[] {
  const rings = slabs.map((slab) => slab.ring);
  return slabs.flatMap(({ ring, faces }) =>
    ring.flatMap((a, i): OpenEdge[] => {
      if (faces[i] !== 'run') return [];
      return piecesOf(a, ring[(i + 1) % ring.length] as Point, rings).flatMap(([from, to]) => {
        const [left, right] = floorBeside(from, to, rings);
        if (left === right) return [];
        return [left ? { a: from, b: to } : { a: to, b: from }];
      });
    }),
  );
}

function fanBetween(before: OpenEdge, after: OpenEdge, depthMm: number): Ring[] {
  const outOf = ({ a, b }: OpenEdge): number => Math.atan2(a[0] - b[0], b[1] - a[1]);
  const from = outOf(before);
  const sweep = (outOf(after) - from + 2 * Math.PI) % (2 * Math.PI);
  if (sweep <= 0 || sweep >= Math.PI) return [];
  const [x, y] = before.b;
  const arc = Array.from({ length: 17 }, (_, i): Point => {
    const angle = from - SEAM_ANGLE + ((sweep + 2 * SEAM_ANGLE) * i) / 16;
    return [x + depthMm * Math.cos(angle), y + depthMm * Math.sin(angle)];
  });
  return [[before.b, ...arc]];
}

/** Slits along hard edges between two slabs, or between a slab and an apron. */
export function skinsOf(slabs: FloorShape['slabs'], aprons: readonly Ring[]): Ring[] {
  const rings = [...slabs.map((slab) => slab.ring), ...aprons];
  if (rings.length < 2) return [];
  return slabs.flatMap(({ ring, faces }) =>
    ring.flatMap((a, i) => {
      if (faces[i] === 'run') return [];
      return piecesOf(a, ring[(i + 1) % ring.length] as Point, rings).flatMap(([from, to]) => {
        const isOwnInside = floorBeside(from, to, [ring]).every(Boolean);
        const isInside = floorBeside(from, to, rings).every(Boolean);
        return isInside && !isOwnInside ? [rectangle(from, to, -SKIN_HALF_MM, SKIN_HALF_MM, 2 * SKIN_HALF_MM)] : [];
      });
    }),
  );
}

/** An edge cut wherever another meets it. */
function piecesOf(a: Point, b: Point, rings: readonly Ring[]): (readonly [Point, Point])[] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length === 0) return [];
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const cuts = [0, length];
  for (const ring of rings) {
    for (const [i, p] of ring.entries()) {
      const q = ring[(i + 1) % ring.length] as Point;
      const [offP, offQ] = [off(p), off(q)];
      if (Math.abs(offP) < BESIDE_MM) cuts.push(along(p));
      if (offP * offQ < 0) cuts.push(along(p) + ((along(q) - along(p)) * offP) / (offP - offQ));
    }
  }
  function off(p: Point): number {
    return (p[1] - a[1]) * ux - (p[0] - a[0]) * uy;
  }
  function along(p: Point): number {
    return (p[0] - a[0]) * ux + (p[1] - a[1]) * uy;
  }
  const inOrder = cuts.filter((cut) => cut >= 0 && cut <= length).toSorted((x, y) => x - y);
  // A cut that rounding puts beside an end is that end, to the last bit: there fans look for the next edge.
  const at = (cut: number): Point => {
    if (cut < BESIDE_MM) return a;
    return length - cut < BESIDE_MM ? b : [a[0] + cut * ux, a[1] + cut * uy];
  };
  return inOrder.flatMap((cut, i) => {
    const next = inOrder[i + 1] ?? cut;
    return next - cut > BESIDE_MM ? [[at(cut), at(next)] as const] : [];
  });
}

function floorBeside(a: Point, b: Point, rings: readonly Ring[]): readonly [left: boolean, right: boolean] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const left: Point = [(a[1] - b[1]) / length, (b[0] - a[0]) / length];
  const isFloor = (by: number): boolean => {
    const at: Point = [middle[0] + by * left[0], middle[1] + by * left[1]];
    return rings.some((ring) => windingOf(ring, at) !== 0);
  };
  return [isFloor(BESIDE_MM), isFloor(-BESIDE_MM)];
}

/** Along a-b, between two distances to its left, made longer by `beyond` at both ends. */
function rectangle(a: Point, b: Point, from: number, to: number, beyond = 0): Ring {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const at = ([x, y]: Point, along: number, left: number): Point => [
    x + along * ux - left * uy,
    y + along * uy + left * ux,
  ];
  return [at(a, -beyond, from), at(b, beyond, from), at(b, beyond, to), at(a, -beyond, to)];
}
