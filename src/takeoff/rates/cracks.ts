import { PRACTICE, type Sourced } from './rateRow.ts';

export interface CrackRow extends Sourced {
  readonly id: string;
  readonly term: string;
  /** Class of width, mm, as the table says it. */
  readonly widthMm: string;
  readonly sign?: string;
  readonly treatment: string;
  /** Width x depth of the chase, mm, as the table says it. */
  readonly chase: string;
  readonly fill: string;
  readonly regrind: string;
  readonly note?: string;
}

/** Under it a crack is a hairline and is not chased, mm; common practice, no source. */
export const HAIRLINE_MM = 0.3;
/** Above it the edges are sawn and the fill is sand-filled, mm; common practice, no source. */
export const WIDE_MM = 6;
/** Chase of a static crack, width and depth, mm; common practice, no source. */
export const CHASE_MM = { width: 6, depth: 12 } as const;
/** A wide crack is opened by so much on either side, and to this depth, mm; common practice, no source. */
export const WIDE_CHASE_MM = { eachSide: 3, depth: 19 } as const;
/** Joints without measured width and depth, mm: a saw cut of 3 to 6 mm, its usual depth; common practice, no source. */
export const JOINT_MM = { controlWidth: 4.5, controlDepth: 25, constructionWidth: 6, constructionDepth: 15.5 } as const;

export const crackRows: readonly CrackRow[] = [
  {
    id: 'hairline',
    term: 'Hairline',
    widthMm: 'under 0.3',
    sign: 'static assumed',
    treatment: 'do not chase; gravity-fill if through or if system is thin',
    chase: '- x -',
    fill: 'low-viscosity epoxy or methacrylate',
    regrind: 'none',
    note: 'injection works to 0.05 mm',
    source: 'ACI224',
    provenance: 'R2',
    fromMemory: false,
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
    ...PRACTICE,
  },
  {
    id: 'static_wide',
    term: 'Static, wide or broken edges',
    widthMm: '6-20',
    treatment: 'saw edges, remove loose, fill with sand-filled resin or mortar',
    chase: 'crack + 3 each side x 19',
    fill: 'epoxy mortar',
    regrind: 'yes',
    ...PRACTICE,
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
    note: 'backer 25 % over width; seal within 24 h',
    source: 'UFC3-270-03',
    provenance: 'R',
    fromMemory: false,
  },
  {
    id: 'structural',
    term: 'Structural or stepped',
    widthMm: 'over 0.5 with lip or leak',
    treatment: 'stop: engineer',
    chase: '- x -',
    fill: 'injection by design',
    regrind: '-',
    ...PRACTICE,
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
    note: '90 days (ACI), 28 (makers)',
    source: 'ACI302-FILL',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    id: 'construction_joint',
    term: 'Construction joint',
    widthMm: '0-6',
    treatment: 'as control joint',
    chase: '6 x 12-19',
    fill: 'semi-rigid',
    regrind: 'flush trim',
    ...PRACTICE,
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
    note: 'no patch bridges a joint or crack',
    source: 'UFC3-270-03',
    provenance: 'R',
    fromMemory: false,
  },
  {
    id: 'spall',
    term: 'Spall or pothole',
    widthMm: '-',
    sign: 'broken edge, hole',
    treatment:
      'square edges, remove 13-25 mm on floors to sound (50 mm is road practice); locate tendons, heating, conduit first',
    chase: '- x 13-25',
    fill: 'repair mortar',
    regrind: 'yes',
    note: '(pavement): saw cut 50 mm deep, 50-80 mm outside, 13 mm into sound',
    source: 'UFC3-270-03',
    provenance: 'R/P',
    fromMemory: false,
  },
];
