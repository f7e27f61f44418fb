import { type Box, boxOf, grownBox } from '../box.ts';
import type { Point } from '../floorShape.ts';
import { along, between, distance, dot, minus, quarterTurn, unit } from '../point.ts';
import { crossing, nearestOnSegment } from '../segment.ts';
import { boxIndex } from '../spatial.ts';
import { isNet } from './cells.ts';
import { type BoundaryFace, type ClusterTrace, type DrawnEdge, HARDNESS, type HardItem, isSlab } from './cluster.ts';
import { HARD_LAYERS } from './layers.ts';
import { placeIn } from './place.ts';
import { askAt } from './walks.ts';

/*
 * Where two slabs meet and an edge between them is hard, the floor goes on but nothing crosses:
 *
 *   +-------+-------+        such an edge has a face on each side, though it is no boundary of net floor; it is
 *   |  s1   |  s2   |        cut wherever another edge meets it, so that the faces of each corner end there
 *   +-------+-------+
 */

/** Two things drawn this near, in mm, were meant to touch; and how far beside an edge floor is looked for. */
const BESIDE_MM = 0.05;
/** Shorter pieces, in mm, are rounding. */
const NOTHING_MM = 0.1;

/** Both faces of each hard edge that has floor on both sides. */
export function facesBetweenSlabs({ tile }: ClusterTrace, items: readonly HardItem[]): BoundaryFace[] {
  if (items.filter(isSlab).length < 2) return [];
  const drawn = items
    .flatMap((item) => item.drawn.map((edge) => ({ edge, ofSlab: isSlab(item) })))
    .map(({ edge, ofSlab }, number) => lineOf(edge, ofSlab, number));
  const index = boxIndex(drawn.map(({ box }) => box));
  const place = placeIn(tile, HARD_LAYERS);
  const isNetAt = ([x, y]: Point): boolean => askAt(tile, place, x, y, isNet);
  return drawn.filter(isHardEdge).flatMap((line) => {
    const others = index
      .meeting(grownBox(line.box, BESIDE_MM))
      .map((i) => drawn[i] as DrawnLine)
      .filter((other) => other !== line);
    const alike = others.filter(isHardEdge);
    return piecesOf(line, others).flatMap(([a, b]): BoundaryFace[] => {
      const left = quarterTurn(unit(minus(b, a)));
      const middle = between(a, b, 0.5);
      if (!isNetAt(along(middle, left, BESIDE_MM)) || !isNetAt(along(middle, left, -BESIDE_MM))) return [];
      const same = alike.filter((other) => isNear(a, other) && isNear(b, other));
      if (same.some((other) => runsAs(other, line) && comesBefore(other, line))) return [];
      const own: BoundaryFace = { a, b, kind: line.edge.kind, of: line.edge.of };
      const isBackDrawn = same.some((other) => !runsAs(other, line));
      return isBackDrawn ? [own] : [own, { ...own, a: b, b: a }];
    });
  });
}

interface DrawnLine {
  readonly a: Point;
  readonly b: Point;
  readonly edge: DrawnEdge;
  readonly ofSlab: boolean;
  readonly number: number;
  readonly box: Box;
}

function lineOf(edge: DrawnEdge, ofSlab: boolean, number: number): DrawnLine {
  const [a, b]: [Point, Point] = [
    [edge.ax, edge.ay],
    [edge.bx, edge.by],
  ];
  return { a, b, edge, ofSlab, number, box: boxOf([a, b]) };
}

function isHardEdge({ edge, ofSlab }: DrawnLine): boolean {
  return ofSlab && HARDNESS[edge.kind] > HARDNESS.run;
}

/** A line cut where others cross it, and where they have corners on it. */
function piecesOf({ a, b }: DrawnLine, others: readonly DrawnLine[]): (readonly [Point, Point])[] {
  const cuts: { share: number; at: Point }[] = [];
  for (const other of others) {
    const met = crossing(a, b, other.a, other.b);
    if (met) cuts.push({ share: met.shareA, at: met.at });
    for (const end of [other.a, other.b]) {
      const { share, at, distance: off } = nearestOnSegment(end, a, b);
      if (off <= BESIDE_MM) cuts.push({ share, at });
    }
  }
  cuts.sort((x, y) => x.share - y.share);
  const places = [a];
  for (const { at } of cuts) {
    const isNew = distance(places.at(-1) as Point, at) > NOTHING_MM && distance(at, b) > NOTHING_MM;
    if (isNew) places.push(at);
  }
  if (distance(places.at(-1) as Point, b) > NOTHING_MM) places.push(b);
  return places.slice(1).map((at, i) => [places[i] as Point, at] as const);
}

function isNear(at: Point, { a, b }: DrawnLine): boolean {
  return nearestOnSegment(at, a, b).distance <= BESIDE_MM;
}

function runsAs(other: DrawnLine, line: DrawnLine): boolean {
  return dot(minus(other.b, other.a), minus(line.b, line.a)) > 0;
}

/** Of edges drawn on each other the same way one is the face: the hardest, or else the first. */
function comesBefore(other: DrawnLine, line: DrawnLine): boolean {
  const harder = HARDNESS[other.edge.kind] - HARDNESS[line.edge.kind];
  return harder > 0 || (harder === 0 && other.number < line.number);
}
