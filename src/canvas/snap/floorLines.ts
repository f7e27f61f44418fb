import type { Point } from '../../geometry/floorShape.ts';
import { isSame, minus, quarterTurn, unit } from '../../geometry/point.ts';
import { nearestOnSegment } from '../../geometry/segment.ts';
import { typeOf } from '../../model/cell.ts';
import { boxAbout, type PlanEdge, type PlanIndex } from '../planIndex.ts';
import { searchMm } from './engine.ts';
import type { SnapQuery } from './snap.ts';

/** What sources are made from: the floor, and the corners of the line that is being drawn. */
export interface SnapScene {
  readonly index: PlanIndex;
  readonly own: readonly Point[];
}

/** An edge that can be met: of an item, or of the line being drawn (then `item` is null). */
export interface SnapEdge {
  readonly a: Point;
  readonly b: Point;
  readonly of: PlanEdge | null;
}

/** Dimensions and notes say something about the floor; they are not part of it. */
const TALK = new Set(['dimension', 'note', 'photo', 'reading']);
/** However crowded the place, this many edges are looked at. */
const MOST = 200;

export function edgesNear(scene: SnapScene, query: SnapQuery, reachMm = searchMm(query)): readonly SnapEdge[] {
  const near: SnapEdge[] = [];
  for (const edge of scene.index.edgesIn(boxAbout(query.at, reachMm))) {
    if (edge.item.shape.round || query.skip.has(edge.item.id) || TALK.has(typeOf(edge.item.id))) continue;
    near.push({ a: edge.a, b: edge.b, of: edge });
    if (near.length >= MOST) break;
  }
  for (let corner = 1; corner < scene.own.length; corner++) {
    const a = scene.own[corner - 1];
    const b = scene.own[corner];
    if (a && b && !isSame(a, b)) near.push({ a, b, of: null });
  }
  return near;
}

/** Edges of items only: a line that is being drawn meets nothing of itself but its first corner. */
export function itemEdgesNear(scene: SnapScene, query: SnapQuery): readonly SnapEdge[] {
  return edgesNear(scene, query).filter((edge) => edge.of !== null);
}

export function directionOf(edge: { readonly a: Point; readonly b: Point }): Point {
  return unit(minus(edge.b, edge.a));
}

/** A line without ends: through a point, along a unit vector. */
export interface Ray {
  readonly from: Point;
  readonly along: Point;
}

/** Rays square to what the live line starts on: its own last edge, and edges that pass through its start. */
export function squareRays(scene: SnapScene, query: SnapQuery): readonly Ray[] {
  const { from } = query;
  if (!from) return [];
  const rays: Ray[] = [];
  const last = scene.own.at(-2);
  if (last && !isSame(last, from)) rays.push({ from, along: quarterTurn(directionOf({ a: last, b: from })) });
  for (const edge of scene.index.edgesIn(boxAbout(from, TOUCH_MM))) {
    if (edge.item.shape.round || query.skip.has(edge.item.id)) continue;
    if (nearestOnSegment(from, edge.a, edge.b).distance > TOUCH_MM) continue;
    rays.push({ from, along: quarterTurn(directionOf(edge)) });
    if (rays.length >= MOST_RAYS) break;
  }
  return rays;
}

const TOUCH_MM = 0.01;
const MOST_RAYS = 8;

/** Straight across and straight down the plan, through a point. */
export function axisRays(from: Point): readonly Ray[] {
  return [
    { from, along: [1, 0] },
    { from, along: [0, 1] },
  ];
}

/** The place of a ray nearest to a point. */
export function nearestOnRay(ray: Ray, at: Point): Point {
  const [dx, dy] = minus(at, ray.from);
  const run = dx * ray.along[0] + dy * ray.along[1];
  return [ray.from[0] + ray.along[0] * run, ray.from[1] + ray.along[1] * run];
}
