import { nearestOnSegment } from '../../geometry/segment.ts';
import { distance, minus, quarterTurn, unit } from '../../geometry/point.ts';
import { boxAbout } from '../planIndex.ts';
import { searchMm } from './engine.ts';
import { directionOf, itemEdgesNear, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

/** On an edge, wherever the hand is nearest to it; on a circle, on its round. */
export function edgeSource(scene: SnapScene): SnapSource {
  return {
    kind: 'edge',
    *find(query): Iterable<Snap> {
      for (const edge of itemEdgesNear(scene, query)) {
        const { at } = nearestOnSegment(query.at, edge.a, edge.b);
        yield { at, kind: 'edge', on: edge.of?.item.id ?? null, along: directionOf(edge), guides: [] };
      }
      for (const { id, shape } of scene.index.itemsIn(boxAbout(query.at, searchMm(query)))) {
        const [rim] = shape.points;
        if (!shape.round || !shape.middle || !rim) continue;
        const out = unit(minus(query.at, shape.middle));
        const radius = distance(rim, shape.middle);
        yield {
          at: [shape.middle[0] + out[0] * radius, shape.middle[1] + out[1] * radius],
          kind: 'edge',
          on: id,
          along: quarterTurn(out),
          guides: [],
        };
      }
    },
  };
}
