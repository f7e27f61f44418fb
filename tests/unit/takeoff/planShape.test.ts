import { describe, expect, test } from 'vitest';
import { ringArea } from '../../../src/geometry/ring.ts';
import { formRing } from '../../../src/geometry/formRing.ts';
import type { Machine } from '../../../src/model/records/machine.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
import { faceOf, passageMm, planShape } from '../../../src/takeoff/planShape.ts';
import { gapRing, wallBodies } from '../../../src/takeoff/wallBody.ts';
import {
  docOf,
  FLOOR,
  jobCells,
  record,
  rectangle,
  set,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';

describe('wall bodies', () => {
  test('a straight wall is its length times its thickness, butt ends', () => {
    const [body] = wallBodies(
      [
        [0, 0],
        [5_000, 0],
      ],
      200,
    );
    expect(ringArea(body ?? [])).toBeCloseTo(1e6, 6);
  });

  test('a mitred corner keeps length along the path times thickness', () => {
    const [body] = wallBodies(
      [
        [0, 0],
        [5_000, 0],
        [5_000, 3_000],
      ],
      200,
    );
    expect(ringArea(body ?? [])).toBeCloseTo(8_000 * 200, 6);
  });

  test('a closed path gives two bodies that meet and leave the floor inside', () => {
    const bodies = wallBodies([...rectangle(4_000, 3_000), [0, 0]], 200);
    expect(bodies.length).toBe(2);
    expect(bodies.reduce((sum, body) => sum + ringArea(body), 0)).toBeCloseTo(14_000 * 200, 6);
  });

  test('a gap is as wide as its opening and as deep as the wall', () => {
    const path = [
      [0, 0],
      [5_000, 0],
    ] as const;
    expect(ringArea(gapRing(path, 200, 1_000, 1_900) ?? [])).toBeCloseTo(900 * 200, 6);
    expect(gapRing(path, 200, 6_000, 7_000)).toBeNull();
  });
});

describe('obstructions', () => {
  test('a circle keeps its area exactly', () => {
    const ring = formRing({ form: 'circle', at: [100, 200], diameterMm: 500 });
    expect(ringArea(ring)).toBeCloseTo(Math.PI * 250 ** 2, 6);
  });

  test('a rectangle turns about its middle and keeps its area', () => {
    const ring = formRing({ form: 'rectangle', at: [0, 0], widthMm: 400, depthMm: 200, turnDeg: 30 });
    expect(ringArea(ring)).toBeCloseTo(80_000, 6);
  });
});

describe('faces and passages', () => {
  test('open starts as run, a doorway as stop, and what is said of it wins', () => {
    expect(faceOf({ kind: 'wall' })).toBe('wall');
    expect(faceOf({ kind: 'drop' })).toBe('drop');
    expect(faceOf({ kind: 'open' })).toBe('run');
    expect(faceOf({ kind: 'open', beyond: 'stop' })).toBe('stop');
    expect(faceOf({ kind: 'doorway' })).toBe('stop');
    expect(faceOf({ kind: 'doorway', beyond: 'run' })).toBe('run');
  });

  test('a passage is the widest of head with clearance, body and the smallest opening of the book', () => {
    const small = defaultMachine('grinder_small');
    if (!small) throw new Error('no machine');
    // 500 + 2 x 50, body 560, opening 800.
    expect(small.clearanceMm).toEqual({ wall: 50, obstruction: 50, drop: 600, stop: 50 });
    expect(passageMm(small)).toBe(800);
    expect(passageMm({ ...small, clearanceMm: { ...small.clearanceMm, wall: 200 } })).toBe(900);
    expect(passageMm({ ...small, bodyWidthMm: 1_000 })).toBe(1_000);
  });

  test('methods without a machine have none', () => {
    expect(defaultMachine('acid_etch')).toBeNull();
    expect(defaultMachine('nothing')).toBeNull();
  });
});

test('later zones come later, and the rest has its own machine', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 10_000)),
    zoneCells('zone:b', rectangle(5_000, 5_000), { order: '1' }),
    zoneCells('zone:a', rectangle(6_000, 6_000), { order: '2' }),
    record('machine:m', { ...machine(), name: 'Mine' }),
  );
  const shape = planShape(doc, FLOOR);
  expect(shape.zones.map(({ id }) => id)).toEqual(['zone:b', 'zone:a']);
  expect(shape.restMachine).toBe('machine:m');
  expect(shape.machines.length).toBe(1);
});

function machine() {
  const small = defaultMachine('grinder_small');
  if (!small) throw new Error('no machine');
  return small;
}

describe('what has not changed', () => {
  const wall = record('wall:w', { floor: FLOOR, tag: 'W1', path: [[0, 2_000], [3_000, 2_000]], thicknessMm: 150 }); // prettier-ignore
  const door = record('opening:d', { wall: 'wall:w', tag: 'D1', atMm: 500, widthMm: 900, heightMm: 2_000 });
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(8_000, 6_000)),
    wall,
    door,
    zoneCells('zone:z', rectangle(4_000, 4_000)),
    record('obstruction:b', {
      floor: FLOOR,
      tag: 'B1',
      kind: 'column',
      shape: { form: 'circle', at: [6_000, 3_000], diameterMm: 400 },
      under: 'none',
    }),
    record('crack:c', { floor: FLOOR, tag: 'C1', path: [[1_000, 1_000], [2_000, 1_500]], widthMm: null, depthMm: null, behaviour: 'notJudged' }), // prettier-ignore
    record('crack:d', { floor: FLOOR, tag: 'C2', path: [[1_000, 5_000], [2_000, 5_500]], widthMm: null, depthMm: null, behaviour: 'notJudged' }), // prettier-ignore
  );
  const before = planShape(doc, FLOOR);

  test('has the very same shape when something else has: the engine goes by that', () => {
    const after = planShape(withCells(doc, set('crack:c', 'path', rectangle(500, 500))), FLOOR);
    expect(after.lines[0]).not.toBe(before.lines[0]);
    expect(after.lines[1]).toBe(before.lines[1]);
    for (const list of ['slabs', 'walls', 'solids', 'findings', 'outOfScope', 'entrances'] as const)
      expect(after[list], list).toBe(before[list]);
    expect(after.zones[0]).toBe(before.zones[0]);
    expect(after.machines[0]).toBe(before.machines[0]);
  });

  test('a plan of which nothing that can be measured has changed is the very same floor', () => {
    expect(planShape(withCells(doc, set('job:test', 'name', 'Other')), FLOOR)).toBe(planShape(doc, FLOOR));
  });

  test('a wall is another when its opening is, a zone when its machine is', () => {
    const moved = planShape(withCells(doc, set('opening:d', 'atMm', 900)), FLOOR);
    expect(moved.walls[0]).not.toBe(before.walls[0]);
    expect(moved.walls[0]?.gaps[0]?.ring).not.toEqual(before.walls[0]?.gaps[0]?.ring);
    expect(moved.solids).toBe(before.solids);
    const fleet = record('machine:m', defaultMachine('grinder_large') as Machine);
    const other = planShape(withCells(doc, fleet), FLOOR);
    expect(other.zones[0]).not.toBe(before.zones[0]);
    expect(other.zones[0]?.machine).toBe('machine:m');
  });
});
