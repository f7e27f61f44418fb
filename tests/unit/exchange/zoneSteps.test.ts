import { expect, test } from 'vitest';
import { firm } from '../../../src/canvas/paint/textWidth.ts';
import { stepText } from '../../../src/exchange/zoneCardText.ts';
import { zoneSteps } from '../../../src/exchange/zoneSteps.ts';
import type { Doc } from '../../../src/model/doc.ts';
import { prepOfFloor } from '../../../src/takeoff/prep.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  rectangle,
  set,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';

const pass = {
  recipe: 'recipe:a',
  machine: null,
  times: 1,
  edgeMethod: null,
  edgeTimes: 0,
  method: 'grinder_small',
} as const;

function hall(passes: number): Doc {
  return docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8000)),
    record('recipe:a', { name: 'Grind' }),
    ...Array.from({ length: passes }, (_, i) =>
      record(`pass:${String(i)}`, {
        ...pass,
        order: `a${String(i)}`,
        ...(i === passes - 1 ? { edgeMethod: 'hand_grinder', edgeTimes: 1 } : {}),
      }),
    ),
    zoneCells('zone:1', rectangle(10_000, 8000), { recipe: 'recipe:a' }),
    findingCells('finding:1', 'oil_light', rectangle(1000, 1000, [2000, 2000])),
    crackCells(
      'crack:1',
      [
        [1000, 4000],
        [4000, 4000],
      ],
      { behaviour: 'static', widthMm: 1 },
    ),
    crackCells(
      'crack:2',
      [
        [1000, 6000],
        [4000, 6000],
      ],
      { behaviour: 'working', widthMm: 1 },
    ),
    crackCells(
      'crack:3',
      [
        [1000, 7000],
        [4000, 7000],
      ],
      { behaviour: 'static', widthMm: 0.2 },
    ),
  );
}

function stepsOf(doc: Doc) {
  const answer = takeoff(doc, FLOOR);
  const prep = prepOfFloor(doc, FLOOR).find((each) => each.zone === 'zone:1');
  const measure = answer.measure.zones.find((zone) => zone.id === 'zone:1');
  if (!prep || !measure) throw new Error('no zone');
  return zoneSteps({ doc, floor: FLOOR, takeoff: answer, prep, measure });
}

test('findings first, cracks between the coarse and the last pass, edges after, release at the end', () => {
  expect(stepsOf(hall(2)).map((step) => step.kind)).toEqual([
    'finding',
    'pass',
    'cracks',
    'pass',
    'edges',
    'profile',
    'release',
  ]);
});

test('with one pass the cracks are filled before it grinds them flush', () => {
  expect(stepsOf(hall(1)).map((step) => step.kind)).toEqual([
    'finding',
    'cracks',
    'pass',
    'edges',
    'profile',
    'release',
  ]);
});

test('only what is chased is chased: no hairline, and never a working crack', () => {
  const cracks = stepsOf(hall(2)).find((step) => step.kind === 'cracks');
  expect(cracks?.kind === 'cracks' && cracks.metres).toBeCloseTo(3, 6);
  expect(cracks?.kind === 'cracks' && cracks.tags).toHaveLength(1);
});

test('edges that differ in nothing are one step, twice over; another tool is a step of its own', () => {
  const edged = (abrasive: string): Doc =>
    withCells(
      hall(2),
      ...[0, 1].map((i) => set(`pass:${String(i)}`, 'edgeMethod', 'hand_grinder')),
      ...[0, 1].map((i) => set(`pass:${String(i)}`, 'edgeTimes', 1)),
      set('pass:0', 'edgeAbrasive', 'cup_double'),
      set('pass:1', 'edgeAbrasive', abrasive),
    );
  const times = (doc: Doc): number[] => stepsOf(doc).flatMap((step) => (step.kind === 'edges' ? [step.times] : []));
  expect(times(edged('cup_double'))).toEqual([2]);
  expect(times(edged('cup_turbo'))).toEqual([1, 1]);
});

test('upstands are on the card: what comes off before all else, what is prepared with the edges', () => {
  const wall = { kind: 'wall' } as const;
  const upstand = (treat: 'prepare' | 'remove') => ({ kind: 'stemWall', heightMm: 150, treat }) as const;
  const slab = slabCells(rectangle(10_000, 8000), [
    { ...wall, upstand: upstand('prepare') },
    { ...wall, upstand: { ...upstand('remove'), kind: 'coveBase', heightMm: 100 } },
    wall,
    wall,
  ]);
  const steps = stepsOf(withCells(hall(1), slab));
  expect(steps.map(({ kind }) => kind)).toEqual([
    'upstands',
    'finding',
    'cracks',
    'pass',
    'upstands',
    'edges',
    'profile',
    'release',
  ]);
  const said = steps.flatMap((step) => (step.kind === 'upstands' ? [stepText(step, 'metric', null)] : []));
  expect(said).toEqual([
    { main: 'Take off: cove base', more: `${firm('8.00 m')}, 100 mm high` },
    { main: 'Upstands by hand: stem wall', more: `${firm('10.00 m')}, 150 mm high` },
  ]);
});

test('floor that no machine gets to is told beside the tight spots', () => {
  const edges = { kind: 'edges', of: 'zone:1', what: 'edges 1', method: 'hand_grinder', abrasive: null } as const;
  const step = { ...edges, times: 1, metres: 20, stopM: 0, tightTags: ['T1'], handM2: 9, cutOffM2: 7.3 };
  expect(stepText(step, 'metric', null).more).toBe(
    `Handheld grinder, segmented cup wheel, ${firm('20.00 m')}, and T1, and ${firm('7.30 m²')} no machine reaches`,
  );
});

test('a stop line is no edge: its metres stand beside those of the edge', () => {
  const edges = { kind: 'edges', of: 'zone:1', what: 'edges 1', method: 'hand_grinder', abrasive: null } as const;
  const step = { ...edges, times: 1, metres: 20, stopM: 4, tightTags: [], handM2: 0, cutOffM2: 0 };
  expect(stepText(step, 'metric', null).more).toBe(
    `Handheld grinder, segmented cup wheel, ${firm('20.00 m')}, stop line ${firm('4.00 m')}`,
  );
});

test('every step has a tick of its own', () => {
  const steps = stepsOf(hall(3));
  expect(new Set(steps.map((step) => `${step.of} ${step.what}`)).size).toBe(steps.length);
});
