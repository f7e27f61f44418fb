import { type CrackIn, cracksIn } from './crackLines.ts';
import { isChased } from './crackClass.ts';
import { findingHours } from './findingHours.ts';
import { jointHours } from './jointHours.ts';
import { keptOf } from './keptShapes.ts';
import type { Line } from './line.ts';
import { named, type Named, runHours } from './runHours.ts';
import type { Site, ZoneWork } from './site.ts';

/**
 * Hours on cracks, joints and findings of a zone. While what lies in the slab has not been located, a crack that would
 * be chased has no hours at all: what cannot be cut cannot be filled either.
 */
export function repairHours(site: Site, zone: ZoneWork): Line[] {
  return [...crackHours(site, zone), ...jointHours(site, zone), ...findingHours(site, zone)];
}

const CRACK_STEPS = [
  { code: 'hours.crackChase', rate: 'labour/crack_chase' },
  { code: 'hours.crackClean', rate: 'labour/crack_clean' },
  { code: 'hours.crackFill', rate: 'labour/crack_fill' },
  { code: 'hours.crackTrim', rate: 'labour/crack_trim' },
] as const;

function crackHours(site: Site, zone: ZoneWork): Line[] {
  const runs = chasedRuns(cracksIn(site, zone));
  if (runs.length === 0 || site.noCutting) return [];
  return CRACK_STEPS.map(({ code, rate }) => runHours(site, zone, code, rate, runs));
}

/** Kept: the same runs, and so the same terms, as long as no crack of the zone changes. */
const chasedRuns = keptOf((cracks: readonly CrackIn[]): readonly Named[] => {
  const chased = cracks.filter(({ crack }) => isChased(crack));
  return named(chased.map(({ crack, metres }) => ({ id: crack.id, tag: crack.tag, value: metres })));
});
