import { expect, test } from 'vitest';
import { pickTool } from '../../../src/canvas/tools/pickTool.ts';
import { recordOf, recordsOf } from '../../../src/model/doc.ts';
import { FLOOR, planWith, room, wall } from '../../support/handPlan.ts';
import { play } from '../../support/play.ts';

const column = {
  name: 'placeObstruction',
  args: {
    id: 'obstruction:a',
    floor: FLOOR,
    kind: 'column',
    under: 'none',
    shape: { form: 'rectangle', at: [3000, 2000], widthMm: 400, depthMm: 400, turnDeg: 0 },
  },
} as const;
const crack = {
  name: 'drawCrack',
  args: {
    id: 'crack:a',
    floor: FLOOR,
    path: [
      [500, 500],
      [900, 900],
    ],
    widthMm: null,
    depthMm: null,
    behaviour: 'notJudged',
  },
} as const;
const plan = planWith([room, column, crack]);
const ring = (doc: typeof plan) => recordOf(doc, 'slab', 'slab:a')?.outline.map(({ x, y }) => [x, y]);

test('a tap picks the smallest thing on top; on empty floor it lets go', () => {
  expect(play(pickTool, plan, 'tap 3000,2000').picked).toEqual(['obstruction:a']);
  expect(play(pickTool, plan, 'tap 720,700').picked).toEqual(['crack:a']);
  expect(play(pickTool, plan, 'tap 5000,1000').picked).toEqual(['slab:a']);
  expect(play(pickTool, plan, 'tap 5000,1000  tap 9000,9000').picked).toEqual([]);
});

test('shift adds and takes out', () => {
  expect(play(pickTool, plan, 'tap 3000,2000  tap 720,700 shift').picked).toEqual(['obstruction:a', 'crack:a']);
  expect(play(pickTool, plan, 'tap 3000,2000  tap 3000,2000 shift').picked).toEqual([]);
});

test('an edge of the picked slab is picked by a second tap', () => {
  expect(play(pickTool, plan, 'tap 5000,1000  tap 6000,2500').pickedEdges).toEqual([1]);
  expect(play(pickTool, plan, 'tap 5000,1000  tap 6000,2500  tap 1500,0 shift').pickedEdges).toEqual([1, 0]);
});

test('a drag on a picked item moves it, one command, one step back', () => {
  const { doc, calls, undo } = play(
    pickTool,
    plan,
    'tap 3000,2000  press 3000,2000  drag 3300,2100  release 3500,2200',
    { off: true },
  );
  expect(calls.map((call) => call.name)).toEqual(['moveRecords']);
  expect(recordOf(doc, 'obstruction', 'obstruction:a')?.shape).toMatchObject({ at: [3500, 2200] });
  expect(undo()).toEqual(plan);
});

test('a drag on what is not picked draws a box instead: nothing is moved by accident', () => {
  const { calls, picked } = play(pickTool, plan, 'sweep 2500,1500 3500,2500');
  expect(calls).toEqual([]);
  expect(picked).toEqual(['obstruction:a']);
});

test('the box takes what lies wholly inside, with the switch also what it touches', () => {
  expect(play(pickTool, plan, 'sweep 400,400 3000,2500').picked).toEqual(['crack:a']);
  const touching = play(pickTool, plan, 'sweep 400,400 3000,2500', { settings: { touchingToo: true } });
  expect([...touching.picked].toSorted()).toEqual(['crack:a', 'obstruction:a', 'slab:a']);
});

test('a corner is dragged by itself or by its number outside, and snaps', () => {
  const moved = play(pickTool, plan, 'tap 5000,1000  press 6000,4000  drag 6500,4020  release 7000,4030');
  expect(ring(moved.doc)).toEqual([
    [0, 0],
    [6000, 0],
    [7000, 4000],
    [0, 4000],
  ]);
  const outward = 240 / Math.SQRT2;
  const byNumber = play(
    pickTool,
    plan,
    `tap 5000,1000  press ${6000 + outward},${4000 + outward}  drag 7000,5000  release 7000,5000`,
    { off: true },
  );
  expect(ring(byNumber.doc)?.[2]).toEqual([7000, 5000]);
});

test('an edge is dragged parallel to itself', () => {
  const { doc, calls } = play(pickTool, plan, 'tap 5000,1000  press 6000,2500  drag 6700,2600  release 7000,2900', {
    off: true,
  });
  expect(calls.map((call) => call.name)).toEqual(['moveEdge']);
  expect(ring(doc)).toEqual([
    [0, 0],
    [7000, 0],
    [7000, 4000],
    [0, 4000],
  ]);
});

test('a double tap on an edge adds a corner there, on a corner it takes it out', () => {
  const added = play(pickTool, plan, 'tap 5000,1000  double 2000,30');
  expect(ring(added.doc)).toEqual([
    [0, 0],
    [2000, 0],
    [6000, 0],
    [6000, 4000],
    [0, 4000],
  ]);
  const removed = play(pickTool, plan, 'tap 5000,1000  double 2000,30  double 2000,0');
  expect(ring(removed.doc)).toEqual(ring(plan));
});

test('Delete removes, arrows nudge, Esc in a drag puts everything back', () => {
  const removed = play(pickTool, plan, 'tap 3000,2000  remove');
  expect(recordsOf(removed.doc, 'obstruction')).toEqual([]);
  expect(removed.picked).toEqual([]);
  const nudged = play(pickTool, plan, 'tap 3000,2000  nudge 10,0  nudge 10,0');
  expect(recordOf(nudged.doc, 'obstruction', 'obstruction:a')?.shape).toMatchObject({ at: [3020, 2000] });
  const left = play(pickTool, plan, 'tap 3000,2000  press 3000,2000  drag 3500,2000  cancel');
  expect(left.doc).toBe(plan);
});

test('while something is carried the overlay shows it moved; the plan does not change', () => {
  const { draft, doc } = play(pickTool, plan, 'tap 3000,2000  press 3000,2000  drag 3500,2200', { off: true });
  expect(draft.cells).toEqual([['obstruction:a', 'shape', expect.objectContaining({ at: [3500, 2200] })]]);
  expect(draft.moving).toEqual(['obstruction:a']);
  expect(doc).toBe(plan);
});

test('a corner dragged across the slab is refused, and the slab is as it was', () => {
  const { doc, refused } = play(pickTool, plan, 'tap 5000,1000  press 6000,4000  drag -3000,1000  release -3000,1000', {
    off: true,
  });
  expect(refused).toEqual(['crossesItself']);
  expect(doc).toBe(plan);
});

test('a locked item stays where it is', () => {
  const locked = planWith([{ name: 'setField', args: { id: 'obstruction:a', slot: 'locked', value: true } }], plan);
  expect(play(pickTool, locked, 'tap 3000,2000  nudge 10,0  remove').refused).toEqual(['locked', 'locked']);
});

test('a wall carries its openings', () => {
  const walled = planWith([
    room,
    wall,
    { name: 'addOpening', args: { id: 'opening:a', on: 'wall:a', edge: 0, atMm: 500, widthMm: 900, heightMm: 2100 } },
  ]);
  const { doc } = play(pickTool, walled, 'tap 2900,1000  sweep 2900,1000 2900,1300', { off: true });
  expect(recordOf(doc, 'wall', 'wall:a')?.path[0]).toEqual([1000, 1300]);
  expect(recordOf(doc, 'opening', 'opening:a')?.atMm).toBe(500);
});
