import { expect, test } from 'vitest';
import { refusalOf } from '../../../src/edit/run.ts';
import type { CommandCall, Json, RecordId } from '../../../src/model/cell.ts';
import { recordOf, type Doc } from '../../../src/model/doc.ts';
import { refusalCodes } from '../../../src/words/handWords.ts';
import { FLOOR, planWith, room } from '../../support/handPlan.ts';

const call = (name: string, args: Json): CommandCall => ({ name, args });
const sizes = (cutWidthMm: number) => ({
  method: 'grinder_small',
  name: `Grinder ${String(cutWidthMm)}`,
  cutWidthMm,
  bodyWidthMm: cutWidthMm,
  bodyLengthMm: 1200,
  heightMm: 1100,
  turningMm: 0,
  smallestOpeningMm: cutWidthMm,
  clearanceMm: { wall: 50, obstruction: 50, drop: 600, stop: 50 },
  lapMm: 50,
});
const machine = (id: string, cutWidthMm: number) =>
  call('addMachine', { id: `machine:${id}`, fields: sizes(cutWidthMm) });
const pass = (id: string, of: RecordId | null = 'machine:large') => ({
  id: `pass:${id}` as RecordId,
  method: 'grinder_small',
  machine: of,
  times: 2,
  edgeMethod: 'hand_grinder',
  edgeTimes: 1,
});
const square = [
  [0, 0],
  [900, 0],
  [900, 900],
  [0, 900],
];
/** A zone with a recipe of its own, and one that nobody has planned. */
const plan = planWith([
  room,
  machine('large', 700),
  machine('middle', 500),
  machine('small', 320),
  machine('twin', 320),
  call('drawZone', { id: 'zone:a', floor: FLOOR, ring: square }),
  call('drawZone', { id: 'zone:b', floor: FLOOR, ring: null }),
  call('setRecipe', { zone: 'zone:a', recipe: 'recipe:a', name: 'Grind', passes: [pass('a')] }),
]);
const follow = (id: string, more: Record<string, Json> = {}) =>
  call('addFollower', { recipe: 'recipe:a', machine: `machine:${id}`, ...more });
const followers = (doc: Doc, recipe = 'recipe:a') => recordOf(doc, 'recipe', recipe)?.followedBy;

test('machines follow biggest first, in whatever order they are added', () => {
  const one = planWith([follow('small')], plan);
  expect(followers(one)).toEqual(['machine:small']);
  const two = planWith([follow('middle'), follow('twin')], one);
  expect(followers(two)).toEqual(['machine:middle', 'machine:small', 'machine:twin']);
});

test('one that is wider than the one before it, or works here already, is refused', () => {
  const smallFirst = planWith(
    [call('setRecipe', { zone: 'zone:a', recipe: 'recipe:a', passes: [pass('a', 'machine:middle')] })],
    plan,
  );
  expect(refusalOf(smallFirst, follow('large'))).toBe('followerBigger');
  expect(refusalOf(plan, follow('large'))).toBe('followerTwice');
  expect(refusalOf(planWith([follow('small')], plan), follow('small'))).toBe('followerTwice');
  expect(refusalOf(plan, follow('none'))).toBe('unknownMachine');
  expect(refusalOf(plan, call('addFollower', { recipe: 'recipe:none', machine: 'machine:small' }))).toBe(
    'unknownRecord',
  );
});

test('every refusal has a sentence', () => {
  for (const code of ['followerBigger', 'followerTwice', 'unknownMachine', 'machineInUse'])
    expect(refusalCodes).toContain(code);
});

test('machines of one width change places; a wider one never goes behind a narrower', () => {
  const two = planWith([follow('middle'), follow('small'), follow('twin')], plan);
  const move = (id: string, before: string | null) =>
    call('moveFollower', { recipe: 'recipe:a', machine: `machine:${id}`, before: before && `machine:${before}` });
  expect(followers(planWith([move('twin', 'small')], two))).toEqual([
    'machine:middle',
    'machine:twin',
    'machine:small',
  ]);
  expect(refusalOf(two, move('middle', null))).toBe('followerBigger');
  expect(refusalOf(two, move('small', 'middle'))).toBe('followerBigger');
  expect(refusalOf(two, move('small', 'small'))).toBe('noChange');
  expect(refusalOf(two, move('large', null))).toBe('unknownMachine');
});

test('one is taken out; with the last one the list goes', () => {
  const two = planWith([follow('middle'), follow('small')], plan);
  const out = (id: string) => call('removeFollower', { recipe: 'recipe:a', machine: `machine:${id}` });
  const one = planWith([out('middle')], two);
  expect(followers(one)).toEqual(['machine:small']);
  expect(followers(planWith([out('small')], one))).toBeUndefined();
  expect(refusalOf(one, out('middle'))).toBe('unknownMachine');
});

test('a machine of the book comes onto the list and into the recipe in one step', () => {
  const next = planWith([follow('book', { fields: sizes(250) })], plan);
  expect(recordOf(next, 'machine', 'machine:book')?.cutWidthMm).toBe(250);
  expect(followers(next)).toEqual(['machine:book']);
  expect(refusalOf(plan, follow('small', { fields: sizes(250) }))).toBe('idTaken');
});

test('a zone without a recipe of its own gets one in the same step', () => {
  const recipe = { zone: 'zone:b', recipe: 'recipe:b', name: 'Grind', passes: [pass('b')] };
  const add = (id: string) =>
    call('addFollower', { recipe: 'recipe:b', machine: `machine:${id}`, plan: recipe as unknown as Json });
  const next = planWith([add('small')], plan);
  expect(followers(next, 'recipe:b')).toEqual(['machine:small']);
  expect(recordOf(next, 'zone', 'zone:b')?.recipe).toBe('recipe:b');
  expect(followers(next)).toBeUndefined();
  expect(refusalOf(plan, add('large'))).toBe('followerTwice');
});

test('a first machine narrower than one that follows is refused; other edits keep those that follow', () => {
  const next = planWith([follow('middle')], plan);
  const set = (of: RecordId, more: Record<string, Json> = {}) =>
    call('setRecipe', { zone: 'zone:a', recipe: 'recipe:a', passes: [pass('a', of)], ...more });
  expect(refusalOf(next, set('machine:small'))).toBe('followerBigger');
  expect(refusalOf(next, set('machine:middle'))).toBe('followerTwice');
  expect(followers(planWith([set('machine:large', { name: 'Other' })], next))).toEqual(['machine:middle']);
});

test('a machine that follows is in use', () => {
  const next = planWith([follow('small')], plan);
  expect(refusalOf(next, call('removeRecords', { ids: ['machine:small'] }))).toBe('machineInUse');
  expect(refusalOf(plan, call('removeRecords', { ids: ['machine:small'] }))).toBeNull();
});
