import { expect, test } from 'vitest';
import { addFollowerArgs } from '../../../src/app/prep/cascadeEdits.ts';
import { followerChoices } from '../../../src/app/prep/machineChoices.ts';
import { addFollower } from '../../../src/edit/addFollower.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
import { draftsOf, onMachine, recipeArgs, withOneMore, without } from '../../../src/app/prep/recipeEdits.ts';
import { zoneRecipe } from '../../../src/app/prep/zoneRecipe.ts';
import { setRecipe } from '../../../src/edit/setRecipe.ts';
import { applyCells, recordOf, recordsOf, type Doc } from '../../../src/model/doc.ts';
import { idMaker } from '../../../src/model/id.ts';
import { docOf, FLOOR, jobCells, record, rectangle, slabCells, zoneCells } from '../../support/jobPlans.ts';

function newIds() {
  let count = 0;
  return idMaker((length) => Uint8Array.from({ length }, () => (count++ * 7) % 251));
}

const pass = { recipe: 'recipe:a', machine: null, times: 1, edgeTimes: 0, edgeMethod: null } as const;

function shared(): Doc {
  return docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8000)),
    record('recipe:a', { name: 'Grind twice' }),
    record('pass:1', { ...pass, order: 'a', method: 'grinder_small', abrasive: 'd30' }),
    record('pass:2', {
      ...pass,
      order: 'b',
      method: 'grinder_small',
      abrasive: 'd40',
      edgeMethod: 'hand_grinder',
      edgeTimes: 2,
    }),
    zoneCells('zone:1', rectangle(5000, 8000), { recipe: 'recipe:a' }),
    zoneCells('zone:2', rectangle(5000, 8000, [5000, 0]), { recipe: 'recipe:a' }),
  );
}

function draftsIn(doc: Doc) {
  const zone = recordOf(doc, 'zone', 'zone:1');
  const recipe = zone && zoneRecipe(doc, zone);
  if (!zone || !recipe) throw new Error('no zone');
  return { zone, drafts: draftsOf(recipe.prep) };
}

test('an edit of a shared recipe leaves the other zone as it was', () => {
  const doc = shared();
  const { zone, drafts } = draftsIn(doc);
  const args = recipeArgs(doc, zone, drafts.slice(0, 1), 'Once', newIds());
  expect(setRecipe.refuse(doc, args)).toBeNull();
  const after = applyCells(doc, setRecipe.write(doc, args));
  expect(recordOf(after, 'zone', 'zone:2')?.recipe).toBe('recipe:a');
  expect(recordsOf(after, 'pass').filter((each) => each.recipe === 'recipe:a')).toHaveLength(2);
  expect(recordOf(after, 'zone', 'zone:1')?.recipe).not.toBe('recipe:a');
});

test('a recipe of its own keeps its records', () => {
  const doc = applyCells(shared(), [['zone:2', 'recipe', null]]);
  const { zone, drafts } = draftsIn(doc);
  const args = recipeArgs(doc, zone, drafts, 'Grind twice', newIds());
  expect(args.recipe).toBe('recipe:a');
  expect(args.passes.map((each) => each.id)).toEqual(['pass:1', 'pass:2']);
});

const edges = (drafts: readonly { readonly edgeMethod: string | null; readonly edgeTimes: number }[]) =>
  drafts.map((draft) => (draft.edgeMethod === null ? 0 : draft.edgeTimes));

test('the edge is worked after the last pass, whichever that is', () => {
  const { drafts } = draftsIn(shared());
  expect(edges(drafts)).toEqual([0, 2]);
  expect(edges(withOneMore(drafts))).toEqual([0, 0, 2]);
  expect(edges(without(drafts, 1))).toEqual([2]);
  expect(edges(without(drafts, 0))).toEqual([2]);
});

test('edge work of several passes stays where it is', () => {
  const { drafts } = draftsIn(
    applyCells(shared(), [
      ['pass:1', 'edgeMethod', 'hand_grinder'],
      ['pass:1', 'edgeTimes', 1],
    ]),
  );
  expect(edges(withOneMore(drafts))).toEqual([1, 2, 0]);
  expect(edges(without(drafts, 1))).toEqual([1]);
});

test('another machine takes over the passes of the first one, and no others', () => {
  const doc = applyCells(shared(), [
    ['pass:2', 'method', 'buffer_screen'],
    ['pass:2', 'abrasive', 'screen60'],
  ]);
  const moved = onMachine(draftsIn(doc).drafts, 'shot_small', null);
  expect(moved.map((draft) => [draft.method, draft.abrasive])).toEqual([
    ['shot_small', null],
    ['buffer_screen', 'screen60'],
  ]);
});

test('a zone nobody has planned starts from the stand-in, and its machine needs no record', () => {
  const doc = docOf(jobCells(), slabCells(rectangle(5000, 5000)), zoneCells('zone:1', rectangle(5000, 5000)));
  const { zone, drafts } = draftsIn(doc);
  const args = recipeArgs(doc, zone, drafts, 'As it stands', newIds());
  expect(args.passes.map((each) => [each.method, each.machine])).toEqual([['grinder_small', null]]);
  expect(setRecipe.refuse(doc, args)).toBeNull();
  expect(FLOOR).toBe(zone.floor);
});

test('machines that follow can be chosen where they do the same work and are no wider, each once', () => {
  const large = defaultMachine('grinder_large');
  const small = defaultMachine('grinder_small');
  if (!large || !small) throw new Error('no machine');
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8000)),
    record('machine:large', { ...large, name: 'Large one' }),
    record('machine:larger', { ...large, name: 'Larger one', cutWidthMm: 2000 }),
    record('machine:blaster', { ...small, name: 'Blaster', method: 'shot_small' }),
    record('machine:hand', { ...small, name: 'By hand', method: 'hand_grinder' }),
    record('recipe:a', { name: 'Grind' }),
    record('pass:1', { ...pass, method: 'grinder_large', machine: 'machine:large' }),
    zoneCells('zone:1', rectangle(5000, 8000), { recipe: 'recipe:a' }),
  );
  const { zone, drafts } = draftsIn(doc);
  const choices = (now: Doc): readonly string[] => {
    const prep = zoneRecipe(now, zone)?.prep;
    return prep ? followerChoices(now, prep, 'metric').map(({ value }) => value) : [];
  };
  // No small grinder is on the list: the book has one.
  expect(choices(doc)).toEqual(['method:grinder_small']);

  const ids = newIds();
  const args = addFollowerArgs(doc, 'method:grinder_small', { zone, drafts, name: 'Grind' }, ids);
  expect(addFollower.refuse(doc, args)).toBeNull();
  const next = applyCells(doc, addFollower.write(doc, args));
  expect(recordOf(next, 'recipe', 'recipe:a')?.followedBy).toEqual([args.machine]);
  expect(recordOf(next, 'machine', args.machine)?.method).toBe('grinder_small');
  expect(choices(next)).toEqual([]);
});

test('a machine that follows in one zone does not come into another one that shares the recipe', () => {
  const small = defaultMachine('grinder_small');
  if (!small) throw new Error('no machine');
  const doc = applyCells(shared(), [
    ...record('machine:0', small),
    ...record('machine:a', { ...small, cutWidthMm: 300 }),
    ...record('machine:b', { ...small, cutWidthMm: 200 }),
    ['recipe:a', 'followedBy', ['machine:a']],
  ]);
  const { zone, drafts } = draftsIn(doc);
  const args = addFollowerArgs(doc, 'machine:b', { zone, drafts, name: 'Grind twice' }, newIds());
  expect(addFollower.refuse(doc, args)).toBeNull();
  const next = applyCells(doc, addFollower.write(doc, args));
  expect(recordOf(next, 'recipe', args.recipe)?.followedBy).toEqual(['machine:a', 'machine:b']);
  expect(recordOf(next, 'zone', 'zone:1')?.recipe).toBe(args.recipe);
  expect(recordOf(next, 'recipe', 'recipe:a')?.followedBy).toEqual(['machine:a']);
});

test('a machine that is chosen to go first no longer follows', () => {
  const small = defaultMachine('grinder_small');
  if (!small) throw new Error('no machine');
  const doc = applyCells(shared(), [
    ...record('machine:0', small),
    ...record('machine:a', { ...small, cutWidthMm: 300 }),
    ['recipe:a', 'followedBy', ['machine:a']],
    ['zone:2', 'recipe', null],
  ]);
  const { zone, drafts } = draftsIn(doc);
  const args = recipeArgs(doc, zone, onMachine(drafts, 'grinder_small', 'machine:a'), 'Grind', newIds());
  expect(setRecipe.refuse(doc, args)).toBeNull();
  const next = applyCells(doc, setRecipe.write(doc, args));
  expect(recordOf(next, 'recipe', 'recipe:a')?.followedBy).toBeUndefined();
});
