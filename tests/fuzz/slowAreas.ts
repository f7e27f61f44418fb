import { type FloorShape, type GeometryFault, type Point, REST, type Ring } from '../../src/geometry/floorShape.ts';

/*
 * A slow second opinion on every area without arcs, and on lengths of lines. It shares no code with the engine: the plan
 * is cut by an upright line through every corner and every crossing, and each trapezoid asks which rings it lies in.
 *
 *      |   |  |    |       between two upright lines edges neither cross nor end,
 *      |  /|\ |    |       so the pieces of a column lie in order
 *      | / | \|____|
 *
 * O(n^2) edges; for plans of a few hundred.
 */
export interface SlowAreas {
  readonly netM2: number;
  readonly zonesM2: Readonly<Record<string, number>>;
  /** By zone, then by finding. */
  readonly findingsM2: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Length of each line on the net floor: at least, at most (a line along an edge may count or not). */
  readonly linesM: Readonly<Record<string, readonly [least: number, most: number]>>;
}

interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly ring: number;
  readonly turn: 1 | -1;
}

interface Layers {
  readonly rings: readonly Ring[];
  /** What a place is, from the winding number of each ring round it. */
  isNet(windings: ArrayLike<number>): boolean;
  zoneOf(windings: ArrayLike<number>): string;
  findingsOf(windings: ArrayLike<number>): readonly string[];
}

/** Areas of a plan by the trapezoids between its corners. Records that the engine refused, with a fault, are left out. */
export function slowAreas(given: FloorShape, faults: readonly GeometryFault[]): SlowAreas {
  const shape = aboutItsOrigin(withoutRefused(given, faults));
  const layers = layersOf(shape);
  const edges = edgesOf(layers.rings);
  const zonesM2: Record<string, number> = {};
  const findingsM2: Record<string, Record<string, number>> = {};
  let netM2 = 0;
  const take = (areaM2: number, windings: ArrayLike<number>): void => {
    if (!layers.isNet(windings)) return;
    const zone = layers.zoneOf(windings);
    netM2 += areaM2;
    zonesM2[zone] = (zonesM2[zone] ?? 0) + areaM2;
    for (const id of layers.findingsOf(windings)) {
      const own = (findingsM2[zone] ??= {});
      own[id] = (own[id] ?? 0) + areaM2;
    }
  };
  const xs = cutsOf(edges);
  for (let i = 0; i + 1 < xs.length; i += 1) {
    columnOf(edges, xs[i] as number, xs[i + 1] as number, layers.rings.length, take);
  }
  return { netM2, zonesM2, findingsM2, linesM: lineLengths(shape, layers) };
}

/** The plan without what has a fault of its own. */
export function withoutRefused(shape: FloorShape, faults: readonly GeometryFault[]): FloorShape {
  const refused = new Set(faults.filter(({ code }) => REFUSALS.has(code)).map(({ record }) => record));
  const kept = <T extends { readonly id: string }>(list: readonly T[]): T[] =>
    list.filter(({ id }) => !refused.has(id));
  return {
    ...shape,
    slabs: kept(shape.slabs),
    walls: kept(shape.walls).map((wall) => ({
      ...wall,
      gaps: wall.gaps.filter(({ passage }) => !refused.has(passage.id)),
    })),
    solids: kept(shape.solids),
    outOfScope: kept(shape.outOfScope),
    zones: kept(shape.zones),
    findings: kept(shape.findings),
    lines: kept(shape.lines),
  };
}

const REFUSALS: ReadonlySet<string> = new Set(['notANumber', 'tooFewCorners', 'noArea', 'crossesItself']);

/** Far from the origin a sum loses digits: the slow way counts from a corner of the plan. */
function aboutItsOrigin(shape: FloorShape): FloorShape {
  const [ox, oy] = shape.slabs[0]?.ring[0] ?? [0, 0];
  const ring = (points: readonly Point[]): Point[] => points.map(([x, y]) => [x - ox, y - oy]);
  const each = <T extends { readonly ring: Ring }>(list: readonly T[]): T[] =>
    list.map((one) => ({ ...one, ring: ring(one.ring) }));
  return {
    ...shape,
    slabs: each(shape.slabs),
    walls: shape.walls.map((wall) => ({ ...wall, body: ring(wall.body), gaps: each(wall.gaps) })),
    solids: each(shape.solids),
    outOfScope: each(shape.outOfScope),
    zones: each(shape.zones),
    findings: each(shape.findings),
    lines: shape.lines.map((one) => ({ ...one, path: ring(one.path) })),
  };
}

/** Every ring has a winding number of its own, so that two rings of opposite direction never cancel. */
function layersOf(shape: FloorShape): Layers {
  const rings: Ring[] = [];
  const add = (ring: Ring): number => rings.push(ring) - 1;
  const slabs = shape.slabs.map(({ ring }) => add(ring));
  const taken = [...shape.solids.filter(({ solid }) => solid), ...shape.outOfScope].map(({ ring }) => add(ring));
  const walls = shape.walls.map(({ body, gaps }) => ({ body: add(body), gaps: gaps.map(({ ring }) => add(ring)) }));
  const zones = shape.zones.map(({ id, ring }) => ({ id, at: add(ring) }));
  const findings = shape.findings.map(({ id, ring }) => ({ id, at: add(ring) }));
  return {
    rings,
    isNet: (windings) =>
      slabs.some((at) => windings[at] !== 0) &&
      !taken.some((at) => windings[at] !== 0) &&
      !walls.some(({ body, gaps }) => windings[body] !== 0 && !gaps.some((at) => windings[at] !== 0)),
    zoneOf: (windings) => zones.findLast(({ at }) => windings[at] !== 0)?.id ?? REST,
    findingsOf: (windings) => findings.filter(({ at }) => windings[at] !== 0).map(({ id }) => id),
  };
}

function edgesOf(rings: readonly Ring[]): Edge[] {
  return rings.flatMap((points, ring) =>
    points.flatMap(([ax, ay], i): Edge[] => {
      const [bx, by] = points[(i + 1) % points.length] ?? [ax, ay];
      if (ax === bx) return [];
      return ax < bx
        ? [{ x0: ax, y0: ay, x1: bx, y1: by, ring, turn: 1 }]
        : [{ x0: bx, y0: by, x1: ax, y1: ay, ring, turn: -1 }];
    }),
  );
}

function cutsOf(edges: readonly Edge[]): number[] {
  const xs = new Set<number>();
  for (const [i, a] of edges.entries()) {
    xs.add(a.x0).add(a.x1);
    for (let j = i + 1; j < edges.length; j += 1) {
      const x = crossingX(a, edges[j] as Edge);
      if (x !== null) xs.add(x);
    }
  }
  return [...xs].toSorted((a, b) => a - b);
}

function crossingX(a: Edge, b: Edge): number | null {
  const from = Math.max(a.x0, b.x0);
  const to = Math.min(a.x1, b.x1);
  if (!(from < to)) return null;
  const [first, last] = [heightAt(a, from) - heightAt(b, from), heightAt(a, to) - heightAt(b, to)];
  if (first > 0 === last > 0 || first === 0 || last === 0) return null;
  return from + (to - from) * (first / (first - last));
}

function heightAt({ x0, y0, x1, y1 }: Edge, x: number): number {
  if (x === x0) return y0;
  if (x === x1) return y1;
  return y0 + (y1 - y0) * ((x - x0) / (x1 - x0));
}

function columnOf(
  edges: readonly Edge[],
  from: number,
  to: number,
  ringCount: number,
  take: (areaM2: number, windings: ArrayLike<number>) => void,
): void {
  const pieces = edges
    .filter((edge) => edge.x0 <= from && edge.x1 >= to)
    .map((edge) => ({ edge, left: heightAt(edge, from), right: heightAt(edge, to) }))
    .toSorted((a, b) => a.left + a.right - b.left - b.right);
  const windings = new Int32Array(ringCount);
  for (const [i, { edge, left, right }] of pieces.entries()) {
    windings[edge.ring] = (windings[edge.ring] ?? 0) + edge.turn;
    const above = pieces[i + 1];
    if (!above) continue;
    const areaM2 = ((to - from) * (above.left - left + above.right - right)) / 2 / 1e6;
    if (areaM2 > 0) take(areaM2, windings);
  }
}

/** Winding number of a ring round a point, by half-plane crossings. */
export function windingOf(ring: Ring, [x, y]: Point): number {
  let winding = 0;
  for (const [i, [ax, ay]] of ring.entries()) {
    const [bx, by] = ring[(i + 1) % ring.length] ?? [ax, ay];
    if (ay <= y === by <= y) continue;
    const side = (bx - ax) * (y - ay) - (x - ax) * (by - ay);
    if (by > ay ? side > 0 : side < 0) winding += by > ay ? 1 : -1;
  }
  return winding;
}

/** A line along an edge lies on the floor when floor is this near, in mm. */
const BESIDE_MM = 0.05;
/** This far off a line, in mm, floor must be on both sides for the line to be on it whatever the drawing. */
const WITHIN_MM = 1e-4;

function lineLengths(shape: FloorShape, layers: Layers): Record<string, readonly [number, number]> {
  const lengths: Record<string, readonly [number, number]> = {};
  for (const { id, path } of shape.lines) {
    let [least, most] = [0, 0];
    for (const [i, b] of path.slice(1).entries()) {
      const [within, near] = legLengths(path[i] ?? b, b, layers);
      least += within;
      most += near;
    }
    lengths[id] = [least / 1000, most / 1000];
  }
  return lengths;
}

/** Of a leg what has floor on both sides, and what has floor on it or near it; mm. */
function legLengths(a: Point, b: Point, layers: Layers): readonly [number, number] {
  const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (size === 0) return [0, 0];
  const side: Point = [-(b[1] - a[1]) / size, (b[0] - a[0]) / size];
  const aside = (by: number): ((share: number) => Point) => {
    const [x, y] = [a[0] + side[0] * by, a[1] + side[1] * by];
    return (share) => [x + (b[0] - a[0]) * share, y + (b[1] - a[1]) * share];
  };
  const isNetAt = (at: Point): boolean => layers.isNet(layers.rings.map((ring) => windingOf(ring, at)));
  const asides = [0, WITHIN_MM, -WITHIN_MM, BESIDE_MM, -BESIDE_MM].map(aside);
  const cuts = asides.flatMap((at) => cutShares(at(0), at(1), layers.rings)).toSorted((x, y) => x - y);
  let [within, near] = [0, 0];
  for (const [k, to] of cuts.slice(1).entries()) {
    const from = cuts[k] as number;
    const [, left, right, ...beside] = asides.map((at) => isNetAt(at((from + to) / 2)));
    if (left && right) within += to - from;
    if (left || right || beside.some(Boolean)) near += to - from;
  }
  return [within * size, near * size];
}

/** Shares of a-b at which it meets any edge, in order, with both ends. */
export function cutShares(a: Point, b: Point, rings: readonly Ring[]): number[] {
  const run: Point = [b[0] - a[0], b[1] - a[1]];
  const square = run[0] * run[0] + run[1] * run[1];
  const shares = [0, 1];
  for (const ring of rings) {
    for (const [i, c] of ring.entries()) {
      const d = ring[(i + 1) % ring.length] ?? c;
      shares.push(((c[0] - a[0]) * run[0] + (c[1] - a[1]) * run[1]) / square);
      const other: Point = [d[0] - c[0], d[1] - c[1]];
      const turn = run[0] * other[1] - run[1] * other[0];
      if (turn !== 0) shares.push(((c[0] - a[0]) * other[1] - (c[1] - a[1]) * other[0]) / turn);
    }
  }
  return shares.filter((share) => share >= 0 && share <= 1).toSorted((x, y) => x - y);
}
