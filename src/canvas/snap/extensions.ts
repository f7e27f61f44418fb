import { distance, dot, minus } from '../../geometry/point.ts';
import { directionOf, edgesNear, nearestOnRay, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

/** Edges whose end is this near to the hand (px) are carried on in thought. */
const LOOK_PX = 240;

/** In line with an edge, beyond one of its ends. */
export function extensionSource(scene: SnapScene): SnapSource {
  return {
    kind: 'extension',
    *find(query): Iterable<Snap> {
      for (const edge of edgesNear(scene, query, LOOK_PX / query.pxPerMm)) {
        const along = directionOf(edge);
        const at = nearestOnRay({ from: edge.a, along }, query.at);
        const run = dot(minus(at, edge.a), along);
        if (run >= 0 && run <= distance(edge.a, edge.b)) continue;
        const end = run < 0 ? edge.a : edge.b;
        yield { at, kind: 'extension', on: edge.of?.item.id ?? null, along, guides: [[end, at]] };
      }
    },
  };
}
