import { typeOf, type RecordId } from '../../model/cell.ts';
import { onFloor, recordOf, recordsOf, type Doc, type Fields } from '../../model/doc.ts';
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
  if (type !== 'opening') {
    // The rest of a slab is nothing before there is a slab.
    const bare = type === 'zone' && onFloor(doc, 'slab', floor).length === 0;
    const ids = onFloor(doc, type, floor).map((record) => record.id);
    return bare ? ids.filter((id) => recordOf(doc, 'zone', id)?.covers !== 'rest') : ids;
  }
  const walls = new Set<string>(onFloor(doc, 'wall', floor).map((wall) => wall.id));
  return recordsOf(doc, 'opening')
    .filter((opening) => walls.has(opening.wall))
    .map((opening) => opening.id);
}

const lines = new WeakMap<Fields, Map<Units, ItemLine>>();

/** Lines of records that speak for themselves are kept with them: of ten thousand a change touches one. */
function lineOf(doc: Doc, id: RecordId, units: Units): ItemLine {
  const fields = doc.get(id);
  // An opening lies where its wall does.
  if (!fields || typeOf(id) === 'opening') return itemLine(doc, id, units);
  const byUnits = lines.get(fields) ?? new Map<Units, ItemLine>();
  lines.set(fields, byUnits);
  const line = byUnits.get(units) ?? itemLine(doc, id, units);
  byUnits.set(units, line);
  return line;
}

/** Everything drawn on a floor, in the order it is met on site: the floor, what stands on it, what is wrong with it. */
export function floorItems(doc: Doc, floor: string, units: Units): readonly ItemLine[] {
  const doors = onFloor(doc, 'slab', floor).flatMap((slab) => doorwayLines(slab, units));
  return ORDER.flatMap((type) => {
    const items = idsOf(doc, type, floor).map((id) => lineOf(doc, id, units));
    return type === 'opening' ? [...items, ...doors] : items;
  });
}

const counts = new WeakMap<Doc, Map<string, number>>();

/** How many lines `floorItems` has. */
export function floorCount(doc: Doc, floor: string): number {
  const byFloor = counts.get(doc) ?? new Map<string, number>();
  counts.set(doc, byFloor);
  const count = byFloor.get(floor) ?? counted(doc, floor);
  byFloor.set(floor, count);
  return count;
}

function counted(doc: Doc, floor: string): number {
  const doors = onFloor(doc, 'slab', floor).flatMap(({ outline }) =>
    outline.filter(({ edge }) => edge.kind === 'doorway'),
  );
  return ORDER.reduce((count, type) => count + idsOf(doc, type, floor).length, doors.length);
}
