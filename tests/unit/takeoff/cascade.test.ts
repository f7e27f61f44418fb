import { describe, expect, test } from 'vitest';
import type { MachineField } from '../../../src/geometry/floorShape.ts';
import { measureFloor } from '../../../src/geometry/measureFloor.ts';
import type { Doc } from '../../../src/model/doc.ts';
import { roomTerm } from '../../../src/takeoff/scaleFactors.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
import { edgeHours } from '../../../src/takeoff/edgeHours.ts';
import { evaluate } from '../../../src/takeoff/formula.ts';
import { floorLines } from '../../../src/takeoff/floorLines.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import { passageMm, planShape } from '../../../src/takeoff/planShape.ts';
import { cascadeOf, edgeMachine, prepOfFloor } from '../../../src/takeoff/prep.ts';
import { rateBook } from '../../../src/takeoff/rates/rateBook.ts';
import type { Site } from '../../../src/takeoff/site.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { workLines } from '../../../src/takeoff/workLines.ts';
import {
  docOf,
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
} from '../../support/jobPlans.ts';

function book(method: string) {
  const machine = defaultMachine(method);
  if (!machine) throw new Error(`no machine for ${method}`);
  return machine;
}
const LARGE = book('grinder_large');
const SMALL = { ...book('grinder_small'), lapMm: 40 };

/** A room of 12 x 8 m: two passes with the large grinder, and the small one in what it leaves. */
const alone = docOf(
  jobCells(),
  slabCells(rectangle(12_000, 8_000)),
  record('machine:large', LARGE),
  record('machine:small', SMALL),
  record('machine:spare', { ...SMALL, cutWidthMm: 400 }),
  zoneCells('zone:1', rectangle(12_000, 8_000), { recipe: 'recipe:a' }),
  recipeCells('a', { method: 'grinder_large', machine: 'machine:large' }),
);
const followed = withCells(alone, set('recipe:a', 'followedBy', ['machine:small']));

/** The site with fields as said, so that the lines are worked out from known numbers. */
function siteOf(doc: Doc, fields: Readonly<Record<string, number>>): Site {
  const measure = measureFloor(planShape(doc, FLOOR));
  const [prep] = prepOfFloor(doc, FLOOR);
  const zone = measure.zones.find((each) => each.id === 'zone:1');
  if (!prep || !zone) throw new Error('no zone');
  const byMachine = Object.entries(fields).map(([machine, areaM2]): MachineField => ({ machine, areaM2, region: [] }));
  const fieldM2 = byMachine.reduce((sum, field) => sum + field.areaM2, 0);
  const worked = { measure: { ...zone, fieldM2, fields: byMachine }, prep, held: null };
  return {
    doc,
    floor: FLOOR,
    measure,
    zones: [worked],
    book: rateBook(doc),
    holds: [],
    noCutting: false,
    quantities: new Map(),
  };
}

const SITE = siteOf(followed, { 'machine:large': 80, 'machine:small': 10 });
const lines = workLines(SITE).lines;
const likely = (from: readonly Line[], key: string): number | undefined =>
  from.find((line) => line.key === key)?.quantity.likely;

describe('what the engine is told', () => {
  test('the machines in their order, all of their sizes, half the circle that they turn in', () => {
    const shape = planShape(withCells(followed, set('machine:large', 'turningMm', 3_000)), FLOOR);
    expect(shape.zones).toMatchObject([{ machine: 'machine:large', followedBy: ['machine:small'] }]);
    expect(shape.machines.map(({ id }) => id)).toEqual(expect.arrayContaining(['machine:large', 'machine:small']));
    expect(shape.machines.find(({ id }) => id === 'machine:large')?.turningRadiusMm).toBe(1_500);
    expect(shape.machines.find(({ id }) => id === 'machine:small')).not.toHaveProperty('turningRadiusMm');
  });
  test('nothing of it where no machine follows', () => {
    const shape = planShape(alone, FLOOR);
    expect(shape.zones[0]).not.toHaveProperty('followedBy');
    expect(shape).not.toHaveProperty('restFollowedBy');
    expect(shape.machines.map(({ id }) => id)).not.toContain('machine:small');
  });
});

describe('a prep with machines that follow', () => {
  test('knows them in order, each once, without those that are gone, held in the hand or first already', () => {
    const doc = withCells(
      followed,
      record('machine:hand', { ...SMALL, method: 'hand_grinder' }),
      set('machine:spare', 'gone', true),
      set('recipe:a', 'followedBy', [
        'machine:large',
        'machine:spare',
        'machine:hand',
        'machine:small',
        'machine:small',
      ]),
    );
    const [prep] = prepOfFloor(doc, FLOOR);
    expect(prep && cascadeOf(prep).map(({ id }) => id)).toEqual(['machine:large', 'machine:small']);
    expect(prep && edgeMachine(prep)?.id).toBe('machine:small');
  });
  test('has none where the first pass is worked by hand', () => {
    const doc = withCells(followed, set('pass:a', 'method', 'hand_grinder'));
    const [prep] = prepOfFloor(doc, FLOOR);
    expect(prep?.followers).toEqual([]);
  });
});

describe('lines of a zone where one machine follows another', () => {
  test('the field of each, beside the field of all', () => {
    const floor = floorLines(SITE);
    expect(likely(floor, 'field|zone:1')).toBe(90);
    expect(likely(floor, 'fieldOf|zone:1|machine:large')).toBe(80);
    expect(likely(floor, 'fieldOf|zone:1|machine:small')).toBe(10);
  });
  test('hours of each by its own field and the rate of its own method, in the size of its own room', () => {
    const { book: rates } = SITE;
    const room = (m2: number): number => roomTerm(rates, m2).value.likely;
    const rate = (method: string): number => rates.rate(`methods/${method}`).likely;
    const netM2 = SITE.zones[0]?.measure.netM2 ?? 0;
    const obstructions = rates.rate('factors/obstructions/0.5').likely;
    expect(likely(lines, 'hours.machine|zone:1|pass:a')).toBeCloseTo(
      (80 * 2) / (rate('grinder_large') * room(netM2) * obstructions),
      9,
    );
    expect(likely(lines, 'hours.machine|zone:1|pass:a|machine:small')).toBeCloseTo(
      (10 * 2) / (rate('grinder_small') * room(10) * obstructions),
      9,
    );
    const both = lines
      .filter((line) => line.code === 'hours.machine')
      .reduce((sum, line) => sum + line.quantity.likely, 0);
    expect(likely(lines, 'hours.machineAll|zone:1')).toBeCloseTo(both, 9);
  });
  test('one more set-up, ten minutes (common practice, no source), and it counts in the crew hours', () => {
    expect(likely(lines, 'hours.machineChanges|floor')).toBeCloseTo(10 / 60, 9);
    const crew = lines.find((line) => line.key === 'hours.crew|floor');
    expect(crew?.working.terms.map(({ name }) => name)).toContain('hours.machineChanges|floor');
  });
  test('a day rate and a vacuum for each machine, also for two of one kind', () => {
    const numberOf = (from: readonly Line[], tool: string): number | undefined =>
      from
        .find((line) => line.key === `money.equipment|floor|${tool}`)
        ?.working.terms.find(({ name }) => name === 'number')?.value.likely;
    expect([numberOf(lines, 'grinder_large'), numberOf(lines, 'grinder_small'), numberOf(lines, 'vacuum')]).toEqual([
      1, 1, 3,
    ]);
    const twins = withCells(
      alone,
      set('pass:a', 'machine', 'machine:small'),
      set('pass:a', 'method', 'grinder_small'),
      set('recipe:a', 'followedBy', ['machine:spare']),
    );
    const two = workLines(siteOf(twins, { 'machine:small': 80, 'machine:spare': 10 })).lines;
    expect([numberOf(two, 'grinder_small'), numberOf(two, 'vacuum')]).toEqual([2, 3]);
  });
  test('diamonds by machine: wear adds up to that of the whole field, and each machine carries sets of its own', () => {
    const wear = lines.filter((line) => line.code === 'diamondWear');
    const whole = workLines(siteOf(alone, { 'machine:large': 90 })).lines.find((line) => line.code === 'diamondWear');
    expect(wear.map((line) => line.key)).toEqual([
      'diamondWear|zone:1|pass:a',
      'diamondWear|zone:1|pass:a|machine:small',
    ]);
    expect(wear.reduce((sum, line) => sum + line.quantity.likely, 0)).toBeCloseTo(whole?.quantity.likely ?? 0, 9);
    // Less than a set worn on either, so one on each, and a spare one for each machine.
    expect(likely(lines, 'order.diamondSet|floor')).toBe(4);
    expect(likely(workLines(siteOf(alone, { 'machine:large': 90 })).lines, 'order.diamondSet|floor')).toBe(2);
  });
  test('the strip at the edge is as wide as the last machine asks for', () => {
    const [zone] = SITE.zones;
    const edge = zone ? edgeHours(SITE, zone).find((line) => line.code === 'hours.edge') : null;
    const width = edge?.working.terms.find(({ name }) => name === 'wall strip');
    expect(width).toMatchObject({ value: { likely: SMALL.clearanceMm.wall + 40 }, from: 'machine:small' });
  });
  test('nothing left for it: no hours, no day rate, no set-up', () => {
    const none = workLines(siteOf(followed, { 'machine:large': 90, 'machine:small': 0 })).lines;
    expect(none.filter((line) => line.key.includes('machine:small') && line.quantity.likely > 0)).toEqual([]);
    expect(none.some((line) => line.code === 'hours.machineChanges')).toBe(false);
    expect(none.some((line) => line.key === 'money.equipment|floor|grinder_small')).toBe(false);
  });
  test('every line follows from its own terms', () => {
    for (const line of [...lines, ...floorLines(SITE)].filter(({ code }) => code !== 'field'))
      expect(evaluate(line.working.formula, line.working.terms), line.key).toEqual(line.quantity);
  });
});

test('a list that is empty changes no line at all', () => {
  const fields = { 'machine:large': 90 };
  const emptied = withCells(alone, set('recipe:a', 'followedBy', []));
  expect(workLines(siteOf(emptied, fields)).lines).toEqual(workLines(siteOf(alone, fields)).lines);
});

describe('from record to lines, by hand', () => {
  /** 20 x 10 m; heads of 750 and 500 mm kept 300 and 50 mm off, lap 50 mm. */
  const sized = (cutWidthMm: number, clearance: number) => ({
    ...book('grinder_small'),
    cutWidthMm,
    lapMm: 50,
    clearanceMm: { wall: clearance, obstruction: clearance, drop: clearance, stop: clearance },
  });
  const hall = docOf(
    jobCells(),
    slabCells(rectangle(20_000, 10_000)),
    record('machine:large', { ...sized(750, 300), method: 'grinder_large' }),
    record('machine:small', sized(500, 50)),
    zoneCells('zone:1', rectangle(20_000, 10_000), { recipe: 'recipe:a' }),
    recipeCells('a', { method: 'grinder_large', machine: 'machine:large' }),
    set('recipe:a', 'followedBy', ['machine:small']),
  );
  const said = takeoff(hall, FLOOR).lines;
  // The first head leaves 300 mm along each wall and a cusp in each corner.
  const first = 19.4 * 9.4 - 4 * (1 - Math.PI / 4) * 0.375 ** 2;
  // Clearance and lap of the last machine, all round.
  const strip = 2 * (20 + 10) * 0.1 - 4 * 0.1 ** 2;
  // What the last head leaves in a corner outside the strip: 200 x 200 mm less the part of a circle of 250 mm in it.
  const under = (x: number): number => (x * Math.sqrt(0.25 ** 2 - x ** 2) + 0.25 ** 2 * Math.asin(x / 0.25)) / 2;
  const rest = 4 * (0.2 ** 2 - (0.2 * 0.15 + under(0.2) - under(0.15)));

  test('each machine has its field, the strip is that of the last one, and all of it is the net floor', () => {
    const second = 200 - first - strip - rest;
    expect(likely(said, 'fieldOf|zone:1|machine:large')).toBeCloseTo(first, 8);
    expect(likely(said, 'fieldOf|zone:1|machine:small')).toBeCloseTo(second, 8);
    expect(likely(said, 'strip|zone:1')).toBeCloseTo(strip, 8);
    expect(likely(said, 'cornerRests|zone:1')).toBeCloseTo(rest, 8);
    expect(likely(said, 'field|zone:1')).toBeCloseTo(first + second, 8);
  });
  test('without the second machine its field is strip and hand area, and nothing says its name', () => {
    const single = takeoff(withCells(hall, set('recipe:a', 'followedBy', [])), FLOOR).lines;
    expect(likely(single, 'field|zone:1')).toBeLessThan(first);
    expect(single.some((line) => line.key.includes('machine:small') || line.code === 'fieldOf')).toBe(false);
  });
});

test('a column beside a wall: the engine says between what it is narrow, and for the last machine', () => {
  const column = record('obstruction:a', {
    floor: FLOOR,
    tag: 'B1',
    kind: 'column',
    shape: { form: 'rectangle', at: [850, 4_000], widthMm: 400, depthMm: 400, turnDeg: 0 },
    under: 'none',
  });
  // The rest of the slab has a cascade of its own, and what is asked for is none of its business.
  const rest = [
    ...restCells({ recipe: 'recipe:b' }),
    ...recipeCells('b', { method: 'grinder_large', machine: 'machine:large' }),
  ];
  const zone = takeoff(withCells(followed, column, rest), FLOOR).measure.zones.find(({ id }) => id === 'zone:1');
  const [gap] = (zone?.tight ?? []).flatMap((piece) => piece.gap ?? []);
  expect(gap).toMatchObject({ machine: 'machine:small', needsMm: passageMm(SMALL) });
  expect(gap?.widthMm).toBeCloseTo(650, 6);
  expect(gap?.sides?.map(({ of }) => of).toSorted()).toEqual(['obstruction:a', 'slab:a']);
});

test('a machine that a door keeps out of the zone says which, though the next one works there', () => {
  const wall = record('wall:a', {
    floor: FLOOR,
    tag: 'W1',
    path: [
      [7_000, 0],
      [7_000, 8_000],
    ],
    thicknessMm: 200,
  });
  const door = (widthMm: number) =>
    takeoff(
      withCells(
        followed,
        wall,
        record('opening:a', { wall: 'wall:a', tag: 'D2', atMm: 3_000, widthMm, heightMm: 2_100 }),
        record('entrance:a', { floor: FLOOR, tag: 'E1', at: [2_000, 100], widthMm: null, heightMm: null }),
        set('zone:1', 'ring', rectangle(5_000, 8_000, [7_000, 0])),
      ),
      FLOOR,
    ).measure.zones.find(({ id }) => id === 'zone:1')?.fields;
  const [large, small] = door(900) ?? [];
  // But for the floor in the doorway, which it reaches from its own side.
  expect(large?.areaM2).toBeLessThan(0.9 * 0.2);
  expect(large?.blockedBy).toMatchObject({ passage: { id: 'opening:a', widthMm: 900 }, needsMm: 950, what: 'width' });
  expect(small?.areaM2).toBeGreaterThan(30);
  expect(small).not.toHaveProperty('blockedBy');
  expect(door(1_000)?.[0]).not.toHaveProperty('blockedBy');
});

test('a grinder that follows a water jet sprays no water: the jet alone takes its litres by the minute', () => {
  const wet = takeoff(withCells(followed, set('pass:a', 'method', 'water_hp')), FLOOR).lines;
  const water = wet.find(({ code }) => code === 'sprayedWater');
  const hours = wet.filter(({ code }) => code === 'hours.machine').map(({ key }) => key);
  const from = water?.working.terms.flatMap((term) => (term.source === 'line' ? [term.from] : []));
  expect(hours).toHaveLength(2);
  expect(from).toEqual(hours.slice(0, 1));
});
