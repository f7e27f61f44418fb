import { expect, test } from 'vitest';
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
