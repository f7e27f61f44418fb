import fc from 'fast-check';
import { expect, test } from 'vitest';
import { commands } from '../../src/edit/commands.ts';
import { runCommand } from '../../src/edit/run.ts';
import type { CommandCall, Json, RecordId } from '../../src/model/cell.ts';
import { checkRecord } from '../../src/model/records/all.ts';
import { planStore } from '../../src/model/store.ts';
import { emptyPlan, FLOOR, openingOn, planWith, room, wall } from '../support/handPlan.ts';

const call = (name: string, args: Json): CommandCall => ({ name, args });
const machineFields = {
  method: 'grinder_small',
  name: 'Small grinder',
  cutWidthMm: 530,
  bodyWidthMm: 560,
  bodyLengthMm: 1200,
  heightMm: 1100,
  turningMm: 1500,
  smallestOpeningMm: 600,
  clearanceMm: { wall: 50, obstruction: 50, drop: 600, stop: 50 },
  lapMm: 50,
};
const square = [
  [0, 0],
  [900, 0],
  [900, 900],
  [0, 900],
];
const start = planWith(
  [
    call('placePage', { id: 'page:a', floor: FLOOR, name: 'Plan', image: 'h', widthPx: 2000, heightPx: 1000 }),
    room,
    wall,
    openingOn('wall:a', 0, 500),
    call('drawFinding', { id: 'finding:a', floor: FLOOR, ring: square, kind: 'oil_light' }),
    call('drawZone', { id: 'zone:a', floor: FLOOR, ring: square }),
    call('drawZone', { id: 'zone:b', floor: FLOOR, ring: null }),
    call('addMachine', { id: 'machine:a', fields: machineFields }),
    call('addMachine', { id: 'machine:b', fields: { ...machineFields, cutWidthMm: 320 } }),
    call('addMachine', { id: 'machine:c', fields: { ...machineFields, cutWidthMm: 320 } }),
    call('setRecipe', {
      zone: 'zone:b',
      recipe: 'recipe:c',
      passes: [
        { id: 'pass:z', method: 'grinder_small', machine: 'machine:a', times: 1, edgeMethod: null, edgeTimes: 0 },
      ],
      followedBy: ['machine:b', 'machine:c'],
    }),
    call('newFloor', { id: 'floor:b', name: 'Upper' }),
    ...['builtBefore1981', 'coatingOrTile', 'inSlab', 'gasAppliance'].map((question) =>
      call('answerQuestion', { job: 'job:one', question, answer: 'no' }),
    ),
    call('drawCrack', {
      id: 'crack:gone',
      floor: FLOOR,
      path: [
        [0, 0],
        [9, 9],
      ],
      widthMm: null,
      depthMm: null,
      behaviour: 'static',
    }),
    call('removeRecords', { ids: ['crack:gone'] }),
  ],
  emptyPlan,
);

const place = fc.integer({ min: -9000, max: 9000 });
const point = fc.tuple(place, place);
const points = fc.array(point, { minLength: 1, maxLength: 6 });
const length = fc.integer({ min: -10, max: 4000 });
const index = fc.integer({ min: -1, max: 6 });
const item = fc.constantFrom<RecordId>(
  'slab:a',
  'wall:a',
  'opening:a',
  'finding:a',
  'zone:a',
  'zone:b',
  'page:a',
  'crack:gone',
  'floor:b',
);
let made = 0;
const fresh = (type: string): fc.Arbitrary<RecordId> => fc.constant(null).map((): RecordId => `${type}:n${made++}`);
const on = { floor: fc.constant(FLOOR) };
const upstand = fc.constant({ kind: 'kerb', heightMm: 100, treat: 'keep' } as const);
const pixels = fc.tuple(fc.integer({ min: 0, max: 2000 }), fc.integer({ min: 0, max: 1000 }));
const dimension = fc.record({ from: pixels, to: pixels, lengthMm: length, by: fc.constant('mouse') });

const cascadeArgs = {
  recipe: fc.constantFrom<RecordId>('recipe:a', 'recipe:c'),
  machine: fc.constantFrom<RecordId>('machine:a', 'machine:b', 'machine:c', 'machine:none'),
};
const recipeArgs = fc.record({
  zone: fc.constantFrom('zone:a', 'zone:b'),
  recipe: fc.constantFrom('recipe:a', 'recipe:b'),
  passes: fc.array(
    fc.record({
      id: fc.constantFrom('pass:a', 'pass:b'),
      method: fc.constant('grinder_small'),
      machine: fc.constantFrom('machine:a', null),
      times: fc.integer({ min: 0, max: 3 }),
      edgeMethod: fc.constant(null),
      edgeTimes: fc.constant(0),
    }),
    { maxLength: 2 },
  ),
});

/** Arguments of every command, sensible and not. */
const args: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  addCorner: fc.record({ id: item, edge: index, at: point }),
  addFollower: fc.oneof(
    fc.record(cascadeArgs),
    recipeArgs.chain((plan) =>
      fc.record({ recipe: fc.constant(plan.recipe), machine: cascadeArgs.machine, plan: fc.constant(plan) }),
    ),
    fc.record({
      ...cascadeArgs,
      machine: fresh('machine'),
      fields: fc.constantFrom<Json>(machineFields, { ...machineFields, cutWidthMm: 200 }),
    }),
  ),
  addMachine: fc.record({ id: fresh('machine'), fields: fc.constant(machineFields) }),
  addOpening: fc.record({
    id: fresh('opening'),
    on: item,
    edge: index,
    atMm: length,
    widthMm: length,
    heightMm: fc.constant(2000),
  }),
  addPhase: fc.record({
    ...on,
    id: fresh('phase'),
    name: fc.constantFrom('First night', ' '),
    zone: fc.constantFrom('zone:a', 'zone:none', null),
  }),
  answerQuestion: fc.record({
    job: fc.constant('job:one'),
    question: fc.constantFrom('inSlab', 'gasAppliance'),
    answer: fc.constantFrom('yes', 'no', null),
  }),
  drawCrack: fc.record({
    ...on,
    id: fresh('crack'),
    path: points,
    widthMm: fc.constant(null),
    depthMm: fc.constant(null),
    behaviour: fc.constant('static'),
  }),
  drawDimension: fc.record({ ...on, id: fresh('dimension'), from: point, to: point }),
  drawFinding: fc.record({ ...on, id: fresh('finding'), ring: points, kind: fc.constant('wax') }),
  drawJoint: fc.record({
    ...on,
    id: fresh('joint'),
    path: points,
    kind: fc.constant('control'),
    treat: fc.constant('filled'),
  }),
  drawOutOfScope: fc.record({ ...on, id: fresh('outOfScope'), ring: points }),
  drawSlab: fc.record({ ...on, id: fresh('slab'), ring: points }),
  drawSteps: fc.record({
    ...on,
    id: fresh('steps'),
    ring: points,
    count: fc.constant(2),
    riseMm: length,
    goingMm: length,
  }),
  drawWall: fc.record({ ...on, id: fresh('wall'), path: points, thicknessMm: length }),
  drawZone: fc.record({ ...on, id: fresh('zone'), ring: points }),
  issueEstimate: fc.record({
    id: fresh('estimate'),
    on: fc.constant('2030-01-01'),
    open: fc.constantFrom([], ['hold.lead']),
    frozen: fc.record({
      lines: fc.constantFrom([], [{ key: 'money.price|floor' }]),
      rates: fc.constant([]),
      totalMinor: fc.constantFrom(100, 0.5),
    }),
  }),
  moveCorner: fc.record({ id: item, corner: index, to: point }),
  moveEdge: fc.record({ id: item, edge: index, byMm: length }),
  moveFollower: fc.record({ ...cascadeArgs, before: fc.option(cascadeArgs.machine) }),
  moveRecords: fc.record({ ids: fc.array(item, { maxLength: 4 }), by: point }),
  newFloor: fc.record({ id: fresh('floor'), name: fc.constantFrom('Cellar', '') }),
  placeEntrance: fc.record({ ...on, id: fresh('entrance'), at: point, widthMm: length, heightMm: fc.constant(null) }),
  placeNote: fc.record({ ...on, id: fresh('note'), at: point, text: fc.string() }),
  placeObstruction: fc.record({
    ...on,
    id: fresh('obstruction'),
    kind: fc.constant('column'),
    under: fc.constant('none'),
    shape: fc.record({ form: fc.constant('circle'), at: point, diameterMm: length }),
  }),
  placePage: fc.record({
    ...on,
    id: fresh('page'),
    name: fc.string(),
    image: fc.constant('h'),
    widthPx: length,
    heightPx: length,
  }),
  placeReading: fc.record({
    ...on,
    id: fresh('reading'),
    at: point,
    kind: fc.constant('ph'),
    value: fc.constant(null),
    unit: fc.constant(''),
  }),
  recordClearance: fc.record({
    record: item,
    slot: fc.constant('leadTest'),
    clearance: fc.option(
      fc.record({
        result: fc.constant('clear'),
        on: fc.constantFrom('2026-03-02', ''),
        by: fc.constantFrom('A. Tester', ''),
      }),
    ),
  }),
  recordTick: fc.record({ id: fresh('tick'), of: item, what: fc.constant('zone'), done: fc.boolean() }),
  removeCorner: fc.record({ id: item, corner: index }),
  removeFollower: fc.record(cascadeArgs),
  removeRecords: fc.record({ ids: fc.array(item, { maxLength: 3 }) }),
  reorder: fc.record({ id: item, before: fc.option(item) }),
  replacePage: fc.record({ id: item, name: fc.string(), image: fc.constant('h2'), widthPx: length, heightPx: length }),
  restore: fc.record({ ids: fc.array(item, { maxLength: 2 }) }),
  setEdge: fc.record({
    id: item,
    edges: fc.array(index, { maxLength: 3 }),
    kind: fc.constantFrom('wall', 'open', 'doorway', 'drop'),
  }),
  setEdgeLength: fc.record({ id: item, edge: index, lengthMm: length }),
  setField: fc.record({
    id: item,
    slot: fc.constantFrom('name', 'locked', 'tag', 'ring', 'widthMm'),
    value: fc.oneof(fc.boolean(), length, points),
  }),
  setFields: fc.record({
    ids: fc.array(item, { maxLength: 3 }),
    fields: fc.record({ note: fc.string(), thicknessMm: length }),
  }),
  setRateRow: fc.record({
    id: fc.constantFrom('rate:a', 'slab:a'),
    fields: fc.record({
      code: fc.constant('labour/edge_hand'),
      term: fc.constant('Edge strip'),
      unit: fc.constant('m/h'),
      low: length,
      likely: length,
      high: length,
      source: fc.constant('own'),
      provenance: fc.constant('own'),
      fromMemory: fc.constant(false),
    }),
  }),
  setRateRows: fc.record({
    rows: fc.array(
      fc.record({
        id: fc.constantFrom('rate:a', 'rate:b', 'slab:a'),
        fields: fc.record({
          code: fc.constantFrom('labour/edge_hand', 'labour/corner'),
          term: fc.constant('Edge strip'),
          unit: fc.constant('m/h'),
          low: fc.constantFrom(1, 20),
          likely: fc.constant(10),
          high: fc.constant(20),
          source: fc.constant('own'),
          provenance: fc.constant('own'),
          fromMemory: fc.constant(false),
          edition: fc.string(),
        }),
      }),
      { maxLength: 3 },
    ),
  }),
  setRecipe: recipeArgs,
  setUpstand: fc.record({ id: item, edges: fc.array(index, { maxLength: 3 }), upstand: fc.option(upstand) }),
  startJob: fc.constant({ job: { id: 'job:x', fields: {} }, floor: { id: 'floor:x', fields: {} }, records: [] }),
  truePage: fc.record({
    id: fc.constantFrom('page:a', 'slab:a'),
    dimensions: fc.array(dimension, { maxLength: 3 }),
    follow: fc.boolean(),
  }),
};

const anyCall = fc
  .constantFrom(...Object.keys(commands))
  .chain((name) => (args[name] ?? fc.constant({})).map((some) => call(name, some as Json)));

test('every command has arguments to be tried with', () => {
  expect(Object.keys(args).toSorted()).toEqual(Object.keys(commands).toSorted());
});

/** Whether a command that chance left out runs at all, from the start and back. */
function runsAtLast(name: string): boolean {
  const store = planStore({ doc: start });
  const tries = fc.sample(args[name] ?? fc.constant({}), 2_000);
  const ran = tries.some((some) => !('refused' in runCommand(store, call(name, some as Json))));
  while (store.undo());
  expect(store.getState()).toEqual(start);
  return ran;
}

test('undo of any commands gives the start, redo the end; a refusal changes nothing; every record stays readable', () => {
  const ran = new Set<string>();
  const refusedOnce = new Set<string>();
  fc.assert(
    fc.property(fc.array(anyCall, { minLength: 1, maxLength: 12 }), (calls) => {
      const store = planStore({ doc: start });
      for (const one of calls) {
        const before = store.getState();
        const result = runCommand(store, one);
        if ('refused' in result) {
          refusedOnce.add(result.refused);
          expect(store.getState()).toBe(before);
        } else {
          ran.add(one.name);
          expect(result.label).toBe(one.name);
        }
      }
      const end = store.getState();
      for (const [id, fields] of end) expect(checkRecord(id, fields)).toBeNull();
      while (store.undo());
      expect(store.getState()).toEqual(start);
      while (store.redo());
      expect(store.getState()).toEqual(end);
    }),
    { numRuns: 1500 },
  );
  // A law that nothing was tried against says nothing: only startJob cannot run on a job that has begun.
  const never = Object.keys(commands).filter((name) => !ran.has(name) && !runsAtLast(name));
  expect(never).toEqual(['startJob']);
  expect(refusedOnce.size).toBeGreaterThan(15);
});
