import type { FloorShape, GeometryFault, Ring } from '../floorShape.ts';
import { boxOf, boxesMeet } from '../box.ts';
import { regionIndex } from '../regionIndex.ts';
import { corner } from '../ring.ts';
import type { LedgerState } from './ledgerState.ts';
import type { ZoneSums } from './zoneSums.ts';

/** A fault for each zone, finding and line that lies off the floor altogether. */
export function outsideFaults(state: LedgerState, shape: FloorShape, zones: readonly ZoneSums[]): GeometryFault[] {
  const findings = new Set(zones.flatMap((zone) => Object.keys(zone.findingM2)));
  const lines = new Set(zones.flatMap((zone) => Object.keys(zone.lengthM)));
  const empty = new Set(zones.filter((zone) => zone.netM2 === 0).map((zone) => zone.id));
  const isMeasured = measured(state);
  return [
    ...shape.zones
      .filter((zone) => empty.has(zone.id) && isMeasured.zones.has(zone.id) && !meetsSlab(zone.ring, shape))
      .map(({ id, ring }) => ({ record: id, code: 'zoneOutsideSlab', at: ring[0] ?? null })),
    ...shape.findings
      .filter((finding) => isMeasured.findings.has(finding.id) && !findings.has(finding.id))
      .map(({ id, ring }) => ({ record: id, code: 'findingOutsideSlab', at: ring[0] ?? null })),
    ...shape.lines
      .filter((line) => isMeasured.lines.has(line.id) && !lines.has(line.id))
      .map(({ id, path }) => ({ record: id, code: 'lineOutsideSlab', at: path[0] ?? null })),
  ];
}

function measured({ items }: LedgerState) {
  const ids = (list: readonly { readonly id: string }[]): Set<string> => new Set(list.map(({ id }) => id));
  return { zones: ids(items.zones), findings: ids(items.findings), lines: ids(items.lines) };
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
