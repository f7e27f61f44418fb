import { boxAroundAll } from '../box.ts';
import { cross, dot } from '../point.ts';
import type { Arc } from './edge.ts';
import { type Outline, type PathStep, pathOutline } from './outline.ts';
import type { TracedLoop, TracedPiece } from './trace.ts';

/*
 * What a disc covers whose middle goes everywhere inside an outline.
 *
 *     ________________        Each piece of the outline moves outwards by r: a straight one stays straight, an arc gets
 *    (   __________   )       wider or narrower about its own middle, so there is no second error of rounding; about
 *    |  |          |  |       each corner goes an arc of radius r. Where two pieces moved overlap, the winding number
 *    |  |__________|  |       is two. Sides of the tile stay: whoever asks has a margin around the tile.
 *    (________________)
 */

/** Moved pieces whose ends are this near, in mm, have no corner between them. */
const JOINED_MM = 1e-7;
/** Cosine of a turn: below this the outline turns right back on itself. */
const FOLD = -0.999_999;

export function grownOutline(
  loops: readonly TracedLoop[],
  byMm: number,
  around: Margins,
  layer: number,
  item: number,
): Outline {
  const parts = loops.map((loop) => pathOutline(grownPath(loop, byMm, around), layer, item));
  return {
    layer,
    item,
    edges: parts.flatMap((one) => one.edges),
    levels: parts.flatMap((one) => one.levels),
    box: boxAroundAll(parts.map((one) => one.box)),
  };
}

/** Heights at which level pieces are sides of the tile: they are no outline and stay where they are. */
export interface Margins {
  readonly minY: number;
  readonly maxY: number;
}

interface MovedPiece {
  readonly start: PathStep;
  readonly middle: readonly PathStep[];
  readonly end: PathStep;
  /** Directions of travel at both ends. */
  readonly startRun: readonly [number, number];
  readonly endRun: readonly [number, number];
  readonly isSide: boolean;
}

function grownPath(loop: TracedLoop, byMm: number, around: Margins): PathStep[] {
  if (byMm === 0) return loop.map(plainStep);
  const moved = loop.map((piece) => movedPiece(piece, byMm, around));
  const path: PathStep[] = [];
  for (const [i, piece] of moved.entries()) {
    const before = moved.at(i - 1) as MovedPiece;
    const source = loop[i] as TracedPiece;
    path.push(...cornerSteps(before, piece, source.fromX, source.fromY, byMm));
    path.push(...piece.middle, piece.end);
  }
  return path;
}

function plainStep({ part, fromX, fromY, toX, toY }: TracedPiece): PathStep {
  const arc = part?.edge.arc;
  return arc
    ? { x: toX, y: toY, arc: arcBetween(arc.cx, arc.cy, arc.radius, fromX, fromY, toX, toY) }
    : { x: toX, y: toY };
}

/** The turn of an arc from one point to another, less than half a circle either way. */
function arcBetween(cx: number, cy: number, radius: number, ax: number, ay: number, bx: number, by: number) {
  const u = [ax - cx, ay - cy] as const;
  const v = [bx - cx, by - cy] as const;
  return { cx, cy, radius, turn: Math.atan2(cross(u, v), dot(u, v)) };
}

function movedPiece(piece: TracedPiece, byMm: number, around: Margins): MovedPiece {
  const { fromX, fromY, toX, toY, part } = piece;
  const isSide = part ? part.isSide : isLevelSide(piece, around);
  if (part?.edge.arc) return movedArc(piece, part.edge.arc, byMm);
  const size = Math.hypot(toX - fromX, toY - fromY);
  const run = [(toX - fromX) / size, (toY - fromY) / size] as const;
  // The part lies to the left of the walk, so outwards is to its right.
  const [dx, dy] = isSide ? [0, 0] : [run[1] * byMm, -run[0] * byMm];
  return {
    start: { x: fromX + dx, y: fromY + dy },
    middle: [],
    end: { x: toX + dx, y: toY + dy },
    startRun: run,
    endRun: run,
    isSide,
  };
}

function isLevelSide({ fromY, toY }: TracedPiece, { minY, maxY }: Margins): boolean {
  return fromY === toY && (fromY === minY || fromY === maxY);
}

function movedArc(piece: TracedPiece, { cx, cy, radius }: Arc, byMm: number): MovedPiece {
  const { fromX, fromY, toX, toY } = piece;
  const { turn } = arcBetween(cx, cy, radius, fromX, fromY, toX, toY);
  const sense = turn >= 0 ? 1 : -1;
  // Walked against the turn of the axes the part lies outside the circle, and outwards is towards its middle.
  const grown = radius + sense * byMm;
  const share = grown / radius;
  const move = (x: number, y: number): PathStep => ({ x: cx + (x - cx) * share, y: cy + (y - cy) * share });
  const runAt = (x: number, y: number): readonly [number, number] => [
    (-(y - cy) / radius) * sense,
    ((x - cx) / radius) * sense,
  ];
  const end = move(toX, toY);
  return {
    start: move(fromX, fromY),
    // A disc larger than the circle reaches past its middle; there the arc would run backwards, so the middle is all of it.
    middle: grown < 0 ? [{ x: cx, y: cy }] : [],
    end: grown > 0 ? { ...end, arc: { cx, cy, radius: grown, turn } } : end,
    startRun: runAt(fromX, fromY),
    endRun: runAt(toX, toY),
    isSide: false,
  };
}

/** From the end of one moved piece to the start of the next, about the corner between them. */
function cornerSteps(before: MovedPiece, after: MovedPiece, x: number, y: number, byMm: number): PathStep[] {
  const { end } = before;
  const { start } = after;
  if (Math.abs(end.x - start.x) < JOINED_MM && Math.abs(end.y - start.y) < JOINED_MM) return [start];
  if (before.isSide || after.isSide) return [start];
  const turn = Math.atan2(cross(before.endRun, after.startRun), dot(before.endRun, after.startRun));
  const isFold = dot(before.endRun, after.startRun) < FOLD;
  if (!(turn > 0 || isFold)) return [{ x, y }, start];
  const outward = isFold && turn < 0 ? turn + 2 * Math.PI : turn;
  return [{ ...start, arc: { cx: x, cy: y, radius: byMm, turn: outward } }];
}
