import { divide, multiply, number, term } from './formula.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site } from './site.ts';
import { allowanceTerm, measured } from './terms.ts';

/**
 * Person-hours to drill and sleeve the RH probes of a floor, h; null without probes, and while what lies in the slab has
 * not been located. Their wait is no work and stands in the calendar.
 */
export function probeHours(site: Site): Line | null {
  const probes = site.quantities.get('tests.rh|floor');
  if (!probes || probes.held !== null) return null;
  return makeLine({
    code: 'hours.probes',
    trade: 'hours',
    unit: 'h',
    zone: null,
    records: probes.records,
    formula: divide(multiply(term('probes'), term('minutes each')), number(60)),
    terms: [
      measured('probes', probes.quantity.likely, 'number', probes.key),
      allowanceTerm('minutes each', site.book.rate('labour/test_rh')),
    ],
  });
}
