import type { Point } from '../../geometry/floorShape.ts';
import { cross, distance, minus } from '../../geometry/point.ts';
import { crossing } from '../../geometry/segment.ts';
import { axisRays, directionOf, itemEdgesNear, squareRays, type Ray, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

/**
 * Where two lines meet: two edges; an edge and the line straight or square from the last point; and that
 * line with the one straight from the first point, which closes a rectangle.
 */
export function crossingSource(scene: SnapScene): SnapSource {
  return {
    kind: 'crossing',
    *find(query): Iterable<Snap> {
      const edges = itemEdgesNear(scene, query);
      for (const [index, one] of edges.entries()) {
        for (const two of edges.slice(index + 1)) {
          const meet = crossing(one.a, one.b, two.a, two.b);
          if (meet)
            yield { at: meet.at, kind: 'crossing', on: one.of?.item.id ?? null, along: directionOf(one), guides: [] };
        }
      }
      const { from } = query;
      if (!from) return;
      const rays = [...squareRays(scene, query), ...axisRays(from)];
      for (const ray of rays) {
        for (const edge of edges) {
          const at = rayMeetsEdge(ray, edge.a, edge.b);
          if (at && distance(at, from) > 0) {
            yield {
              at,
              kind: 'crossing',
              on: edge.of?.item.id ?? null,
              along: directionOf(edge),
              guides: [[from, at]],
            };
          }
        }
      }
      const first = scene.own[0];
      if (!first || scene.own.length < 2) return;
      for (const ray of rays) {
        for (const back of axisRays(first)) {
          const at = raysMeet(ray, back);
          if (at && distance(at, from) > 0 && distance(at, first) > 0) {
            yield {
              at,
              kind: 'crossing',
              on: null,
              along: back.along,
              guides: [
                [from, at],
                [first, at],
              ],
            };
          }
        }
      }
    },
  };
}

function raysMeet(one: Ray, two: Ray): Point | null {
  const turn = cross(one.along, two.along);
  // Lines closer than about 3 degrees meet too vaguely to be meant.
  if (Math.abs(turn) < 0.05) return null;
  const run = cross(minus(two.from, one.from), two.along) / turn;
  return [one.from[0] + one.along[0] * run, one.from[1] + one.along[1] * run];
}

function rayMeetsEdge(ray: Ray, a: Point, b: Point): Point | null {
  const at = raysMeet(ray, { from: a, along: directionOf({ a, b }) });
  if (!at) return null;
  const span = distance(a, b);
  return distance(a, at) <= span && distance(b, at) <= span ? at : null;
}
