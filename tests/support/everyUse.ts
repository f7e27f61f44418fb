import type { Cell } from '../../src/model/cell.ts';
import type { Doc } from '../../src/model/doc.ts';
import type { Point } from '../../src/geometry/floorShape.ts';
import type { RecordOf } from '../../src/model/records/all.ts';
import { defaultMoneyCells, defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { findingRows } from '../../src/takeoff/rates/findings.ts';
import { methods } from '../../src/takeoff/rates/methods.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  slabCells,
  zoneCells,
} from './jobPlans.ts';

const CLEAR = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;
/** Zones stand side by side, each so wide and so deep, mm. */
const WIDE = 8_000;
const DEEP = 40_000;

/** One zone with its recipe, in the place of its number. */
function strip(
  place: number,
  name: string,
  pass: Partial<RecordOf<'pass'>>,
  zone: Partial<RecordOf<'zone'>> = {},
): Cell[] {
  return [
    ...recipeCells(name, pass),
    ...zoneCells(`zone:${name}`, rectangle(WIDE, DEEP, at(place)), { recipe: `recipe:${name}`, ...zone }),
  ];
}

function at(place: number, x = 0, y = 0): Point {
  return [place * WIDE + x, y];
}

/** A line of 6 m in the zone of that number. */
function line(place: number, y: number): Point[] {
  return [at(place, 1_000, y), at(place, 7_000, y)];
}

const FIELD = methods.filter((row) => row.rate.unit === 'm2/h').map((row) => row.id);
const GRITS = ['pcd', 'resin', 'd16'] as const;
const HARD = ['soft', 'hard', 'veryHard'] as const;

/**
 * An invented hall on which everything is used up that can be: a zone for each method, for polycrystalline and resin
 * tools, for each hardness and each profile; every kind of finding, cleared by test; cracks and joints of every kind.
 * Rates and money stand in the job, so that a term tells the row it is from.
 */
export function everyUse(): Doc {
  const zones = [
    ...FIELD.map((method, i) => strip(i, method, { method })),
    ...GRITS.map((abrasive, i) => strip(FIELD.length + i, `grit-${abrasive}`, { abrasive })),
    ...HARD.map((hardness, i) => strip(FIELD.length + 3 + i, `hard-${hardness}`, {}, { hardness, maskWalls: true })),
    ...Array.from({ length: 10 }, (_, i) =>
      strip(
        FIELD.length + 6 + i,
        `csp-${i + 1}`,
        {},
        {
          csp: { min: i + 1, max: i + 1 },
          system: { kind: 'trowel_mortar', thicknessMm: 5 },
        },
      ),
    ),
  ];
  const findings = findingRows.map(({ id }, i) =>
    findingCells(`finding:F${i + 1}`, id, rectangle(3_000, 3_000, at(1, 0, 1_000 + i * 1_200)), {
      asbestosTest: CLEAR,
      leadTest: CLEAR,
      ...(id === 'pitting' ? { depthMm: 4 } : {}),
    }),
  );
  const joint = (tag: string, y: number, fields: Pick<RecordOf<'joint'>, 'kind' | 'treat'>): Cell[] =>
    record(`joint:${tag}`, { floor: FLOOR, tag, path: line(2, y), ...fields });
  const shot = FIELD.indexOf('shot_small');
  return docOf(
    jobCells({ inSlabLocated: CLEAR }),
    defaultRateCells(),
    defaultMoneyCells(),
    slabCells(rectangle(WIDE * zones.length, DEEP)),
    ...zones,
    ...findings,
    crackCells('crack:C1', line(2, 2_000)),
    crackCells('crack:C2', line(2, 3_000), { widthMm: 8 }),
    crackCells('crack:C3', line(2, 4_000), { behaviour: 'working' }),
    joint('J1', 5_000, { kind: 'control', treat: 'filled' }),
    joint('J2', 6_000, { kind: 'construction', treat: 'carried' }),
    joint('J3', 7_000, { kind: 'isolation', treat: 'carried' }),
    record('joint:J4', { floor: FLOOR, tag: 'J4', path: line(shot, 8_000), kind: 'control', treat: 'filled' }),
  );
}
