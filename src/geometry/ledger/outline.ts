import type { Box } from '../box.ts';
import type { Ring } from '../floorShape.ts';
import { type Edge, type EdgeSource, edgeBetween } from './edge.ts';

/*
 * A closed outline as the sweep wants it: rising edges in the order in which they were drawn.
 *
 *      b <-- a        A path is its corners, each with how it is reached from the one before: straight, or along
 *     /       )       a circle. Arcs are cut where a circle turns round (top, bottom, left, right), so that each
 *    c --->  d        piece rises steadily and leans to one side only.
 */
export interface Outline {
  readonly edges: readonly Edge[];
  /** Level pieces: the sweep has no use for them, lines that cross the outline do. */
  readonly levels: readonly Level[];
  readonly box: Box;
  /** Which question of the floor it answers (layers.ts), and which item of it. */
  readonly layer: number;
  readonly item: number;
}

export interface Level {
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
}

/** A corner of a path. `arc`: reached along a circle, by a turn in radians (positive from x towards y). */
export interface PathStep {
  readonly x: number;
  readonly y: number;
  readonly arc?: { readonly cx: number; readonly cy: number; readonly radius: number; readonly turn: number };
}

export function ringOutline(ring: Ring, layer: number, item: number, sources?: readonly EdgeSource[]): Outline {
  const drawing: Drawing = { edges: [], levels: [] };
  for (let i = 0; i < ring.length; i += 1) {
    const [ax, ay] = ring[i] as readonly [number, number];
    const [bx, by] = ring[(i + 1) % ring.length] as readonly [number, number];
    addStraight(ax, ay, bx, by, drawing, sources?.[i]);
  }
  return { ...drawing, box: boxOfEdges(drawing.edges), layer, item };
}

/** A closed path; the first corner's `arc` says how it is reached from the last. */
export function pathOutline(path: readonly PathStep[], layer: number, item: number): Outline {
  const drawing: Drawing = { edges: [], levels: [] };
  let from = path.at(-1);
  for (const to of path) {
    if (from && to.arc) addArc(from, to.x, to.y, to.arc, drawing);
    else if (from) addStraight(from.x, from.y, to.x, to.y, drawing);
    from = to;
  }
  return { ...drawing, box: boxOfEdges(drawing.edges), layer, item };
}

interface Drawing {
  readonly edges: Edge[];
  readonly levels: Level[];
}

function addStraight(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  { edges, levels }: Drawing,
  source: EdgeSource | null = null,
): void {
  const edge = edgeBetween(ax, ay, bx, by, null, source);
  if (edge) edges.push(edge);
  else if (ax !== bx) levels.push({ y: ay, fromX: Math.min(ax, bx), toX: Math.max(ax, bx) });
}

const QUARTER = Math.PI / 2;
/** Angles nearer than this, in radians, are one. */
const SAME_ANGLE = 1e-12;

function addArc(from: PathStep, toX: number, toY: number, arc: NonNullable<PathStep['arc']>, drawing: Drawing): void {
  const { cx, cy, radius, turn } = arc;
  if (radius <= 0 || turn === 0) {
    addStraight(from.x, from.y, toX, toY, drawing);
    return;
  }
  const start = Math.atan2(from.y - cy, from.x - cx);
  const sense = turn > 0 ? 1 : -1;
  const right = { cx, cy, radius, half: 1 } as const;
  const left = { cx, cy, radius, half: -1 } as const;
  let quarter = sense > 0 ? Math.floor(start / QUARTER + SAME_ANGLE) : Math.ceil(start / QUARTER - SAME_ANGLE);
  let [x, y] = [from.x, from.y];
  for (let isLast = false; !isLast;) {
    const line = quarter + sense;
    isLast = sense * (line * QUARTER - start) >= Math.abs(turn) - SAME_ANGLE;
    const half = isRight(Math.min(quarter, line)) ? 1 : -1;
    const [nextX, nextY] = isLast ? [toX, toY] : onQuarterLine(line, cx, cy, radius);
    const edge = edgeBetween(x, y, nextX, nextY, half > 0 ? right : left);
    if (edge) drawing.edges.push(edge);
    [x, y] = [nextX, nextY];
    quarter = line;
  }
}

/** Quarters are numbered from the x axis towards y; the first and the fourth lie right of the middle. */
function isRight(quarter: number): boolean {
  const turn = ((quarter % 4) + 4) % 4;
  return turn === 0 || turn === 3;
}

function onQuarterLine(line: number, cx: number, cy: number, radius: number): readonly [number, number] {
  switch (((line % 4) + 4) % 4) {
    case 0:
      return [cx + radius, cy];
    case 1:
      return [cx, cy + radius];
    case 2:
      return [cx - radius, cy];
    default:
      return [cx, cy - radius];
  }
}

function boxOfEdges(edges: readonly Edge[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x0, y0, x1, y1 } of edges) {
    minX = Math.min(minX, x0, x1);
    maxX = Math.max(maxX, x0, x1);
    minY = Math.min(minY, y0);
    maxY = Math.max(maxY, y1);
  }
  return { minX, minY, maxX, maxY };
}
