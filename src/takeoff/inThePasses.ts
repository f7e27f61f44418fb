import type { MethodGroup, MethodRow } from './rates/methodRow.ts';
import { methodOf } from './rates/methods.ts';
import type { ZoneWork } from './site.ts';

/** What grinds, blasts or planes: a pass of these takes off what would be ground off. */
const ABRADES: readonly MethodGroup[] = [
  'grind',
  'bush',
  'shot',
  'scarify',
  'scabble',
  'handGrind',
  'handImpact',
  'waterJet',
  'openBlast',
];

/**
 * Whether a zone's own passes take a finding away, given the method that does: then its factor slows the pass, and no
 * hours, wear or waste of its own stand beside it. So it is where a pass is of the same kind, and for what is ground off
 * where any pass abrades. Hours, wear and waste ask the same, so that what has one has all. Common practice, no source.
 */
export function isInThePasses({ prep }: Pick<ZoneWork, 'prep'>, { group }: Pick<MethodRow, 'group'>): boolean {
  const groups = prep.passes.map((pass) => methodOf(pass.method)?.group);
  return groups.some((each) => each === group || (group === 'grind' && each !== undefined && ABRADES.includes(each)));
}
