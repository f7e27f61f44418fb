import { boxOf } from '../box.ts';
import { type FloorShape, type Point, REST } from '../floorShape.ts';
import { distance } from '../point.ts';
import { corner } from '../ring.ts';
import { layersOf } from './cells.ts';
import { present } from './floorItems.ts';
import { movedRing } from './hardItems.ts';
import type { LedgerState } from './ledgerState.ts';
import { NO_ZONE, homeOf } from './place.ts';
import { shareInBox, walk } from './walks.ts';

/*
 * In which zone a column stands.
 *
 *      zone 1 | zone 2
 *          [##|####]           where more of its outline runs: zone 2
 */

/** Solids by the id of the zone that holds the larger part of their outline. */
export function solidsByZone(state: LedgerState, shape: FloorShape): ReadonlyMap<string, readonly string[]> {
  const idOf = new Map(present(state.items.zones).map((zone) => [zone.number, zone.id]));
  const solids = new Map<string, string[]>();
  for (const { id, ring } of shape.solids) {
    const zone = idOf.get(zoneAround(state, movedRing(ring, state.origin))) ?? REST;
    const list = solids.get(zone);
    if (list) list.push(id);
    else solids.set(zone, [id]);
  }
  return solids;
}

function zoneAround(state: LedgerState, ring: readonly Point[]): number {
  const lengths = new Map<number, number>();
  for (const [i, a] of ring.entries()) {
    const b = corner(ring, i + 1);
    for (const tile of state.grid.meeting(boxOf([a, b]))) {
      const share = tile.edges ? shareInBox(a[0], a[1], b[0], b[1], tile.box) : null;
      if (!share || !tile.edges) continue;
      const place = homeOf(tile.edges, layersOf(state.cascades));
      for (const { from, to, what } of walk(tile.edges, place, a[0], a[1], b[0], b[1], share, (at) => at.zone))
        lengths.set(what, (lengths.get(what) ?? 0) + (to - from) * distance(a, b));
    }
  }
  return [...lengths].toSorted((x, y) => y[1] - x[1])[0]?.[0] ?? NO_ZONE;
}
