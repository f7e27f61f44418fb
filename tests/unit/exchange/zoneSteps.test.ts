import { expect, test } from 'vitest';
import { firm } from '../../../src/canvas/paint/textWidth.ts';
import { stepText } from '../../../src/exchange/zoneCardText.ts';
import { wayInSentences } from '../../../src/exchange/zoneMapNotes.ts';
import { planView } from '../../../src/canvas/paint/view.ts';
import type { TightPiece } from '../../../src/geometry/floorShape.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
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

test('a pass names the machines that follow in what it leaves, where something is left for them', () => {
  const small = defaultMachine('grinder_small');
  if (!small) throw new Error('no machine');
  const doc = withCells(
    hall(1),
    record('machine:first', { ...small, name: 'First' }),
    record('machine:next', { ...small, name: 'Next', cutWidthMm: 300 }),
    set('pass:0', 'machine', 'machine:first'),
    set('recipe:a', 'followedBy', ['machine:next']),
  );
  const answer = takeoff(doc, FLOOR);
  const [prep] = prepOfFloor(doc, FLOOR);
  const zone = answer.measure.zones.find(({ id }) => id === 'zone:1');
  if (!prep || !zone) throw new Error('no zone');
  const passText = (nextM2: number): string | undefined => {
    const fields = [
      { machine: 'machine:first', areaM2: 70, region: [] },
      { machine: 'machine:next', areaM2: nextM2, region: [] },
    ];
    const steps = zoneSteps({ doc, floor: FLOOR, takeoff: answer, prep, measure: { ...zone, fields } });
    const step = steps.find(({ kind }) => kind === 'pass');
    return step && stepText(step, 'metric', null).more;
  };
  expect(passText(2)).toBe('once over, then Next in what it leaves');
  expect(passText(0)).toBe('once over');
});

test('the sheet says where a tight spot is narrow, and for which machine', () => {
  const doc = withCells(
    hall(1),
    record('obstruction:a', {
      floor: FLOOR,
      tag: 'B3',
      kind: 'column',
      shape: { form: 'rectangle', at: [840, 4000], widthMm: 400, depthMm: 400, turnDeg: 0 },
      under: 'none',
    }),
  );
  const input = { doc, floor: FLOOR, takeoff: takeoff(doc, FLOOR), units: 'metric', sheet: 'A4', scale: null } as const;
  const [prep] = prepOfFloor(doc, FLOOR);
  const piece = { areaM2: 1, region: [], at: [320, 4000], zone: 'zone:1', blockedBy: null } as const;
  const gap = {
    machine: prep?.machine?.id ?? '',
    widthMm: 640,
    needsMm: 800,
    from: [0, 4000],
    to: [640, 4000],
    sides: [
      { kind: 'wall', of: 'slab:a' },
      { kind: 'obstruction', of: 'obstruction:a' },
    ],
  } as const;
  const said = (tight: readonly TightPiece[]): readonly string[] => {
    const zones = input.takeoff.measure.zones.map((zone) => (zone.id === 'zone:1' ? { ...zone, tight } : zone));
    return wayInSentences(input, planView(doc, FLOOR, { measure: { ...input.takeoff.measure, zones } })).map((text) =>
      text.replaceAll('\u00a0', ' '),
    );
  };
  const name = prep?.machine?.name ?? '';
  expect(said([{ ...piece, kind: 'gap', gap }])).toContain(
    `T1: between B3 and wall 0.64 m clear, ${name} needs 0.80 m.`,
  );
  expect(said([{ ...piece, kind: 'cutOff', gap }])).toContain(
    `Between B3 and wall 0.64 m clear, ${name} needs 0.80 m: hand work behind it.`,
  );
});
