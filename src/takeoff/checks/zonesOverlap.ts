import { intersect } from '../../geometry/clip.ts';
import { boxOf, boxesMeet } from '../../geometry/box.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { regionArea } from '../../geometry/ring.ts';
import { keptOfTwo } from '../keptShapes.ts';
import { fault, type Check } from './check.ts';

/** Shared by a hair along a common border, mm2. */
const HAIR_MM2 = 1e4;

/** Kept: of all zones of a floor one hand moves one. */
const overlap = keptOfTwo((ring: readonly Point[], above: readonly Point[]): boolean => {
  if (!boxesMeet(boxOf(ring), boxOf(above))) return false;
  const shared = intersect([[ring]], [[above]]);
  return shared.ok && regionArea(shared.region) > HAIR_MM2;
});

/** Information only: where two zones overlap the later one wins, and nothing counts twice. */
export const zonesOverlap: Check = ({ zones }) =>
  zones.flatMap(({ prep }, i) => {
    const ring = prep.record?.ring;
    if (prep.zone === 'rest' || !ring) return [];
    const covered = zones.slice(i + 1).some(({ prep: other }) => {
      const above = other.zone === 'rest' ? undefined : other.record?.ring;
      return above !== undefined && overlap(ring, above);
    });
    return covered ? [fault(prep.zone, 'zonesOverlap', ring[0] ?? null)] : [];
  });
