import type { Point } from '../../geometry/floorShape.ts';
import { typeOf } from '../../model/cell.ts';
import { boxAbout } from '../planIndex.ts';
import { searchMm } from './engine.ts';
import { directionOf, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

const SPEAKING = new Set(['dimension', 'note', 'photo', 'reading']);

/** Corners of items, jambs of openings, and the corners of the line being drawn but for the one it goes on from. */
export function cornerSource(scene: SnapScene): SnapSource {
  return {
    kind: 'corner',
    *find(query): Iterable<Snap> {
      for (const at of scene.own.slice(0, -1)) yield { at, kind: 'corner', on: null, along: null, guides: [] };
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
