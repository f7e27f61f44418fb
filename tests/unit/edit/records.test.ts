import { expect, test } from 'vitest';
import { refusalOf } from '../../../src/edit/run.ts';
import type { CommandCall, Json } from '../../../src/model/cell.ts';
import { EMPTY_DOC, recordOf, recordsOf } from '../../../src/model/doc.ts';
import { emptyPlan, FLOOR, planWith, room } from '../../support/handPlan.ts';

const call = (name: string, args: Json): CommandCall => ({ name, args });
const machine = call('addMachine', {
  id: 'machine:small',
  fields: {
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
  },
});
const zone = call('drawZone', { id: 'zone:a', floor: FLOOR, ring: null });
const pass = {
  method: 'grinder_small',
  machine: 'machine:small',
  abrasive: 'd30',
  times: 2,
  edgeMethod: 'grinder_hand',
  edgeTimes: 1,
};
const recipe = call('setRecipe', {
  zone: 'zone:a',
  recipe: 'recipe:a',
  name: 'Grind',
  passes: [
    { id: 'pass:a', ...pass },
    { id: 'pass:b', ...pass, abrasive: 'd80', times: 1 },
  ],
});
const plan = planWith([room, machine, zone, recipe]);

test('fields: one, several, taken away; a value that does not fit is refused', () => {
  const named = planWith([call('setField', { id: 'slab:a', slot: 'name', value: 'Hall' })], plan);
  expect(recordOf(named, 'slab', 'slab:a')?.name).toBe('Hall');
  const cleared = planWith([call('setField', { id: 'slab:a', slot: 'name', clear: true })], named);
  expect(cleared).toEqual(plan);
  const both = planWith([call('setFields', { ids: ['slab:a', 'zone:a'], fields: { note: 'Later' } })], named);
  expect([recordOf(both, 'slab', 'slab:a')?.note, recordOf(both, 'zone', 'zone:a')?.note]).toEqual(['Later', 'Later']);
  expect(refusalOf(plan, call('setField', { id: 'slab:a', slot: 'thicknessMm', value: -1 }))).toBe('badValue');
  expect(refusalOf(plan, call('setField', { id: 'slab:a', slot: 'tag', value: 'S9' }))).toBe('slotFixed');
  expect(refusalOf(plan, call('setFields', { ids: ['slab:a'], fields: {}, clear: ['floor'] }))).toBe('slotFixed');
  expect(refusalOf(plan, call('setField', { id: 'slab:none', slot: 'name', value: 'x' }))).toBe('unknownRecord');
  expect(refusalOf(named, call('setField', { id: 'slab:a', slot: 'name', value: 'Hall' }))).toBe('noChange');
  const crossed = [
    [0, 0],
    [9, 9],
    [9, 0],
    [0, 9],
  ];
  const finding = planWith([
    call('drawFinding', {
      id: 'finding:a',
      floor: FLOOR,
      kind: 'oil_light',
      ring: [
        [0, 0],
        [9, 0],
        [9, 9],
      ],
    }),
  ]);
  expect(refusalOf(finding, call('setField', { id: 'finding:a', slot: 'ring', value: crossed }))).toBe('crossesItself');
});

test('a lock keeps the drawing still, but not its note, its results or the lock itself', () => {
  const locked = planWith([call('setField', { id: 'slab:a', slot: 'locked', value: true })], plan);
  expect(refusalOf(locked, call('moveCorner', { id: 'slab:a', corner: 0, to: [-100, 0] }))).toBe('locked');
  expect(refusalOf(locked, call('removeRecords', { ids: ['slab:a'] }))).toBe('locked');
  expect(refusalOf(locked, call('setField', { id: 'slab:a', slot: 'note', value: 'Wet' }))).toBeNull();
  const free = planWith([call('setField', { id: 'slab:a', slot: 'locked', value: false })], locked);
  expect(refusalOf(free, call('moveCorner', { id: 'slab:a', corner: 0, to: [-100, 0] }))).toBeNull();
});

test('a recipe writes its passes in order; editing it takes out the pass that is no longer there', () => {
  expect(recordsOf(plan, 'pass').map(({ id, abrasive, times }) => [id, abrasive, times])).toEqual([
    ['pass:a', 'd30', 2],
    ['pass:b', 'd80', 1],
  ]);
  expect(recordOf(plan, 'zone', 'zone:a')?.recipe).toBe('recipe:a');
  const swapped = planWith(
    [
      call('setRecipe', {
        zone: 'zone:a',
        recipe: 'recipe:a',
        passes: [
          { id: 'pass:c', ...pass },
          { id: 'pass:a', ...pass },
        ],
      }),
    ],
    plan,
  );
  expect(recordsOf(swapped, 'pass').map(({ id }) => id)).toEqual(['pass:c', 'pass:a']);
  expect(recordOf(swapped, 'recipe', 'recipe:a')?.name).toBe('Grind');
  const bad = (change: { readonly [key: string]: Json }): string | null =>
    refusalOf(
      plan,
      call('setRecipe', { zone: 'zone:a', recipe: 'recipe:a', passes: [{ id: 'pass:a', ...pass, ...change }] }),
    );
  expect(bad({ machine: 'machine:none' })).toBe('unknownMachine');
  expect(bad({ times: 0 })).toBe('passTimes');
  expect(refusalOf(plan, call('setRecipe', { zone: 'zone:none', recipe: 'recipe:a', passes: [] }))).toBe(
    'unknownRecord',
  );
  expect(
    refusalOf(plan, call('setRecipe', { zone: 'zone:a', recipe: 'recipe:b', passes: [{ id: 'pass:a', ...pass }] })),
  ).toBe('idTaken');
});

test('a machine in use stays; the job and its last floor stay', () => {
  expect(refusalOf(plan, call('removeRecords', { ids: ['machine:small'] }))).toBe('machineInUse');
  expect(refusalOf(plan, call('removeRecords', { ids: ['job:one'] }))).toBe('jobStays');
  expect(refusalOf(plan, call('removeRecords', { ids: [FLOOR] }))).toBe('lastFloor');
  expect(refusalOf(plan, call('removeRecords', { ids: ['slab:none'] }))).toBe('unknownRecord');
  const two = planWith([call('newFloor', { id: 'floor:upper', name: ' Upper ', level: 1 })], plan);
  expect(recordOf(two, 'floor', 'floor:upper')?.name).toBe('Upper');
  const without = planWith([call('removeRecords', { ids: [FLOOR] })], two);
  expect(recordsOf(without, 'slab')).toEqual([]);
  expect(planWith([call('restore', { ids: [FLOOR] })], without)).toEqual(two);
  expect(refusalOf(two, call('restore', { ids: [FLOOR] }))).toBe('unknownRecord');
  expect(refusalOf(plan, call('newFloor', { id: 'floor:upper', name: ' ' }))).toBe('nameMissing');
});

test('order: a zone goes on top or under another one', () => {
  const more = planWith(
    ['b', 'c'].map((letter) =>
      call('drawZone', {
        id: `zone:${letter}`,
        floor: FLOOR,
        ring: [
          [0, 0],
          [900, 0],
          [900, 900],
        ],
      }),
    ),
    plan,
  );
  const order = (doc: typeof plan): readonly string[] => recordsOf(doc, 'zone').map(({ id }) => id);
  expect(order(more)).toEqual(['zone:a', 'zone:b', 'zone:c']);
  const up = planWith([call('reorder', { id: 'zone:a', before: null })], more);
  expect(order(up)).toEqual(['zone:b', 'zone:c', 'zone:a']);
  expect(order(planWith([call('reorder', { id: 'zone:a', before: 'zone:c' })], up))).toEqual([
    'zone:b',
    'zone:a',
    'zone:c',
  ]);
  expect(order(planWith([call('reorder', { id: 'zone:c', before: 'zone:b' })], up))).toEqual([
    'zone:c',
    'zone:b',
    'zone:a',
  ]);
  expect(refusalOf(up, call('reorder', { id: 'zone:a', before: 'zone:none' }))).toBe('unknownRecord');
});

test('order: lists without keys, or with one key twice, get new ones', () => {
  const merged = new Map(plan);
  for (const [letter, order] of [
    ['b', 'i'],
    ['c', 'i'],
    ['d', undefined],
  ] as const) {
    merged.set(`zone:${letter}`, { ...plan.get('zone:a'), ...(order ? { order } : { order: undefined }) });
  }
  const doc = planWith([call('reorder', { id: 'zone:c', before: 'zone:b' })], merged);
  const zones = recordsOf(doc, 'zone');
  expect(zones.findIndex(({ id }) => id === 'zone:c') + 1).toBe(zones.findIndex(({ id }) => id === 'zone:b'));
  expect(new Set(zones.map(({ order }) => order)).size).toBe(zones.length);
});

test('questions and results: an answer keeps who and when, a result needs both', () => {
  const answer = { job: 'job:one', question: 'inSlab', answer: 'unknown', by: 'A. Surveyor', on: '2026-03-02' };
  const asked = planWith([call('answerQuestion', answer)], plan);
  expect(recordOf(asked, 'job', 'job:one')?.inSlab).toEqual({ answer: 'unknown', by: 'A. Surveyor', on: '2026-03-02' });
  expect(planWith([call('answerQuestion', { ...answer, answer: null })], asked)).toEqual(plan);
  expect(refusalOf(plan, call('answerQuestion', { ...answer, question: 'weather' }))).toBe('unknownQuestion');
  expect(refusalOf(plan, call('answerQuestion', { ...answer, answer: 'perhaps' }))).toBe('badValue');
  const clearance = { result: 'clear', on: '2026-03-04', by: 'A. Scanner' };
  const cleared = planWith([call('recordClearance', { record: 'job:one', slot: 'inSlabLocated', clearance })], asked);
  expect(recordOf(cleared, 'job', 'job:one')?.inSlabLocated).toEqual(clearance);
  expect(
    refusalOf(
      plan,
      call('recordClearance', { record: 'job:one', slot: 'inSlabLocated', clearance: { ...clearance, by: ' ' } }),
    ),
  ).toBe('clearanceIncomplete');
});

test('ticks are set and changed under one id', () => {
  const done = planWith(
    [call('recordTick', { id: 'tick:a', of: 'zone:a', what: 'pass:a', done: true, on: '2026-03-05' })],
    plan,
  );
  const undone = planWith([call('recordTick', { id: 'tick:a', of: 'zone:a', what: 'pass:a', done: false })], done);
  expect(recordsOf(undone, 'tick')).toEqual([expect.objectContaining({ id: 'tick:a', done: false, what: 'pass:a' })]);
  expect(refusalOf(plan, call('recordTick', { id: 'tick:a', of: 'zone:none', what: 'x', done: true }))).toBe(
    'unknownRecord',
  );
});

test('a job is started once, with its own copy of what it is given', () => {
  const start = call('startJob', {
    job: { id: 'job:new', fields: { name: 'Garage', units: 'imperial', currency: 'XTS' } },
    floor: { id: 'floor:new', fields: { name: 'Garage floor' } },
    records: [
      { id: 'machine:small', fields: (machine.args as { readonly fields: { readonly [slot: string]: Json } }).fields },
    ],
  });
  const doc = planWith([start], EMPTY_DOC);
  expect([...doc.keys()]).toEqual(['job:new', 'floor:new', 'machine:small']);
  expect(refusalOf(emptyPlan, start)).toBe('jobStarted');
});
