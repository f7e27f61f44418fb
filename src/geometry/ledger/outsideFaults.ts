import type { FloorShape, GeometryFault, PatchShape, Point, Ring } from '../floorShape.ts';
import { boxOf, boxesMeet } from '../box.ts';
import { plus } from '../point.ts';
import { regionIndex } from '../regionIndex.ts';
import { corner } from '../ring.ts';
import type { LedgerState, Stale } from './ledgerState.ts';
import type { ZoneSums } from './sumsMemory.ts';

/*
 * Records that lie off the floor altogether.
 *
 *     +------+   o        told of zones, findings and lines; one of which a little lies on the floor is no fault
 *     | slab |
 *     +------+
 */

/** A fault for each zone, finding and line that lies off the floor altogether. */
export function outsideFaults(
  state: LedgerState,
  shape: FloorShape,
  zones: readonly ZoneSums[],
  stale: Stale,
): GeometryFault[] {
  const { gone, fresh } = state.items.findings;
  if ((stale.pieces.size > 0 && state.sums.isFindingMoved) || gone.length + fresh.length > 0)
    state.sums.offFindings = findingsOff(state);
  const empty = new Set(zones.filter((zone) => zone.netM2 === 0).map((zone) => zone.id));
  const lines = [...state.sums.offLines].toSorted(([a], [b]) => a - b).map(([, line]) => line);
  return [
    ...shape.zones
      .filter((zone) => empty.has(zone.id) && !meetsSlab(zone.ring, shape))
      .map(({ id, ring }) => ({ record: id, code: 'zoneOutsideSlab', at: ring[0] ?? null })),
    ...state.sums.offFindings.map(({ id, at }) => ({ record: id, code: 'findingOutsideSlab', at })),
    ...lines.map(({ id, at }) => ({ record: id, code: 'lineOutsideSlab', at: at && plus(at, state.origin) })),
  ];
}

function findingsOff({ items: { findings }, sums }: LedgerState): { id: string; at: Point | null }[] {
  const seen = new Set<number>();
  for (const [number, cell] of sums.cells.entries())
    if ((sums.areas[number] ?? 0) > 0) for (const finding of cell.findings) seen.add(finding);
  return findings.entries.flatMap((item, i) => {
    if (!item || seen.has(item.number)) return [];
    const record = findings.records[i] as PatchShape;
    return [{ id: item.id, at: record.ring[0] ?? null }];
  });
}

/** True when a ring has floor of some slab in it, whatever stands there. */
function meetsSlab(ring: Ring, shape: FloorShape): boolean {
  const box = boxOf(ring);
  return shape.slabs.some((slab) => {
    if (!boxesMeet(boxOf(slab.ring), box)) return false;
    const index = regionIndex([[slab.ring]]);
    const isCut = ring.some((at, i) => index.cuts(at, corner(ring, i + 1)).length > 2 || index.contains(at));
    return isCut || slab.ring.some((at) => regionIndex([[ring]]).contains(at));
  });
}
