import { distance } from '../../geometry/point.ts';
import { directionOf, edgesNear, nearestOnRay, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

/** Edges this near to the hand (px) are taken as what the live line may run beside. */
const LOOK_PX = 240;
/** The live line must be this long before a direction means anything. */
const LEAST_PX = 30;

/** From its start, the live line runs parallel to an edge near by. */
export function parallelSource(scene: SnapScene): SnapSource {
  return {
    kind: 'parallel',
    *find(query): Iterable<Snap> {
      const { from } = query;
      if (!from || distance(from, query.at) * query.pxPerMm < LEAST_PX) return;
      for (const edge of edgesNear(scene, query, LOOK_PX / query.pxPerMm)) {
        const along = directionOf(edge);
        const at = nearestOnRay({ from, along }, query.at);
        yield {
          at,
          kind: 'parallel',
          on: edge.of?.item.id ?? null,
          along,
          guides: [
            [from, at],
            [edge.a, edge.b],
          ],
        };
      }
    },
  };
}
