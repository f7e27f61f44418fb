/*
 * The atom of the ledger: a piece of outline that rises steadily, straight or a quarter of a circle at most.
 *
 *      y
 *      |    (x1, y1)          For each height there is one x, so along a slab between two heights an edge
 *      |     /                is a side of a trapezoid. A closed outline is a set of such edges; level pieces
 *      |    /   or  )         have no height and need not be kept. `up` is the direction in which the outline
 *      |   /       /          runs: crossing the edge from left to right changes the winding number by it.
 *      | (x0, y0)
 *
 * Lengths in mm. An edge that was cut to a tile keeps the shape it was cut from, so that neighbours find the
 * same x at the same height to the last bit; only `lo` and `hi` say what is left of it.
 */
export interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  /** Circle that the edge lies on; radius 0: straight. */
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  /** Which half of its circle: 1 right of the middle, -1 left of it. */
  readonly half: 1 | -1;
  /** Heights between which the edge counts. */
  readonly lo: number;
  readonly hi: number;
  readonly up: 1 | -1;
  /** Number of the outline it belongs to, in the tile. */
  ring: number;
  /** True for a side of the tile, put in where the outline was cut off. */
  readonly cut: boolean;
  /** What drew it, for faces. */
  readonly source: EdgeSource | null;
  /** Left by the sweep: x and height where it was asked last, and area to its left in the slab. */
  lastY: number;
  lastX: number;
  leftArea: number;
}

/** The whole drawn edge behind a piece of outline. */
export interface EdgeSource {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** A straight edge between two points of different height, or null for a level one. */
export function straightEdge(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  source: EdgeSource | null = null,
  cut = false,
): Edge | null {
  if (ay === by) return null;
  return ay < by
    ? makeEdge(ax, ay, bx, by, 0, 0, 0, 1, 1, source, cut)
    : makeEdge(bx, by, ax, ay, 0, 0, 0, 1, -1, source, cut);
}

/** A piece of a circle that stays within one quarter of it, between two points of different height. */
export function arcEdge(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  radius: number,
  half: 1 | -1,
): Edge | null {
  if (ay === by) return null;
  return ay < by
    ? makeEdge(ax, ay, bx, by, cx, cy, radius, half, 1, null, false)
    : makeEdge(bx, by, ax, ay, cx, cy, radius, half, -1, null, false);
}

/** All edges are made here, with all fields in one order: the sweep reads millions of them. */
function makeEdge(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  cx: number,
  cy: number,
  radius: number,
  half: 1 | -1,
  up: 1 | -1,
  source: EdgeSource | null,
  cut: boolean,
): Edge {
  return {
    x0,
    y0,
    x1,
    y1,
    cx,
    cy,
    radius,
    half,
    lo: y0,
    hi: y1,
    up,
    ring: 0,
    cut,
    source,
    lastY: Number.NaN,
    lastX: 0,
    leftArea: 0,
  };
}

/** The part of an edge between two heights, as an edge of the outline `ring`. */
export function edgePart(edge: Edge, lo: number, hi: number, ring: number): Edge {
  const part = makeEdge(
    edge.x0,
    edge.y0,
    edge.x1,
    edge.y1,
    edge.cx,
    edge.cy,
    edge.radius,
    edge.half,
    edge.up,
    edge.source,
    edge.cut,
  ) as { -readonly [K in keyof Edge]: Edge[K] };
  part.lo = lo;
  part.hi = hi;
  part.ring = ring;
  return part;
}

/** Where an edge is at a height. Outside its own heights a straight one goes on and a round one stops. */
export function xAt(edge: Edge, y: number): number {
  if (y === edge.y0) return edge.x0;
  if (y === edge.y1) return edge.x1;
  if (edge.radius === 0) return edge.x0 + ((y - edge.y0) / (edge.y1 - edge.y0)) * (edge.x1 - edge.x0);
  const rise = y - edge.cy;
  return edge.cx + edge.half * Math.sqrt(Math.max(0, edge.radius * edge.radius - rise * rise));
}

/** At which height an edge is at x; x must lie between its ends. */
export function yAt(edge: Edge, x: number): number {
  if (x === edge.x0) return edge.y0;
  if (x === edge.x1) return edge.y1;
  if (edge.radius === 0) return edge.y0 + ((x - edge.x0) / (edge.x1 - edge.x0)) * (edge.y1 - edge.y0);
  const run = x - edge.cx;
  const above = (edge.y0 + edge.y1) / 2 >= edge.cy ? 1 : -1;
  return edge.cy + above * Math.sqrt(Math.max(0, edge.radius * edge.radius - run * run));
}

/** Area in mm2 between an edge and the vertical at `fromX`, from one height to another; negative left of it. */
export function areaBeside(edge: Edge, bottom: number, top: number, fromX: number): number {
  const low = edge.lastY === bottom ? edge.lastX : xAt(edge, bottom);
  const high = xAt(edge, top);
  edge.lastY = top;
  edge.lastX = high;
  const trapezoid = (top - bottom) * ((low - fromX + (high - fromX)) / 2);
  if (edge.radius === 0) return trapezoid;
  return trapezoid + edge.half * bulge(edge.radius, low, bottom, high, top);
}

/** Below this angle the area between chord and arc comes from its series: there the closed form cancels. */
const SMALL_ANGLE = 0.35;

/** Area between an arc of at most half a turn and its chord. */
function bulge(radius: number, ax: number, ay: number, bx: number, by: number): number {
  const chord = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  const angle = 2 * Math.asin(Math.min(1, chord / (2 * radius)));
  if (angle > SMALL_ANGLE) return (radius * radius * (angle - Math.sin(angle))) / 2;
  const square = angle * angle;
  const series = 1 - (square / 20) * (1 - (square / 42) * (1 - (square / 72) * (1 - square / 110)));
  return (radius * radius * angle * square * series) / 12;
}
