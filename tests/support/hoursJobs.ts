import type { Cell } from '../../src/model/cell.ts';
import type { Doc } from '../../src/model/doc.ts';
import type { RecordOf } from '../../src/model/records/all.ts';
import {
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  restCells,
  set,
  slabCells,
  withCells,
  zoneCells,
} from './jobPlans.ts';
import { richJob } from './richJob.ts';

const clear = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;

const NARROW: RecordOf<'machine'> = {
  method: 'grinder_small',
  name: 'Narrow',
  cutWidthMm: 250,
  bodyWidthMm: 300,
  bodyLengthMm: 900,
  heightMm: 1_000,
  turningMm: 0,
  smallestOpeningMm: 400,
  clearanceMm: { wall: 25, obstruction: 25, drop: 600, stop: 25 },
  lapMm: 50,
};

export function obstructionCells(
  id: `obstruction:${string}`,
  kind: RecordOf<'obstruction'>['kind'],
  at: readonly [number, number],
  sizeMm: number,
  more: Partial<RecordOf<'obstruction'>> = {},
): Cell[] {
  return record(id, {
    floor: FLOOR,
    tag: id.slice('obstruction:'.length),
    kind,
    shape: { form: 'rectangle', at, widthMm: sizeMm, depthMm: sizeMm, turnDeg: 0 },
    under: 'none',
    ...more,
  });
}

/** The invented hall of richJob with everything that has hours besides: steps, goods, tests, a machine that follows. */
export function everythingJob(): Doc {
  return withCells(
    richJob(),
    set('zone:hall', 'goodsBy', 'us'),
    set('zone:hall', 'goodsM2', 10),
    set('zone:hall', 'maskWalls', true),
    set('zone:hall', 'mockUpM2', 2),
    set('zone:hall', 'tests', ['csp', 'rh', 'pull']),
    set('zone:deck', 'groove', true),
    set('joint:J1', 'oldFiller', true),
    set('joint:J2', 'steelAngle', true),
    set('obstruction:bench', 'upstand', { kind: 'coveBase', heightMm: 100, treat: 'keep' }),
    obstructionCells('obstruction:drain', 'drain', [4_000, 3_000], 300),
    obstructionCells('obstruction:kerb', 'platform', [8_000, 3_000], 600, {
      upstand: { kind: 'coveBase', heightMm: 100, treat: 'remove' },
    }),
    obstructionCells('obstruction:cove', 'platform', [10_000, 3_000], 600, {
      upstand: { kind: 'coveBase', heightMm: 100, treat: 'keep' },
    }),
    obstructionCells('obstruction:goods', 'equipment', [3_000, 10_500], 900, { under: 'clearedBefore' }),
    record('steps:T1', {
      floor: FLOOR,
      tag: 'T1',
      ring: rectangle(1_200, 900, [20_000, 8_000]),
      count: 3,
      riseMm: 170,
      goingMm: 300,
    }),
    record('machine:first', { ...NARROW, name: 'First', cutWidthMm: 500, bodyWidthMm: 550, order: '1' }),
    record('machine:small', { ...NARROW, order: '2' }),
    findingCells('finding:F9', 'pitting', rectangle(1_000, 1_000, [13_000, 3_000]), { depthMm: 3 }),
    set('recipe:grind', 'followedBy', ['machine:small']),
  );
}

/** One plan for each value of what slows work: hardness, time, profile by shot, findings, size of room, what stands about. */
export function factorJobs(): Doc[] {
  const room = (side: number, ...cells: readonly Cell[][]): Doc =>
    docOf(jobCells({ inSlabLocated: clear }), slabCells(rectangle(side, side)), ...cells);
  const hardness = (['soft', 'medium', 'hard', 'veryHard'] as const).map((hard) =>
    room(12_000, restCells({ hardness: hard })),
  );
  const times = (['occupied', 'night', 'extremeWeather'] as const).map((time) => room(12_000, restCells({ time })));
  const shot = [3, 4, 6, 8].map((csp) =>
    room(
      12_000,
      recipeCells('shot', { method: 'shot_medium', times: 1, edgeMethod: 'hand_peener' }),
      restCells({ recipe: 'recipe:shot', csp: { min: csp, max: csp } }),
    ),
  );
  const spot = rectangle(2_000, 2_000, [4_000, 4_000]);
  const findings = ['sealer', 'paint', 'adhesive', 'mastic_black', 'elastomer'].map((kind) =>
    room(12_000, findingCells('finding:F1', kind, spot, { asbestosTest: clear, leadTest: clear, thicknessMm: 0.4 })),
  );
  const sizes = [3_000, 5_000, 9_000, 20_000, 60_000].map((side) => room(side));
  const stands = [0, 2, 6, 12, 20].map((count) =>
    room(
      10_000,
      Array.from({ length: count }, (_, i) =>
        obstructionCells(
          `obstruction:${i}`,
          'column',
          [1_500 + (i % 5) * 1_800, 1_500 + Math.floor(i / 5) * 1_800],
          200,
        ),
      ).flat(),
    ),
  );
  const two = docOf(
    jobCells(),
    slabCells(rectangle(12_000, 6_000)),
    zoneCells('zone:a', rectangle(6_000, 6_000)),
    restCells(),
  );
  return [...hardness, ...times, ...shot, ...findings, ...sizes, ...stands, two];
}
