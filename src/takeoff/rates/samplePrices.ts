import type { Pricing } from '../../model/records/pricing.ts';

/**
 * Invented wages and prices to start with, each marked "set yours". They are nobody's prices: a price says
 * "with sample wages and prices" until the money page has been confirmed. Whole minor units (cents) of USD.
 */
export interface PriceRow {
  readonly code: string;
  readonly term: string;
  readonly unit: string;
  readonly amount: number;
}

export const SAMPLE_SOURCE = 'invented sample, set yours';

export const samplePrices: readonly PriceRow[] = [
  { code: 'wage', term: 'Wage', unit: 'per person-hour', amount: 3200 },
  { code: 'day/grinder_small', term: 'Small grinder', unit: 'per day', amount: 14000 },
  { code: 'day/grinder_large', term: 'Large grinder', unit: 'per day', amount: 32000 },
  { code: 'day/grinder_ride', term: 'Ride-on grinder', unit: 'per day', amount: 65000 },
  { code: 'day/shot_small', term: 'Small blaster', unit: 'per day', amount: 22000 },
  { code: 'day/shot_medium', term: 'Medium blaster', unit: 'per day', amount: 48000 },
  { code: 'day/vacuum', term: 'Vacuum', unit: 'per day', amount: 9000 },
  { code: 'day/hand_grinder', term: 'Hand grinder', unit: 'per day', amount: 3500 },
  { code: 'day/scarifier_small', term: 'Small scarifier', unit: 'per day', amount: 13000 },
  { code: 'day/scrape_hand', term: 'Hand scrapers', unit: 'per day', amount: 1000 },
  { code: 'day/scrape_walk', term: 'Walk-behind scraper', unit: 'per day', amount: 16000 },
  { code: 'day/scrape_ride', term: 'Ride-on scraper', unit: 'per day', amount: 55000 },
  { code: 'day/breaker_hand', term: 'Breaker', unit: 'per day', amount: 6000 },
  { code: 'day/detergent_scrub', term: 'Floor scrubber', unit: 'per day', amount: 7000 },
  { code: 'day/low_pressure_wash', term: 'Pressure washer', unit: 'per day', amount: 8000 },
  { code: 'day/buffer_strip_pad', term: 'Buffer', unit: 'per day', amount: 5500 },
  { code: 'day/acid_etch', term: 'Etching kit', unit: 'per day', amount: 4000 },
  { code: 'filler', term: 'Crack and joint filler', unit: 'per cartridge of 600 mL', amount: 2400 },
  { code: 'diamondSet', term: 'Diamond set', unit: 'per set', amount: 18000 },
  { code: 'cup', term: 'Cup wheel', unit: 'per wheel', amount: 6500 },
  { code: 'shot', term: 'Shot', unit: 'per kg', amount: 250 },
  { code: 'bag', term: 'Dust bag', unit: 'per bag', amount: 600 },
];

/** Overhead on direct cost and contingency; margin of the price, not on the cost. Invented, "set yours". */
export const samplePricing: Pricing = {
  overheadPct: 12,
  marginPct: 25,
  burdenPct: 30,
  contingencyPct: { measured: 5, photo: 10, unknown: 20 },
  certainty: 'measured',
  minimumCrewDays: 0.5,
  crew: 2,
  hoursADay: 8,
};
