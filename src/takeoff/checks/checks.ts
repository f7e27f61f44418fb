import type { Fault } from '../line.ts';
import type { Site } from '../site.ts';
import type { Check } from './check.ts';
import { gapTooNarrow } from './gapTooNarrow.ts';
import { isolationFilled, obstructionOutsideSlab, structuralCrack, upstandRemoveNoRate } from './itemFaults.ts';
import { measuredFaults } from './measuredFaults.ts';
import { profileFaults } from './profileFaults.ts';
import { zonesOverlap } from './zonesOverlap.ts';

const CHECKS: readonly Check[] = [
  measuredFaults,
  obstructionOutsideSlab,
  gapTooNarrow,
  profileFaults,
  zonesOverlap,
  isolationFilled,
  structuralCrack,
  upstandRemoveNoRate,
];

/** Everything that is wrong or worth saying about a floor, each record and code once. */
export function faultsOf(site: Site): Fault[] {
  const all = CHECKS.flatMap((check) => check(site));
  return [...new Map(all.map((fault) => [`${fault.record} ${fault.code}`, fault])).values()];
}
