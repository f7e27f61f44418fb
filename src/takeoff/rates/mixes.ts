import { practiceRow as row } from './practiceRow.ts';
import type { RateRow } from './rateRow.ts';

const SHEET = 'see its sheet';

/** How fillers and washes are made up. */
export const mixes: readonly RateRow[] = [
  row('consumables/mixers', 'Static mixers', 'mixers per cartridge', [1, 1, 2], 'one is lost per long stop'),
  row('consumables/sand_share', 'Sand in a sand-filled resin', '%', [30, 35, 40], 'of the volume'),
  row('consumables/sand_bulk', 'Dry sand, loose', 'kg per L', [1.4, 1.6, 1.7]),
  row('consumables/mortar_waste', 'Repair mortar left in bucket and mixer', '%', [5, 10, 20]),
  row(
    'consumables/spall_depth',
    'Depth that a hollow spot is cut out to',
    'mm',
    [13, 19, 25],
    'down to sound concrete',
  ),
  row('consumables/reservoir', 'Least width of a sealant reservoir', 'mm', [6, 10, 13], 'sawn where it is narrower'),
  row('consumables/reservoir_isolation', 'Isolation joint not measured, width', 'mm', [10, 13, 25]),
  row('consumables/sealant_shape', 'Sealant, width to depth', 'x the depth', [2, 2, 2]),
  {
    code: 'consumables/backer_over',
    term: 'Backer rod, of the width of its joint',
    unit: 'x the width',
    low: 1.25,
    likely: 1.25,
    high: 1.25,
    note: 'at least 25 % larger than the opening',
    source: 'UFC3-270-03',
    provenance: 'R',
    fromMemory: false,
  },
  row('consumables/degreaser_share', 'Cleaner concentrate in the wash', '%', [5, 10, 20], SHEET),
  row('consumables/hypochlorite_share', 'Hypochlorite in the wash', '%', [10, 20, 30], SHEET),
  row('consumables/soda', 'Baking soda in the neutralising wash', 'kg per L', [0.05, 0.1, 0.15]),
  {
    code: 'consumables/acid_share',
    term: 'Acid concentrate in the etch',
    unit: '%',
    low: 15,
    likely: 25,
    high: 33,
    note: 'an etch of 5-10 % acid was read; that the concentrate holds about 30 % is practice; acid into water',
    source: 'UFC3-190-06',
    provenance: 'R/P',
    fromMemory: false,
  },
];
