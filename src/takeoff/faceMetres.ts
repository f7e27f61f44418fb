import type { Point, ZoneMeasure } from '../geometry/floorShape.ts';
import { between, distance } from '../geometry/point.ts';
import { nearestOnSegment } from '../geometry/segment.ts';

/** How far, mm, a piece of face may lie off the edge that it belongs to. */
const NEAR_MM = 1;

export type FaceLine = ZoneMeasure['faceLines'][number];

/** Metres of a zone's faces that belong to a record, by all or by a filter. */
export function metresOf(zone: ZoneMeasure, record: string, keep: (line: FaceLine) => boolean = () => true): number {
  return piecesOf(zone.faceLines.filter((line) => line.of === record && keep(line))).reduce(
    (sum, [a, b]) => sum + distance(a, b) / 1000,
    0,
  );
}

/** Metres of a zone's faces that lie along one edge of a slab's outline. */
export function metresAlong(
  zone: ZoneMeasure,
  slab: string,
  a: Point,
  b: Point,
  keep: (line: FaceLine) => boolean = () => true,
): number {
  const pieces = piecesOf(zone.faceLines.filter((line) => line.of === slab && keep(line)));
  const along = pieces.filter(([from, to]) => {
    const middle = between(from, to, 0.5);
    return [from, middle, to].every((at) => nearestOnSegment(at, a, b).distance < NEAR_MM);
  });
  return along.reduce((sum, [from, to]) => sum + distance(from, to) / 1000, 0);
}

function piecesOf(lines: readonly FaceLine[]): (readonly [Point, Point])[] {
  return lines.flatMap(({ path }) => path.slice(1).map((to, i) => [path[i] as Point, to] as const));
}
