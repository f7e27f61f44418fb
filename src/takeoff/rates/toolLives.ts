import { practiceRow as row } from './practiceRow.ts';
import type { RateRow } from './rateRow.ts';

/** Lives and losses of tools beside those of consumables.ts. All common practice, no source. */
export const toolLives: readonly RateRow[] = [
  row('consumables/resin_set', 'Resin-bond set, polishing', 'm2 per set', [60, 150, 300]),
  row('consumables/cup_edge', 'Cup wheel along lines', 'm per wheel', [400, 700, 1200], 'fills, steel angle; as edge'),
  row('consumables/bush_set', 'Set of bush-hammer rollers', 'm2 per set', [200, 500, 1200]),
  row('consumables/mill_teeth', 'Set of milling teeth', 'm2 per set', [300, 800, 1500]),
  row('consumables/peener_flaps', 'Set of rotary-peening flaps', 'h per set', [10, 20, 40]),
  row('consumables/needle_set', 'Set of needles, needle scaler', 'h per set', [20, 40, 80]),
  row('consumables/chisel', 'Chisel of a breaker', 'h per chisel', [8, 20, 40], 're-forge or grind'),
  row('consumables/blast_grit', 'Abrasive of open blasting', 'kg per m2', [10, 20, 35], 'no silica sand'),
  row('consumables/filter', 'Vacuum filter', 'kg per filter', [300, 800, 2000], 'change by pressure, not by date'),
];
