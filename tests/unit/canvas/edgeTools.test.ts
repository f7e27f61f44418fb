import { expect, test } from 'vitest';
import { edgeKindTool } from '../../../src/canvas/tools/edgeKindTool.ts';
import { openingTool } from '../../../src/canvas/tools/openingTool.ts';
import { upstandTool } from '../../../src/canvas/tools/upstandTool.ts';
import { recordOf, recordsOf, type Doc } from '../../../src/model/doc.ts';
import { planWith, room, wall } from '../../support/handPlan.ts';
import { play } from '../../support/play.ts';
import { FLOOR } from '../../support/handPlan.ts';

const plan = planWith([room, wall]);
const outline = (doc: Doc) => recordOf(doc, 'slab', 'slab:a')?.outline ?? [];

test('a tap on a wall makes an opening about that point', () => {
  const { doc, refused } = play(openingTool, plan, 'tap 2200,1020', {
    settings: { widthMm: 800, heightMm: 2000 },
    off: true,
  });
  expect(refused).toEqual([]);
  expect(recordsOf(doc, 'opening')).toEqual([
    expect.objectContaining({ wall: 'wall:a', tag: 'D1', atMm: 800, widthMm: 800, heightMm: 2000 }),
  ]);
});

test('near the end of an edge it stays within it; on the second edge it counts from the wall start', () => {
  const { doc } = play(openingTool, plan, 'tap 3950,1000  tap 4000,2500', { off: true });
  expect(recordsOf(doc, 'opening').map((opening) => opening.atMm)).toEqual([2100, 3000 + 1050]);
});

test('a tap on a slab edge makes a doorway with two jambs', () => {
  const { doc, refused } = play(openingTool, plan, 'tap 6000,2000', { settings: { widthMm: 1000 }, off: true });
  expect(refused).toEqual([]);
  expect(outline(doc).map(({ x, y, edge }) => [x, y, edge.kind])).toEqual([
    [0, 0, 'wall'],
    [6000, 0, 'wall'],
    [6000, 1500, 'doorway'],
    [6000, 2500, 'wall'],
    [6000, 4000, 'wall'],
    [0, 4000, 'wall'],
  ]);
  expect(outline(doc)[2]?.edge).toEqual({ kind: 'doorway', beyond: 'stop', heightMm: 2100, tag: 'D1' });
});

test('an opening off every wall, too wide, or over another one is refused', () => {
  const settings = { widthMm: 2500 };
  expect(play(openingTool, plan, 'tap 3000,2000', { off: true }).refused).toEqual(['openingNeedsWall']);
  expect(play(openingTool, plan, 'tap 4000,2000', { settings, off: true }).refused).toEqual(['openingTooLong']);
  const twice = play(openingTool, plan, 'tap 2000,1000  tap 2600,1000', { off: true });
  expect(twice.refused).toEqual(['openingsOverlap']);
  expect(recordsOf(twice.doc, 'opening')).toHaveLength(1);
});

test('before it is set, the overlay shows where it will be', () => {
  const { draft, doc } = play(openingTool, plan, 'move 2200,1020', { off: true });
  expect(draft.cells.find(([, slot]) => slot === 'atMm')?.[2]).toBe(750);
  expect(draft.hint).toBe('openingSet');
  expect(doc).toBe(plan);
});

test('taps give edges the kind in hand, with what usually lies beyond', () => {
  const open = play(edgeKindTool, plan, 'tap 3000,0  tap 6000,2000', { settings: { kind: 'open' } });
  expect(outline(open.doc).map(({ edge }) => edge.kind)).toEqual(['open', 'open', 'wall', 'wall']);
  expect(outline(open.doc)[0]?.edge).toEqual({ kind: 'open', beyond: 'run' });
  expect(open.pickedEdges).toEqual([1]);
  const stop = play(edgeKindTool, plan, 'tap 3000,0', { settings: { kind: 'open', beyond: 'stop' } });
  expect(outline(stop.doc)[0]?.edge).toEqual({ kind: 'open', beyond: 'stop' });
  const back = play(edgeKindTool, stop.doc, 'tap 3000,0', { settings: { kind: 'wall', beyond: 'stop' } });
  expect(outline(back.doc)[0]?.edge).toEqual({ kind: 'wall' });
  expect(play(edgeKindTool, plan, 'tap 3000,2000').refused).toEqual(['edgeNeeded']);
});

test('upstands rise along edges and round obstructions', () => {
  const settings = { kind: 'kerb', heightMm: 120, treat: 'keep' };
  const column = {
    name: 'placeObstruction',
    args: {
      id: 'obstruction:a',
      floor: FLOOR,
      kind: 'column',
      under: 'none',
      shape: { form: 'circle', at: [3000, 2500], diameterMm: 500 },
    },
  };
  const { doc, refused } = play(upstandTool, planWith([column], plan), 'tap 3000,0  tap 3000,2500', { settings });
  expect(refused).toEqual([]);
  expect(outline(doc)[0]?.edge.upstand).toEqual(settings);
  expect(recordOf(doc, 'obstruction', 'obstruction:a')?.upstand).toEqual(settings);
  expect(play(upstandTool, plan, 'tap 9000,9000').refused).toEqual(['upstandNeedsEdge']);
});
