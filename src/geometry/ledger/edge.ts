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
 * Lengths in mm. An edge is made once and shared by all tiles; a tile holds the part of it that lies there, so that
 * neighbours find the same x at the same height to the last bit, and the many parts stay small.
 */
export interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly up: 1 | -1;
  /** The circle that it lies on; null: straight. */
  readonly arc: Arc | null;
  /** What drew it, for faces. */
  readonly source: EdgeSource | null;
}

export interface Arc {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  /** Which half of the circle: 1 right of the middle, -1 left of it. */
  readonly half: 1 | -1;
}

/** The whole drawn edge behind a piece of outline. */
export interface EdgeSource {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** What of an edge lies in a tile: between two heights, as part of outline number `ring`. */
export interface EdgePart {
  readonly edge: Edge;
  readonly lo: number;
  readonly hi: number;
  readonly ring: number;
  /** True for a side of the tile, put in where an outline was cut off. */
  readonly isSide: boolean;
}

/** An edge between two points of different height, or null for a level one. */
export function edgeBetween(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  arc: Arc | null = null,
  source: EdgeSource | null = null,
): Edge | null {
  if (ay === by) return null;
  return ay < by
    ? { x0: ax, y0: ay, x1: bx, y1: by, up: 1, arc, source }
    : { x0: bx, y0: by, x1: ax, y1: ay, up: -1, arc, source };
}

/** Where an edge is at a height. Outside its own heights a straight one goes on and a round one stops. */
export function xAt({ x0, y0, x1, y1, arc }: Edge, y: number): number {
  if (y <= y0) return x0;
  if (y >= y1) return x1;
  if (!arc) return x0 + ((y - y0) / (y1 - y0)) * (x1 - x0);
  const rise = y - arc.cy;
  return arc.cx + arc.half * Math.sqrt(Math.max(0, arc.radius * arc.radius - rise * rise));
}

/** At which height an edge is at x; x must lie between its ends. */
export function yAt({ x0, y0, x1, y1, arc }: Edge, x: number): number {
  if (x === x0) return y0;
  if (x === x1) return y1;
  if (!arc) return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
  const run = x - arc.cx;
  const above = (y0 + y1) / 2 >= arc.cy ? 1 : -1;
  return arc.cy + above * Math.sqrt(Math.max(0, arc.radius * arc.radius - run * run));
}

/** Area in mm2 between an edge and the vertical at `fromX`, from a height where it is at `low` to one where it is at `high`. */
export function areaBeside(edge: Edge, bottom: number, low: number, top: number, high: number, fromX: number): number {
  const trapezoid = (top - bottom) * ((low - fromX + (high - fromX)) / 2);
  return edge.arc ? trapezoid + edge.arc.half * bulge(edge.arc.radius, low, bottom, high, top) : trapezoid;
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
