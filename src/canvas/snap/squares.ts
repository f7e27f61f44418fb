import { dot, minus } from '../../geometry/point.ts';
import { directionOf, edgesNear, nearestOnRay, squareRays, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

/**
 * Right angles: the foot of the live line on an edge ("square to wall"), and the line that leaves its start
 * square to the last edge or to the edge it starts on.
 */
export function squareSource(scene: SnapScene): SnapSource {
  return {
    kind: 'square',
    *find(query): Iterable<Snap> {
      const { from } = query;
      if (!from) return;
      for (const edge of edgesNear(scene, query)) {
        const run = minus(edge.b, edge.a);
        const share = dot(minus(from, edge.a), run) / dot(run, run);
        if (!(share > 0 && share < 1)) continue;
        const at = nearestOnRay({ from: edge.a, along: directionOf(edge) }, from);
        yield { at, kind: 'square', on: edge.of?.item.id ?? null, along: directionOf(edge), guides: [[from, at]] };
      }
      for (const ray of squareRays(scene, query)) {
        const at = nearestOnRay(ray, query.at);
        yield { at, kind: 'square', on: null, along: ray.along, guides: [[from, at]] };
      }
    },
  };
}
