import type { RecordId } from '../../model/cell.ts';
import { onFloor, recordOf, recordsOf, type Doc } from '../../model/doc.ts';
import type { RecordType } from '../../model/records/all.ts';
import type { Units } from '../../model/units.ts';
import { doorwayLines, itemLine, type ItemLine } from './itemLine.ts';

const ORDER: readonly RecordType[] = [
  'slab',
  'wall',
  'opening',
  'obstruction',
  'steps',
  'outOfScope',
  'finding',
  'crack',
  'joint',
  'entrance',
  'service',
  'reading',
  'note',
  'photo',
  'dimension',
  'zone',
];

function idsOf(doc: Doc, type: RecordType, floor: string): readonly RecordId[] {
  if (type !== 'opening') return onFloor(doc, type, floor).map((record) => record.id);
  const walls = new Set<string>(onFloor(doc, 'wall', floor).map((wall) => wall.id));
  return recordsOf(doc, 'opening')
    .filter((opening) => walls.has(opening.wall))
    .map((opening) => opening.id);
}

/** Everything drawn on a floor, in the order it is met on site: the floor, what stands on it, what is wrong with it. */
export function floorItems(doc: Doc, floor: string, units: Units): readonly ItemLine[] {
  const doors = onFloor(doc, 'slab', floor).flatMap((slab) => doorwayLines(slab, units));
  const bare = onFloor(doc, 'slab', floor).length === 0;
  return ORDER.flatMap((type) => {
    const lines = idsOf(doc, type, floor)
      // The rest of a slab is nothing before there is a slab.
      .filter((id) => !(bare && recordOf(doc, 'zone', id)?.covers === 'rest'))
      .map((id) => itemLine(doc, id, units));
    return type === 'opening' ? [...lines, ...doors] : lines;
  });
}
