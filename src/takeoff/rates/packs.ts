import { practiceRow as row } from './practiceRow.ts';
import type { RateRow } from './rateRow.ts';

const REAL = 'enter the real one';

/** What a pack holds, and what is carried over. Common practice, no source: packs differ from seller to seller. */
export const packs: readonly RateRow[] = [
  row('consumables/shot_bag', 'Shot, one bag', 'kg per bag', [25, 25, 25], REAL),
  row('consumables/grit_bag', 'Blasting abrasive, one bag', 'kg per bag', [25, 25, 25], REAL),
  row('consumables/sand_bag', 'Dry sand, one bag', 'kg per bag', [25, 25, 25], REAL),
  row('consumables/mortar_bag', 'Repair mortar, yield of one bag', 'L per bag', [11, 12, 13], '25 kg; see its sheet'),
  row('consumables/chemical_can', 'Chemical, one can', 'L per can', [5, 5, 5], REAL),
  row('consumables/soda_pack', 'Baking soda, one pack', 'kg per pack', [5, 5, 5], REAL),
  row('consumables/backer_roll', 'Backer rod, one roll', 'm per roll', [50, 50, 50], REAL),
  row('consumables/tape_roll', 'Joint tape, one roll', 'm per roll', [30, 50, 50], REAL),
  row('consumables/film_roll', 'Masking film with tape, one roll', 'm per roll', [15, 20, 33], REAL),
  row('consumables/drum', 'Drum for slurry and wash water', 'L per drum', [180, 200, 200], 'about 200 kg full'),
  row('consumables/spare_set', 'Spare sets', 'sets per machine', [1, 1, 1]),
  row('consumables/spare_tool', 'Spare tools, of those that break', 'number', [1, 1, 1]),
  row('consumables/spare', 'Spare of what has to be waited for', '%', [10, 10, 10], 'nothing where any shop has it'),
];
