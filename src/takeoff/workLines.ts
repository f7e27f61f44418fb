import type { Line } from './line.ts';
import { materialOf } from './materials.ts';
import { pricedWork } from './pricedWork.ts';
import type { Site } from './site.ts';
import { siteHours } from './siteHours.ts';
import { zoneWorkHours } from './zoneWorkHours.ts';

/** Hours, material, dust and money of the zones that no hold stands on, and codes without a price. */
export interface WorkLines {
  readonly lines: readonly Line[];
  readonly missingPrices: readonly string[];
}

/**
 * A held zone is not here at all: no rate, hour, material, dust plan or price of it is worked out. With nothing free
 * there is no set-up and no price either; a crew copy has hours and no price.
 */
export function workLines(site: Site): WorkLines {
  const free = site.zones.filter((zone) => zone.held === null);
  if (free.length === 0) return { lines: [], missingPrices: [] };
  const hours = free.map((zone) => zoneWorkHours(site, zone));
  const onSite = siteHours(site, hours);
  const material = materialOf(
    site,
    hours.flatMap((each) => each.lines),
  );
  const work = [...hours.flatMap((each) => each.lines), ...onSite.lines, ...material];
  if (site.book.currency === null) return { lines: work, missingPrices: [] };
  const priced = pricedWork(
    site,
    {
      crewHours: onSite.crewHours,
      days: onSite.days,
      hours: hours.flatMap((each) => each.lines),
      material,
      quantities: [...site.quantities.values()],
      zones: free,
    },
    hours.map((each) => each.person),
  );
  return { lines: [...work, ...priced.lines], missingPrices: priced.missingPrices };
}
