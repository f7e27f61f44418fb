import { between } from '../../geometry/point.ts';
import { boxAbout } from '../planIndex.ts';
import { searchMm } from './engine.ts';
import { directionOf, itemEdgesNear, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

/** Middles of edges, and of rectangles and circles. */
export function middleSource(scene: SnapScene): SnapSource {
  return {
    kind: 'middle',
    *find(query): Iterable<Snap> {
      for (const edge of itemEdgesNear(scene, query)) {
        const at = between(edge.a, edge.b, 0.5);
        yield { at, kind: 'middle', on: edge.of?.item.id ?? null, along: directionOf(edge), guides: [] };
      }
      for (const item of scene.index.itemsIn(boxAbout(query.at, searchMm(query)))) {
        const at = item.shape.middle;
        if (at) yield { at, kind: 'middle', on: item.id, along: null, guides: [] };
      }
    },
  };
}
