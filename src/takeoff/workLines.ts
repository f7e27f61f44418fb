import type { CostInputs } from './costInputs.ts';
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
  /** What the price is made from, to price several floors as one; null where there is no price. */
  readonly toPrice: ToPrice | null;
}

export interface ToPrice {
  readonly inputs: CostInputs;
  /** Person-hours of each zone. */
  readonly zoneTotals: readonly Line[];
}

/**
 * A held zone is not here at all: no rate, hour, material, dust plan or price of it is worked out. With nothing free
 * there is no set-up and no price either; a crew copy has hours and no price.
 */
export function workLines(site: Site): WorkLines {
  const free = site.zones.filter((zone) => zone.held === null);
  if (free.length === 0) return { lines: [], missingPrices: [], toPrice: null };
  const hours = free.map((zone) => zoneWorkHours(site, zone));
  const onSite = siteHours(site, hours);
  const material = materialOf(
    site,
    hours.flatMap((each) => each.lines),
  );
  const work = [...hours.flatMap((each) => each.lines), ...onSite.lines, ...material];
  if (site.book.currency === null) return { lines: work, missingPrices: [], toPrice: null };
  const inputs: CostInputs = {
    crewHours: onSite.crewHours,
    days: onSite.days,
    onSite: onSite.lines,
    atNight: hours.filter((_, i) => free[i]?.prep.record?.time === 'night').map((each) => each.person),
    hours: hours.flatMap((each) => each.lines),
    material,
    quantities: [...site.quantities.values()],
    zones: free,
  };
  const zoneTotals = hours.map((each) => each.person);
  const priced = pricedWork(site, inputs, zoneTotals);
  return { lines: [...work, ...priced.lines], missingPrices: priced.missingPrices, toPrice: { inputs, zoneTotals } };
}
