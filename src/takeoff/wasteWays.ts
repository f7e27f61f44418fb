import type { MethodGroup, MethodRow } from './rates/methodRow.ts';

/**
 * How what a method takes off leaves the floor: dust goes into the bags of the vacuum, rubble is shovelled into sacks,
 * wet waste goes into drums with its water.
 */
export type WasteWay = 'dust' | 'rubble' | 'wet';

const WET: readonly MethodGroup[] = ['wash', 'etch', 'strip', 'waterJet'];
const RUBBLE: readonly MethodGroup[] = ['scrape', 'handScrape', 'openBlast'];
/** Chips that no vacuum takes. */
const CHIPS: readonly string[] = ['mill_drivable', 'breaker_hand'];
/** A finish comes off as residue in its stripper. */
const RESIDUE = 'buffer_strip_pad';

/** Way of the waste of a method. Column waste of table methods: common practice, no source. */
export function wasteWay({ id, group }: MethodRow): WasteWay {
  if (WET.includes(group) || id === RESIDUE) return 'wet';
  return RUBBLE.includes(group) || CHIPS.includes(id) ? 'rubble' : 'dust';
}
