import type { Pricing } from '../../model/records/pricing.ts';
import type { PriceRow } from './priceRow.ts';
import { sampleGoods } from './sampleGoods.ts';

export const SAMPLE_SOURCE = 'invented sample, set yours';

/**
 * Invented wages and prices to start with, each marked "set yours". They are nobody's prices: a price says
 * "with sample wages and prices" until the money page has been confirmed. Whole minor units (cents) of USD.
 */
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
  { code: 'day/generator', term: 'Generator', unit: 'per day', amount: 11000 },
  { code: 'fuel', term: 'Fuel of the generator', unit: 'per day', amount: 4000 },
  { code: 'delivery', term: 'Delivery and return of a machine on hire', unit: 'per machine', amount: 6000 },
  ...sampleGoods,
  { code: 'haul', term: 'Waste haul', unit: 'per trip', amount: 8000 },
  { code: 'tipFee', term: 'Tip fee, plain concrete dust and rubble', unit: 'per t', amount: 12000 },
  { code: 'drumDisposal', term: 'Slurry taken away', unit: 'per drum', amount: 9000 },
  { code: 'wasteTest', term: 'Laboratory test of waste', unit: 'per test', amount: 9000 },
  { code: 'distance', term: 'Driving', unit: 'per km', amount: 70 },
  { code: 'lodging', term: 'Lodging and meals', unit: 'per person-night', amount: 11000 },
  { code: 'mobilisation', term: 'Mobilisation', unit: 'first visit', amount: 15000 },
  { code: 'remobilisation', term: 'Re-mobilisation', unit: 'per further visit', amount: 15000 },
  { code: 'test/rh', term: 'RH probe, sleeve and reading', unit: 'per probe', amount: 4500 },
  { code: 'test/pull', term: 'Pull-off dolly and glue', unit: 'per test', amount: 1500 },
  { code: 'mockUp', term: 'Mock-up, material', unit: 'per m2', amount: 1500 },
  { code: 'overheadDay', term: 'Overhead by the day', unit: 'per crew-day', amount: 12000 },
  { code: 'leastCharge', term: 'Least charge for a job', unit: 'before tax', amount: 0 },
];

/**
 * Overhead on direct cost and contingency; margin of the price, not on the cost. Invented, "set yours". A job that has a
 * pricing record of its own without one of the newer fields does not pay for it: an old price stays what it was.
 */
export const samplePricing: Pricing = {
  overheadPct: 12,
  marginPct: 25,
  burdenPct: 30,
  contingencyPct: { measured: 5, photo: 10, unknown: 20 },
  certainty: 'measured',
  minimumCrewDays: 0.5,
  crew: 2,
  hoursADay: 8,
  billablePct: 100,
  nightPremiumPct: 15,
  overheadBy: 'percent',
  taxPct: 0,
  taxOn: 'none',
  roundUpTo: 100,
  hired: ['grinder_ride', 'grinder_large', 'shot_medium', 'shot_small', 'scrape_ride', 'scrape_walk'],
  leastHireDays: 1,
  power: 'site',
  stay: 'daily',
  travelHours: 1,
  travelKm: 40,
  vehicles: 1,
  returnVisits: 0,
  haulTrips: 1,
  wasteTests: 0,
};
