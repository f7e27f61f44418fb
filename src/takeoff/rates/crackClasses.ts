import type { Provenance } from '../line.ts';

/** A class of crack, joint or spall: how it is known and what is done. */
export interface CrackClassRow {
  readonly id: string;
  readonly term: string;
  /** Width, mm, as it is printed. */
  readonly widthMm: string;
  readonly sign: string;
  readonly treatment: string;
  /** Chase, mm; null: none, as cut, or of the sealant. */
  readonly chase: string | null;
  readonly fill: string;
  readonly regrind: string;
  /** What stands behind it, with its source; empty: common practice, no source. */
  readonly basis: string;
  readonly provenance: Provenance;
}

/** The numbers that are worked with stand in cracks.ts. */
export const crackClasses: readonly CrackClassRow[] = [
  {
    id: 'hairline',
    term: 'Hairline',
    widthMm: 'under 0.3',
    sign: 'static assumed',
    treatment: 'do not chase; gravity-fill if through or if system is thin',
    chase: null,
    fill: 'low-viscosity epoxy or methacrylate',
    regrind: 'none',
    basis: 'ACI224: injection works to 0.05 mm',
    provenance: 'R2',
  },
  {
    id: 'static',
    term: 'Static (dormant)',
    widthMm: '0.3-6',
    sign: 'no change over seasons',
    treatment: 'chase, fill flush, regrind',
    chase: '6 x 12',
    fill: 'rigid structural polyurethane or polyurea, or epoxy mortar',
    regrind: 'yes',
    basis: '',
    provenance: 'P',
  },
  {
    id: 'static_wide',
    term: 'Static, wide or broken edges',
    widthMm: '6-20',
    sign: '',
    treatment: 'saw edges, remove loose, fill with sand-filled resin or mortar',
    chase: 'crack + 3 each side x 19',
    fill: 'epoxy mortar',
    regrind: 'yes',
    basis: '',
    provenance: 'P',
  },
  {
    id: 'working',
    term: 'Working (active)',
    widthMm: 'any',
    sign: 'opens and closes; follows a joint or span',
    treatment: 'treat as a joint: saw reservoir, flexible sealant, carry through the topping',
    chase: 'per sealant x per sealant',
    fill: 'sealant with backer or bond breaker',
    regrind: 'no: cap flush or leave',
    basis: 'UFC3-270-03 backer 25 % over width; seal within 24 h',
    provenance: 'R',
  },
  {
    id: 'structural',
    term: 'Structural or stepped',
    widthMm: 'over 0.5 with lip or leak',
    sign: '',
    treatment: 'stop: engineer',
    chase: null,
    fill: 'injection by design',
    regrind: '',
    basis: '',
    provenance: 'P',
  },
  {
    id: 'control_joint',
    term: 'Control (contraction) joint',
    widthMm: '3-6',
    sign: 'may still move',
    treatment: 'honour; semi-rigid fill full depth if wheels and slab old',
    chase: 'as cut x as cut',
    fill: 'semi-rigid epoxy or polyurea, about Shore A 80',
    regrind: 'flush trim',
    basis: 'ACI302-FILL: 90 days (ACI), 28 (makers)',
    provenance: 'R2',
  },
  {
    id: 'construction_joint',
    term: 'Construction joint',
    widthMm: '0-6',
    sign: '',
    treatment: 'as control joint',
    chase: '6 x 12-19',
    fill: 'semi-rigid',
    regrind: 'flush trim',
    basis: '',
    provenance: 'P',
  },
  {
    id: 'isolation_joint',
    term: 'Isolation or expansion joint',
    widthMm: '10-25',
    sign: 'moves',
    treatment: 'honour always; never rigid; never bridge',
    chase: 'as built x as built',
    fill: 'compressible filler and sealant',
    regrind: 'no',
    basis: 'UFC3-270-03: no patch bridges a joint or crack',
    provenance: 'R',
  },
  {
    id: 'spall',
    term: 'Spall or pothole',
    widthMm: '',
    sign: 'broken edge, hole',
    treatment:
      'square edges, remove 13-25 mm on floors to sound (50 mm is road practice); locate tendons, heating, conduit first',
    chase: '- x 13-25',
    fill: 'repair mortar',
    regrind: 'yes',
    basis: 'UFC3-270-03 (pavement): saw cut 50 mm deep, 50-80 mm outside, 13 mm into sound',
    provenance: 'R/P',
  },
];
