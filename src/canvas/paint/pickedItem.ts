import { formRing } from '../../geometry/formRing.ts';
import { typeOf, type RecordId } from '../../model/cell.ts';
import { pickedEdges, pickedPath, pickedRing, pickedRound, pickedSpot } from './picked.ts';
import type { Prim } from './prim.ts';
import { slabRing, type PlanView } from './view.ts';
import { openingPath } from './wall.ts';

/** A list holds records of one type: those of another are not looked through. */
function byId<R extends { readonly id: RecordId }>(records: readonly R[], id: string): R | undefined {
  const [first] = records;
  if (!first || !id.startsWith(`${typeOf(first.id)}:`)) return undefined;
  return records.find((record) => record.id === id);
}

/** The picked look of whatever kind of item an id names; nothing for an item that is not on this floor. */
export function pickedPrims(view: PlanView, id: string, edges: readonly number[] = []): Prim[] {
  const slab = byId(view.slabs, id);
  if (slab) {
    const ring = slabRing(slab);
    return [...pickedRing(ring), ...pickedEdges(ring, edges)];
  }
  const ring =
    byId(view.findings, id)?.ring ??
    byId(view.outOfScope, id)?.ring ??
    byId(view.steps, id)?.ring ??
    view.zones.find(({ zone }) => zone.id === id)?.zone.ring;
  if (ring) return pickedRing(ring);
  const rest = view.zones.find(({ zone }) => zone.id === id);
  if (rest) return rest.region.flatMap((rings) => (rings[0] ? pickedRing(rings[0]) : []));
  const obstruction = byId(view.obstructions, id);
  if (obstruction) {
    const { shape } = obstruction;
    return shape.form === 'circle' ? pickedRound(formRing(shape)) : pickedRing(formRing(shape));
  }
  const path = byId(view.cracks, id)?.path ?? byId(view.joints, id)?.path;
  if (path) return pickedPath(path);
  for (const wall of view.walls) {
    if (wall.wall.id === id) return pickedPath(wall.wall.path);
    const opening = byId(wall.openings, id);
    if (opening) return pickedPath(openingPath(wall, opening));
  }
  const dimension = byId(view.dimensions, id);
  if (dimension) return pickedPath([dimension.from, dimension.to]);
  const spot =
    byId(view.entrances, id) ??
    byId(view.services, id) ??
    byId(view.readings, id) ??
    byId(view.notes, id) ??
    byId(view.photos, id);
  return spot ? pickedSpot(spot.at) : [];
}
