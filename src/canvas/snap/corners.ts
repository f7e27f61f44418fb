import type { Point } from '../../geometry/floorShape.ts';
import { typeOf } from '../../model/cell.ts';
import { boxAbout } from '../planIndex.ts';
import { searchMm } from './engine.ts';
import { directionOf, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

const SPEAKING = new Set(['dimension', 'note', 'photo', 'reading']);

/**
 * Corners of items, jambs of openings, and the first corner of the line being drawn, where it may close. Its other corners
 * draw nothing: a line that goes back to one of them folds on itself, which a narrow recess would do by itself.
 */
export function cornerSource(scene: SnapScene): SnapSource {
  return {
    kind: 'corner',
    *find(query): Iterable<Snap> {
      const [first] = scene.own;
      if (first && scene.own.length > 1) yield { at: first, kind: 'corner', on: null, along: null, guides: [] };
      for (const edge of scene.index.edgesIn(boxAbout(query.at, searchMm(query)))) {
        const { id, shape } = edge.item;
        if (shape.round || SPEAKING.has(typeOf(id))) continue;
        const found = (at: Point): Snap => ({ at, kind: 'corner', on: id, along: directionOf(edge), guides: [] });
        yield found(edge.a);
        yield found(edge.b);
      }
    },
  };
}
