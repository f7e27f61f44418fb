import { directLines } from './costLines.ts';
import type { Line } from './line.ts';
import { materialOf } from './materials.ts';
import { priceLines, priceShares } from './priceLines.ts';
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
  const direct = directLines(site, {
    crewHours: onSite.crewHours,
    days: onSite.days,
    hours: hours.flatMap((each) => each.lines),
    material,
    quantities: [...site.quantities.values()],
    zones: free,
  });
  const priced = priceLines(site.book, direct.lines, onSite.days);
  const price = priced.find((line) => line.code === 'money.price');
  return {
    lines: [
      ...work,
      ...direct.lines,
      ...priced,
      ...(price
        ? priceShares(
            price,
            hours.map((each) => each.person),
          )
        : []),
    ],
    missingPrices: direct.missing,
  };
}
