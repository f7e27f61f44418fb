import type { Point } from '../geometry/floorShape.ts';
import { distance } from '../geometry/point.ts';
import { pathLength, pointAt } from '../geometry/polyline.ts';
import type { RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { recordsOf, type Doc, type Fields } from '../model/doc.ts';

/*
 *   path  0 ---------- 1 ------------------- 2
 *                      |---at---[ opening ]--|       `atMm` is counted along the whole path,
 *                                                    an opening lies within one of its edges
 */

/** Rounding of coordinates may make an edge this much shorter than what was typed. */
const SLACK_MM = 0.01;

export interface WallOpening {
  readonly id: RecordId;
  readonly atMm: number;
  readonly widthMm: number;
}

/** The openings of a wall; of anything else there are none. */
export function openingsOf(doc: Doc, wall: RecordId): readonly WallOpening[] {
  if (typeOf(wall) !== 'wall') return [];
  return recordsOf(doc, 'opening')
    .filter((opening) => opening.wall === wall)
    .map(({ id, atMm, widthMm }) => ({ id, atMm, widthMm }));
}

/** Both jambs of an opening, on its wall's path; null when the wall is missing. */
export function openingEnds(doc: Doc, fields: Fields): readonly Point[] | null {
  const path = doc.get(fields['wall'] as RecordId)?.['path'] as readonly Point[] | undefined;
  const atMm = fields['atMm'];
  const widthMm = fields['widthMm'];
  if (!path || typeof atMm !== 'number' || typeof widthMm !== 'number') return null;
  const near = pointAt(path, atMm);
  const far = pointAt(path, atMm + widthMm);
  return near && far ? [near, far] : null;
}

/** Length of the path before its edge `edge`. */
export function startOfEdge(path: readonly Point[], edge: number): number {
  return pathLength(path.slice(0, edge + 1));
}

/** The edge of the path that holds a place, and how far along that edge it is. */
export function edgeAt(path: readonly Point[], alongMm: number): { readonly edge: number; readonly atMm: number } {
  let left = alongMm;
  const last = path.length - 2;
  for (let edge = 0; edge < last; edge++) {
    const length = edgeLength(path, edge);
    if (left < length - SLACK_MM) return { edge, atMm: left };
    left -= length;
  }
  return { edge: last, atMm: left };
}

export function edgeLength(path: readonly Point[], edge: number): number {
  const a = path[edge];
  const b = path[edge + 1];
  return a && b ? distance(a, b) : 0;
}

interface Span {
  readonly atMm: number;
  readonly widthMm: number;
}

/** Why these openings do not fit their wall, as a code; null when they do. */
export function openingsFault(path: readonly Point[], openings: readonly Span[]): string | null {
  const total = pathLength(path);
  const inOrder = openings.toSorted((a, b) => a.atMm - b.atMm);
  let end = 0;
  for (const { atMm, widthMm } of inOrder) {
    if (atMm < -SLACK_MM || atMm + widthMm > total + SLACK_MM) return 'openingPastWall';
    const place = edgeAt(path, atMm);
    if (place.atMm + widthMm > edgeLength(path, place.edge) + SLACK_MM) return 'openingOverCorner';
    if (atMm < end - SLACK_MM) return 'openingsOverlap';
    end = atMm + widthMm;
  }
  return null;
}
