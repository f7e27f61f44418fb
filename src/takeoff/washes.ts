import type { Chemical } from './rates/findingRow.ts';
import { chemicalCode, rinseCode } from './rates/findingRates.ts';
import { findingRowOf } from './rates/findings.ts';

/** What a wet treatment puts on a floor. Rates in L/m2, table consumables. */
export interface Wash {
  readonly chemical: Chemical | null;
  readonly rate: string | null;
  /** The acid is neutralised before it is rinsed. */
  readonly neutralised: boolean;
  readonly rinseRate: string | null;
  readonly rinses: number;
}

const RINSE = 'consumables/rinse';

/** After acid: neutralise, rinse twice. Common practice, no source. */
const OF_METHOD: Readonly<Record<string, Wash>> = {
  detergent_scrub: {
    chemical: 'degreaser',
    rate: 'consumables/degreaser',
    neutralised: false,
    rinseRate: RINSE,
    rinses: 1,
  },
  acid_etch: { chemical: 'etch', rate: 'consumables/acid', neutralised: true, rinseRate: RINSE, rinses: 2 },
  acid_gel: { chemical: 'etchGel', rate: 'consumables/acid', neutralised: true, rinseRate: RINSE, rinses: 2 },
  chem_strip: {
    chemical: 'coatingStripper',
    rate: 'consumables/stripper',
    neutralised: false,
    rinseRate: RINSE,
    rinses: 2,
  },
};

/** What a pass by this method puts on the floor; null for dry ones and for those that use nothing but a jet of water. */
export function washOfMethod(method: string): Wash | null {
  return OF_METHOD[method] ?? null;
}

/** What takes a finding away with something wet; null where nothing wet is put on it. */
export function washOfFinding(kind: string): Wash | null {
  const row = findingRowOf(kind);
  if (!row || (row.chemical === null && row.rinseLM2 <= 0)) return null;
  return {
    chemical: row.chemical,
    rate: row.chemical === null ? null : chemicalCode(kind),
    neutralised: row.chemical === 'etch' && row.neutraliser !== undefined,
    rinseRate: row.rinseLM2 > 0 ? rinseCode(kind) : null,
    rinses: 1,
  };
}

/** Share of a concentrate in what is put on, %, or kg of powder in a litre; null: it is used as it is sold. */
export const MADE_UP: Readonly<Record<Chemical, { readonly rate: string; readonly unit: 'L' | 'kg' } | null>> = {
  degreaser: { rate: 'consumables/degreaser_share', unit: 'L' },
  cleaner: { rate: 'consumables/degreaser_share', unit: 'L' },
  finishStripper: { rate: 'consumables/degreaser_share', unit: 'L' },
  coatingStripper: null,
  etch: { rate: 'consumables/acid_share', unit: 'L' },
  etchGel: null,
  neutraliser: { rate: 'consumables/soda', unit: 'kg' },
  hypochlorite: { rate: 'consumables/hypochlorite_share', unit: 'L' },
};
