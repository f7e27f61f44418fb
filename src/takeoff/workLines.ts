import { cartridges, zoneFillers } from './materialLines.ts';
import { directLines } from './costLines.ts';
import { dustBags, zoneDust } from './dustLines.ts';
import type { Line } from './line.ts';
import { priceLines, priceShares } from './priceLines.ts';
import type { Site } from './site.ts';
import { siteHours } from './siteHours.ts';
import { diamondSets, zoneTooling } from './toolingLines.ts';
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
  const material = materialOf(site);
  const work = [...hours.flatMap((each) => each.lines), ...onSite.lines, ...material];
  if (site.book.currency === null) return { lines: work, missingPrices: [] };
  const direct = directLines(site, {
    crewHours: onSite.crewHours,
    days: onSite.days,
    hours: hours.flatMap((each) => each.lines),
    material,
    zones: free,
  });
  const priced = priceLines(site.book, direct.lines);
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

function materialOf(site: Site): Line[] {
  const free = site.zones.filter((zone) => zone.held === null);
  const fillers = free.flatMap((zone) => zoneFillers(site, zone));
  const tooling = free.flatMap((zone) => zoneTooling(site, zone));
  const dust = free.flatMap((zone) => zoneDust(site, zone));
  const of = (lines: readonly Line[], code: string): Line[] => lines.filter((line) => line.code === code);
  const whole = [
    cartridges(site, 'cartridges', of(fillers, 'crackFillerBuy')),
    cartridges(site, 'jointCartridges', of(fillers, 'jointFillerBuy')),
    diamondSets(of(tooling, 'diamondWear')),
    dustBags(site, of(dust, 'dustMass')),
  ].filter((line): line is Line => line !== null);
  return [...fillers, ...tooling, ...dust, ...whole];
}
