import type { Point } from '../../src/geometry/floorShape.ts';
import type { Cell } from '../../src/model/cell.ts';
import type { Doc } from '../../src/model/doc.ts';
import type { RecordOf } from '../../src/model/records/all.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  restCells,
  slabCells,
  zoneCells,
} from './jobPlans.ts';

/*
 * Whole jobs, invented, for takeoffs that people read line by line: a warehouse with joints in two phases, a kitchen with
 * drains worked wet, a showroom with the adhesive of a carpet on it.
 */

const CLEAR = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;

function columns(across: number, down: number, pitchMm: number, sizeMm: number): Cell[] {
  return Array.from({ length: across * down }, (_, i) => {
    const at: Point = [pitchMm * (1 + (i % across)), pitchMm * (1 + Math.floor(i / across))];
    return record(`obstruction:b${i + 1}`, {
      floor: FLOOR,
      tag: `B${i + 1}`,
      kind: 'column',
      shape: { form: 'rectangle', at, widthMm: sizeMm, depthMm: sizeMm, turnDeg: 0 },
      under: 'none',
    });
  }).flat();
}

function joint(number: number, path: readonly Point[], more: Partial<RecordOf<'joint'>> = {}): Cell[] {
  return record(`joint:j${number}`, {
    floor: FLOOR,
    tag: `J${number}`,
    kind: 'control',
    treat: 'filled',
    path,
    ...more,
  });
}

/** 48 x 32 m, shot blasted for self-leveling resin in two phases; saw-cut joints to fill, one isolation joint that moves. */
export function warehouse(): Doc {
  const shot: Partial<RecordOf<'pass'>> = { method: 'shot_medium', times: 1, abrasive: 'shot_s330' };
  return docOf(
    jobCells({ name: 'Warehouse (invented)', inSlabLocated: CLEAR }),
    slabCells(rectangle(48_000, 32_000), [{ kind: 'wall' }, { kind: 'wall' }, { kind: 'wall' }, { kind: 'drop' }]),
    record('phase:a', { name: 'Week 1', floor: FLOOR, order: 'a' }),
    record('phase:b', { name: 'Week 2', floor: FLOOR, order: 'b' }),
    recipeCells('shot', { ...shot, edgeMethod: 'hand_peener' }),
    ...(['a', 'b'] as const).map((half, i) =>
      zoneCells(`zone:${half}`, rectangle(24_000, 32_000, [24_000 * i, 0]), {
        name: i === 0 ? 'West aisles' : 'East aisles',
        recipe: 'recipe:shot',
        phase: `phase:${half}`,
        hardness: 'hard',
        system: { kind: 'self_leveling_resin', thicknessMm: 3 },
      }),
    ),
    columns(5, 3, 8_000, 400),
    ...[8_000, 16_000, 24_000].map((y, i) =>
      joint(i + 1, [
        [0, y],
        [48_000, y],
      ]),
    ),
    joint(
      4,
      [
        [24_000, 0],
        [24_000, 32_000],
      ],
      { kind: 'isolation', treat: 'carried' },
    ),
    crackCells('crack:C1', [
      [2_000, 3_000],
      [9_000, 6_000],
    ]),
    findingCells('finding:F1', 'rubber', rectangle(6_000, 2_000, [30_000, 27_000])),
    record('entrance:e', { floor: FLOOR, tag: 'M1', at: [47_500, 16_000], widthMm: 3_600, heightMm: 3_500 }),
  );
}

/** 9 x 6 m with two drains and fat: scrubbed, then ground wet by a small grinder, for urethane cement. */
export function kitchen(): Doc {
  const drain = (id: string, at: Point): Cell[] =>
    record(`obstruction:${id}`, {
      floor: FLOOR,
      tag: id.toUpperCase(),
      kind: 'drain',
      shape: { form: 'rectangle', at, widthMm: 300, depthMm: 300, turnDeg: 0 },
      under: 'none',
    });
  const cove = { kind: 'coveBase', heightMm: 100, treat: 'remove' } as const;
  return docOf(
    jobCells({ name: 'Kitchen (invented)', units: 'imperial', inSlabLocated: CLEAR }),
    slabCells(rectangle(9_000, 6_000), [
      { kind: 'wall', upstand: cove },
      { kind: 'wall', upstand: cove },
      { kind: 'wall', upstand: cove },
      { kind: 'doorway' },
    ]),
    record('recipe:wet', { name: 'Scrub and grind' }),
    record('pass:p1', {
      recipe: 'recipe:wet',
      order: 'a',
      method: 'detergent_scrub',
      machine: null,
      times: 2,
      edgeMethod: null,
      edgeTimes: 0,
    }),
    record('pass:p2', {
      recipe: 'recipe:wet',
      order: 'b',
      method: 'grinder_small',
      machine: null,
      abrasive: 'd16',
      times: 2,
      edgeMethod: 'hand_grinder',
      edgeAbrasive: 'cup_single',
      edgeTimes: 2,
    }),
    restCells({ recipe: 'recipe:wet', wetAllowed: true, system: { kind: 'urethane_cement', thicknessMm: 6 } }),
    drain('b1', [3_000, 3_000]),
    drain('b2', [6_000, 3_000]),
    findingCells('finding:F1', 'fat', rectangle(2_000, 1_500, [500, 500])),
    findingCells('finding:F2', 'acid_attack', rectangle(1_000, 800, [5_000, 4_500])),
  );
}

/** 18 x 11 m with tested adhesive all over: scraped, then ground, for a micro-topping; at night, an old floor of two rooms. */
export function showroom(): Doc {
  return docOf(
    jobCells({
      name: 'Showroom (invented)',
      coatingOrTile: { answer: 'yes', by: 'Tester', on: '2030-01-01' },
      inSlabLocated: CLEAR,
    }),
    slabCells(rectangle(18_000, 11_000), [
      { kind: 'wall' },
      { kind: 'wall' },
      { kind: 'wall' },
      { kind: 'open', beyond: 'stop' },
    ]),
    record('recipe:strip', { name: 'Scrape and grind' }),
    record('pass:s1', {
      recipe: 'recipe:strip',
      order: 'a',
      method: 'scrape_walk',
      machine: null,
      times: 1,
      edgeMethod: 'scrape_hand',
      edgeTimes: 1,
    }),
    record('pass:s2', {
      recipe: 'recipe:strip',
      order: 'b',
      method: 'grinder_large',
      machine: null,
      abrasive: 'd30',
      times: 2,
      edgeMethod: 'hand_grinder_180',
      edgeAbrasive: 'cup_double',
      edgeTimes: 1,
    }),
    zoneCells('zone:front', rectangle(12_000, 11_000), {
      name: 'Front',
      recipe: 'recipe:strip',
      time: 'night',
      system: { kind: 'micro_topping', thicknessMm: 2 },
    }),
    restCells({ name: 'Back', recipe: 'recipe:strip', system: { kind: 'micro_topping', thicknessMm: 2 } }),
    columns(3, 1, 4_500, 350),
    findingCells('finding:F1', 'adhesive', rectangle(18_000, 11_000), {
      thicknessMm: 1,
      asbestosTest: CLEAR,
      leadTest: CLEAR,
    }),
    crackCells(
      'crack:C1',
      [
        [1_000, 9_000],
        [10_000, 7_000],
      ],
      { widthMm: 1, depthMm: 15 },
    ),
    crackCells(
      'crack:C2',
      [
        [13_000, 2_000],
        [17_000, 5_000],
      ],
      { behaviour: 'working' },
    ),
  );
}
