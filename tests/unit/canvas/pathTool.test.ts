import { expect, test } from 'vitest';
import { itemShape } from '../../../src/edit/itemShape.ts';
import { crackTool } from '../../../src/canvas/tools/crackTool.ts';
import { dimensionTool } from '../../../src/canvas/tools/dimensionTool.ts';
import { findingTool } from '../../../src/canvas/tools/findingTool.ts';
import { jointTool } from '../../../src/canvas/tools/jointTool.ts';
import { outOfScopeTool } from '../../../src/canvas/tools/outOfScopeTool.ts';
import { slabTool } from '../../../src/canvas/tools/slabTool.ts';
import { squareTurnDeg } from '../../../src/canvas/tools/turns.ts';
import { stepsTool } from '../../../src/canvas/tools/stepsTool.ts';
import { wallTool } from '../../../src/canvas/tools/wallTool.ts';
import { zoneTool } from '../../../src/canvas/tools/zoneTool.ts';
import { recordsOf } from '../../../src/model/doc.ts';
import { emptyPlan, planWith, room } from '../../support/handPlan.ts';
import { play } from '../../support/play.ts';

const slabRing = (doc: Parameters<typeof recordsOf>[0]) => recordsOf(doc, 'slab')[0]?.outline.map(({ x, y }) => [x, y]);

test('a slab by four taps and a tap on the first corner', () => {
  const { doc, calls, picked, refused } = play(
    slabTool,
    emptyPlan,
    'tap 0,0  tap 6000,0  tap 6000,4000  tap 0,4000  tap 0,0',
    { settings: { thicknessMm: 150 } },
  );
  expect(refused).toEqual([]);
  expect(calls.map((call) => call.name)).toEqual(['drawSlab']);
  expect(slabRing(doc)).toEqual([
    [0, 0],
    [6000, 0],
    [6000, 4000],
    [0, 4000],
  ]);
  expect(recordsOf(doc, 'slab')[0]).toMatchObject({ tag: 'S1', thicknessMm: 150, floor: 'floor:ground' });
  expect(picked).toEqual([recordsOf(doc, 'slab')[0]?.id]);
});

test('a double tap closes it too, and the tap near the first corner snaps to it', () => {
  const doubled = play(slabTool, emptyPlan, 'tap 0,0  tap 6000,0  tap 6000,4000  tap 0,4000  double 0,4000');
  const near = play(slabTool, emptyPlan, 'tap 0,0  tap 6000,0  tap 6000,4000  tap 0,4000  tap 40,-30');
  expect(slabRing(doubled.doc)).toEqual(slabRing(near.doc));
  expect(near.snaps.at(-1)).toBe('corner');
});

test('typed lengths and turns: turn is counted from the last edge, clockwise, the first one from east', () => {
  const { doc, refused } = play(
    slabTool,
    emptyPlan,
    'tap 0,0  type 6000 turn 0  type 4000 turn 90  type 6000 turn 90  finish',
  );
  expect(refused).toEqual([]);
  expect(slabRing(doc)).toEqual([
    [0, 0],
    [6000, 0],
    [6000, 4000],
    [0, 4000],
  ]);
});

test('a length alone goes where the cursor points, a turn alone keeps the length of the live line', () => {
  const alone = play(wallTool, emptyPlan, 'tap 0,0  move 0,2500  type 3000  finish');
  expect(recordsOf(alone.doc, 'wall')[0]?.path).toEqual([
    [0, 0],
    [0, 3000],
  ]);
  const turned = play(wallTool, emptyPlan, 'tap 0,0  move 2500,0  turn 90  finish');
  expect(recordsOf(turned.doc, 'wall')[0]?.path).toEqual([
    [0, 0],
    [0, 2500],
  ]);
});

test('feet and inches lie on the grid: 12 ft 6 1/2 in comes back as typed', () => {
  const lengthMm = (12 * 12 + 6.5) * 25.4;
  const { doc } = play(wallTool, emptyPlan, `tap 0,0  type ${lengthMm} turn 90  finish`);
  expect(recordsOf(doc, 'wall')[0]?.path).toEqual([
    [0, 0],
    [0, lengthMm],
  ]);
});

test('typing before the first point, a zero length and two corners are refused and change nothing', () => {
  const { doc, refused, state } = play(slabTool, emptyPlan, 'type 4000  tap 0,0  type 0  tap 6000,0  finish');
  expect(refused).toEqual(['pathNotStarted', 'noSize', 'tooFewCorners']);
  expect(doc).toBe(emptyPlan);
  expect(state).toMatchObject({
    at: 'drawing',
    points: [
      [0, 0],
      [6000, 0],
    ],
  });
});

test('a crossing outline is refused and stays in hand, so that it can be put right', () => {
  const { doc, refused, state } = play(slabTool, emptyPlan, 'tap 0,0  tap 6000,4000  tap 6000,0  tap 0,4000  finish');
  expect(refused).toEqual(['crossesItself']);
  expect(doc).toBe(emptyPlan);
  expect(state).toMatchObject({ at: 'drawing', points: { length: 4 } });
  const mended = play(
    slabTool,
    emptyPlan,
    'tap 0,0  tap 6000,4000  tap 6000,0  tap 0,4000  finish  back  back  tap 0,4000  finish',
  );
  expect(slabRing(mended.doc)).toEqual([
    [0, 0],
    [6000, 4000],
    [0, 4000],
  ]);
});

test('back takes the last point, cancel all of them, cancel at rest puts the tool down', () => {
  expect(play(slabTool, emptyPlan, 'tap 0,0  tap 6000,0  back').state).toMatchObject({ points: [[0, 0]] });
  expect(play(slabTool, emptyPlan, 'tap 0,0  back').state).toEqual({ at: 'resting' });
  expect(play(slabTool, emptyPlan, 'tap 0,0  tap 6000,0  cancel').state).toEqual({ at: 'resting' });
});

test.each([
  ['slab', slabTool],
  ['zone', zoneTool],
  ['finding', findingTool],
  ['outOfScope', outOfScopeTool],
  ['steps', stepsTool],
] as const)('a drag makes a rectangle: %s', (type, tool) => {
  const { doc, calls, refused } = play(tool, emptyPlan, 'sweep 5000,3000 1000,500');
  expect(refused).toEqual([]);
  expect(calls).toHaveLength(1);
  const id = recordsOf(doc, type)[0]?.id;
  expect(id && itemShape(doc, id)?.points).toEqual([
    [1000, 500],
    [5000, 500],
    [5000, 3000],
    [1000, 3000],
  ]);
});

test('a drag along one line makes nothing', () => {
  const { doc, state } = play(slabTool, emptyPlan, 'sweep 0,0 5000,0');
  expect(doc).toBe(emptyPlan);
  expect(state).toEqual({ at: 'resting' });
});

test('open paths: a drag sets two points, and more may follow', () => {
  const { doc } = play(jointTool, emptyPlan, 'sweep 0,0 3000,0  tap 3000,2000  finish', {
    settings: { kind: 'isolation', treat: 'filled', widthMm: 12 },
  });
  expect(recordsOf(doc, 'joint')[0]).toMatchObject({
    tag: 'J1',
    path: [
      [0, 0],
      [3000, 0],
      [3000, 2000],
    ],
    kind: 'isolation',
    treat: 'filled',
    widthMm: 12,
  });
});

test('a crack that was not measured says so', () => {
  const { doc } = play(crackTool, planWith([room]), 'tap 1000,1500  tap 2000,1800  tap 2600,1700  finish');
  expect(recordsOf(doc, 'crack')[0]).toMatchObject({ tag: 'C1', widthMm: null, depthMm: null, behaviour: 'notJudged' });
});

test('a dimension is done with its second end', () => {
  const { doc, state } = play(dimensionTool, planWith([room]), 'tap 0,0  tap 6000,0');
  expect(recordsOf(doc, 'dimension')[0]).toMatchObject({ from: [0, 0], to: [6000, 0] });
  expect(state).toEqual({ at: 'resting' });
});

test('from three corners on the totals already count a slab that is being drawn, and only while it is whole', () => {
  expect(play(slabTool, emptyPlan, 'tap 0,0  move 6000,0').draft.cells).toEqual([]);
  const { draft, doc } = play(slabTool, emptyPlan, 'tap 0,0  tap 6000,0  move 6000,4000');
  expect(draft.cells.find(([, slot]) => slot === 'outline')?.[2]).toHaveLength(3);
  expect(draft.live).toEqual({ lengthMm: 4000, turnDeg: 90 });
  expect(draft.from).toEqual([6000, 0]);
  expect(doc).toBe(emptyPlan);
  const crossed = play(slabTool, emptyPlan, 'tap 0,0  tap 6000,4000  tap 6000,0  move 0,4000');
  expect(crossed.draft.cells).toEqual([]);
});

test('undo of what was drawn gives the start', () => {
  const played = play(slabTool, emptyPlan, 'sweep 0,0 5000,3000');
  expect(played.undo()).toEqual(emptyPlan);
});

test('an outline goes on square to the side it goes round by', () => {
  const first = [
    [0, 0],
    [6000, 0],
  ] as const;
  expect(squareTurnDeg(first)).toBe(90);
  expect(squareTurnDeg([...first, [6000, 4000]])).toBe(90);
  expect(squareTurnDeg([...first, [6000, -4000]])).toBe(-90);
  // A notch turned out to the left and the outline still goes round to the right.
  expect(squareTurnDeg([...first, [6000, 1000], [7000, 1000], [7000, 4000]])).toBe(90);
});

test('corners nearer to each other than the reach do not fold the outline back on itself', () => {
  const { doc, refused } = play(
    slabTool,
    emptyPlan,
    'tap 0,0  tap 6000,0  tap 6000,1000  tap 6000,1060  tap 6000,1120  tap 6000,4000  tap 0,4000  finish',
  );
  expect(refused).toEqual([]);
  expect(slabRing(doc)?.slice(2, 5)).toEqual([
    [6000, 1000],
    [6000, 1060],
    [6000, 1120],
  ]);
});

test('an outline that crosses itself says where; a corner taken back is a new try', () => {
  const crossed = play(slabTool, emptyPlan, 'tap 0,0  tap 6000,0  tap 0,4000  tap 6000,4000  finish', { off: true });
  expect(crossed.refused).toEqual(['crossesItself']);
  expect(crossed.state).toMatchObject({ at: 'drawing', crossed: [3000, 2000] });
  expect(crossed.draft.hint).toBe('crossesHere');
  const again = play(slabTool, emptyPlan, 'tap 0,0  tap 6000,0  tap 0,4000  tap 6000,4000  finish  back', {
    off: true,
  });
  expect(again.state).not.toHaveProperty('crossed');
});

test('a crack keeps its own way beside a wall, and still ends at it', () => {
  const plan = planWith([room]);
  const { snaps } = play(crackTool, plan, 'tap 1000,1000  tap 1030,2500  tap 30,2600');
  expect(snaps).toEqual(['free', 'free', 'edge']);
});
