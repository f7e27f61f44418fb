import type { Doc } from '../../src/model/doc.ts';
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

/** An invented hall of 24 x 16 m on which every kind of line appears. Nothing in it is held. */
export function richJob(): Doc {
  const clear = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;
  const upstand = { kind: 'stemWall', heightMm: 150, treat: 'prepare' } as const;
  return docOf(
    jobCells({ inSlabLocated: clear }),
    slabCells(rectangle(24_000, 16_000), [
      { kind: 'wall', upstand },
      { kind: 'drop' },
      { kind: 'doorway' },
      { kind: 'open', beyond: 'run' },
    ]),
    recipeCells('grind'),
    recipeCells('shot', { method: 'shot_small', times: 1, abrasive: 'shot_s330', edgeMethod: 'hand_peener' }),
    recipeCells('byHand', { method: 'hand_grinder', times: 1 }),
    zoneCells('zone:hall', rectangle(12_000, 16_000), {
      recipe: 'recipe:grind',
      hardness: 'hard',
      time: 'night',
      system: { kind: 'flake_broadcast', thicknessMm: 1 },
    }),
    zoneCells('zone:deck', rectangle(6_000, 16_000, [12_000, 0]), { recipe: 'recipe:shot', csp: { min: 4, max: 5 } }),
    zoneCells('zone:nook', rectangle(2_000, 2_000, [20_000, 0]), { recipe: 'recipe:byHand' }),
    restCells({ system: { kind: 'thin_film' } }),
    record('wall:w1', {
      floor: FLOOR,
      tag: 'W1',
      path: [
        [19_000, 16_000],
        [19_000, 12_000],
        [24_000, 12_000],
      ],
      thicknessMm: 200,
    }),
    record('opening:d1', { wall: 'wall:w1', tag: 'D1', atMm: 1_000, widthMm: 700, heightMm: 2_000 }),
    ...[3_000, 6_000, 9_000].map((x, i) =>
      record(`obstruction:b${i}`, {
        floor: FLOOR,
        tag: `B${i + 1}`,
        kind: 'column',
        shape: { form: 'rectangle', at: [x, 8_000], widthMm: 400, depthMm: 400, turnDeg: 0 },
        under: 'none',
      }),
    ),
    record('obstruction:post', {
      floor: FLOOR,
      tag: 'B8',
      kind: 'post',
      shape: { form: 'circle', at: [15_000, 8_000], diameterMm: 150 },
      under: 'none',
    }),
    record('obstruction:bench', {
      floor: FLOOR,
      tag: 'B9',
      kind: 'equipment',
      shape: { form: 'rectangle', at: [10_000, 15_000], widthMm: 2_000, depthMm: 1_000, turnDeg: 0 },
      under: 'byHand',
      upstand: { kind: 'platformSide', heightMm: 100, treat: 'keep' },
    }),
    record('obstruction:near', {
      floor: FLOOR,
      tag: 'B7',
      kind: 'pier',
      shape: { form: 'rectangle', at: [5_000, 1_000], widthMm: 3_000, depthMm: 1_000, turnDeg: 0 },
      under: 'none',
    }),
    crackCells('crack:C1', [
      [1_000, 4_000],
      [17_000, 4_000],
    ]),
    crackCells(
      'crack:C2',
      [
        [1_000, 5_000],
        [5_000, 5_000],
      ],
      { widthMm: 8 },
    ),
    crackCells(
      'crack:C3',
      [
        [1_000, 6_000],
        [5_000, 6_000],
      ],
      { behaviour: 'working' },
    ),
    crackCells(
      'crack:C4',
      [
        [1_000, 7_000],
        [5_000, 7_000],
      ],
      { widthMm: 0.2 },
    ),
    crackCells(
      'crack:C5',
      [
        [6_000, 6_000],
        [9_000, 6_000],
      ],
      { behaviour: 'structural' },
    ),
    crackCells(
      'crack:C6',
      [
        [6_000, 7_000],
        [9_000, 7_000],
      ],
      { behaviour: 'notJudged', widthMm: 1, depthMm: 60 },
    ),
    record('joint:J1', {
      floor: FLOOR,
      tag: 'J1',
      kind: 'control',
      treat: 'filled',
      path: [
        [0, 10_000],
        [18_000, 10_000],
      ],
    }),
    record('joint:J2', {
      floor: FLOOR,
      tag: 'J2',
      kind: 'isolation',
      treat: 'carried',
      path: [
        [0, 11_000],
        [18_000, 11_000],
      ],
    }),
    findingCells('finding:F1', 'oil_light', rectangle(1_000, 2_000, [2_000, 12_000])),
    findingCells('finding:F2', 'paint', rectangle(2_000, 2_000, [6_000, 12_000]), {
      thicknessMm: 0.4,
      layers: 2,
      leadTest: clear,
    }),
    findingCells('finding:F3', 'hollow', rectangle(500, 500, [13_000, 12_000])),
    record('entrance:e', { floor: FLOOR, tag: 'E1', at: [18_000, 15_800], widthMm: 2_400, heightMm: 2_400 }),
  );
}
