import type { Zone } from '../model/records/zone.ts';
import type { ToolArea } from './toolAreas.ts';

/** How a tool wears: which line says it, by which rate, and which kinds of it are told apart when it is bought. */
export interface Wear {
  readonly code: string;
  readonly unit: string;
  /** A rate of table consumables. */
  readonly rate: string;
  /** area: m2 by its life. hours: h on the tool by its life. loss: so much is left on each m2. */
  readonly by: 'area' | 'hours' | 'loss';
  /** Parts joined by a bar: machine, grit, bond; null where one is as good as another. */
  readonly kind: string | null;
}

type Hardness = Zone['hardness'];

/** Bond goes opposite to hardness; a life for each is in the table, so that no factor acts on top of it. */
const DIAMONDS: Readonly<Record<Hardness, { readonly rate: string; readonly bond: string }>> = {
  soft: { rate: 'diamond_set_soft', bond: 'bondHard' },
  medium: { rate: 'diamond_set_medium', bond: 'bondMedium' },
  hard: { rate: 'diamond_set_hard', bond: 'bondSoft' },
  veryHard: { rate: 'diamond_set_hard', bond: 'bondExtraSoft' },
};

const BUFF: Readonly<Record<string, readonly [code: string, unit: string, rate: string]>> = {
  buffer_strip_pad: ['padWear', 'pads', 'strip_pad'],
  buffer_screen: ['screenWear', 'screens', 'screen'],
  buffer_sandpaper: ['paperWear', 'discs', 'sandpaper'],
};

const BY_HOURS: Readonly<Record<string, readonly [code: string, unit: string, rate: string]>> = {
  scabbler_floor: ['bitWear', 'sets', 'scabbler_bits'],
  scabbler_hand: ['bitWear', 'sets', 'scabbler_bits'],
  hand_peener: ['flapWear', 'sets', 'peener_flaps'],
  needle_scaler: ['needleWear', 'sets', 'needle_set'],
  breaker_hand: ['chiselWear', 'chisels', 'chisel'],
};

/** What wears on an area, or null where nothing does: washing, etching, stripping, water. */
export function wearOf(tool: ToolArea, hardness: Hardness): Wear | null {
  const { row, machine } = tool;
  const wear = (code: string, unit: string, rate: string, kind: string | null = machine): Wear => ({
    code,
    unit,
    rate: `consumables/${rate}`,
    by: 'area',
    kind,
  });
  switch (row.group) {
    case 'grind':
      return setOf(tool, hardness, wear);
    case 'handGrind':
      return wear('cupWear', 'wheels', 'cup_125', kindOf(row.id, tool.abrasive));
    case 'bush':
      return wear('bushWear', 'sets', 'bush_set');
    case 'scarify':
      return row.id === 'mill_drivable'
        ? wear('millWear', 'sets', 'mill_teeth')
        : wear('cutterWear', 'sets', 'cutters_scarifier');
    case 'handScrape':
    case 'scrape':
      return wear('scraperWear', 'blades', 'scraper_blade', row.id);
    case 'shot':
      return { ...wear('shotLoss', 'kg', 'shot', tool.abrasive ?? 'anySize'), by: 'loss' };
    case 'openBlast':
      return { ...wear('blastGrit', 'kg', 'blast_grit', null), by: 'loss' };
    case 'buff': {
      const [code, unit, rate] = BUFF[row.id] ?? [];
      return code && unit && rate ? wear(code, unit, rate, tool.abrasive) : null;
    }
    case 'scabble':
    case 'handImpact': {
      const [code, unit, rate] = BY_HOURS[row.id] ?? [];
      return code && unit && rate ? { ...wear(code, unit, rate, row.id), by: 'hours' } : null;
    }
    case 'wash':
    case 'etch':
    case 'strip':
    case 'waterJet':
    case 'chase':
      return null;
  }
}

type MakeWear = (code: string, unit: string, rate: string, kind?: string | null) => Wear;

/** A set stays on its machine: one that follows has its own, and each grit and bond is a set of its own. */
function setOf({ abrasive, machine }: ToolArea, hardness: Hardness, wear: MakeWear): Wear {
  if (abrasive === 'pcd') return wear('pcdWear', 'sets', 'pcd_set');
  if (abrasive === 'resin') return wear('resinWear', 'sets', 'resin_set');
  const { rate, bond } = DIAMONDS[hardness];
  return wear('diamondWear', 'sets', rate, kindOf(machine, abrasive ?? 'anyGrit', bond));
}

/** A kind by its parts; those that nobody has chosen are left out. */
export function kindOf(...parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null).join('|');
}
