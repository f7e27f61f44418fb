import { expect, test } from 'vitest';
import { changedPart, itemCount, partIn } from '../../../../src/canvas/paint/planPart.ts';
import { paintVeil } from '../../../../src/canvas/paint/veil.ts';
import { planView } from '../../../../src/canvas/paint/view.ts';
import type { Cell } from '../../../../src/model/cell.ts';
import { applyCells } from '../../../../src/model/doc.ts';
import { docOf, FLOOR, jobCells, record, rectangle, set, slabCells, zoneCells } from '../../../support/jobPlans.ts';

const crack = (id: `crack:${string}`, x: number): Cell[] =>
  record(id, {
    floor: FLOOR,
    tag: id,
    path: [
      [x, 1_000],
      [x + 500, 1_500],
    ],
    widthMm: null,
    depthMm: null,
    behaviour: 'notJudged',
  });
const column = record('obstruction:b', {
  floor: FLOOR,
  tag: 'B1',
  kind: 'column',
  shape: { form: 'rectangle', at: [6_000, 3_000], widthMm: 400, depthMm: 400, turnDeg: 0 },
  under: 'none',
});
const wall = record('wall:w', { floor: FLOOR, tag: 'W1', path: [[0, 4_000], [3_000, 4_000]], thicknessMm: 150 }); // prettier-ignore
const door = record('opening:d', { wall: 'wall:w', tag: 'D1', atMm: 500, widthMm: 900, heightMm: 2_000 });
const doc = docOf(
  jobCells(),
  slabCells(rectangle(9_000, 6_000)),
  zoneCells('zone:z', rectangle(4_000, 4_000)),
  column,
  wall,
  door,
  crack('crack:c', 1_000),
  crack('crack:d', 7_000),
);
const view = planView(doc, FLOOR);
const after = (...cells: readonly (readonly Cell[])[]) => planView(applyCells(doc, cells.flat()), FLOOR);

const idsIn = (part: ReturnType<typeof changedPart>) =>
  part &&
  [
    ...[...part.slabs, ...part.obstructions, ...part.cracks, ...part.findings].map(({ id }) => id),
    ...part.walls.map((each) => each.wall.id),
    ...part.zones.map(({ zone }) => zone.id),
  ].toSorted();

test('a plan that is the same, or only measured anew, has no changed part', () => {
  expect(changedPart(after(set('job:test', 'name', 'Other')), view)).toBeNull();
});

test('what is carried is the changed part, and where it was is the part that is gone', () => {
  const moved = after(set('crack:c', 'path', rectangle(500, 500)));
  expect(idsIn(changedPart(moved, view))).toEqual(['crack:c']);
  const gone = changedPart(view, moved);
  expect(gone?.cracks[0]?.path[0]).toEqual([1_000, 1_000]);
  expect(gone && paintVeil(gone).map(({ id }) => id)).toEqual(['crack:c']);
});

test('things that come and go, several at once', () => {
  const other = after(
    set('obstruction:b', 'gone', true),
    crack('crack:e', 3_000),
    set('zone:z', 'ring', rectangle(2, 2)),
  );
  expect(idsIn(changedPart(other, view))).toEqual(['crack:e', 'zone:z']);
  expect(idsIn(changedPart(view, other))).toEqual(['obstruction:b', 'zone:z']);
});

test('a wall has changed when its opening has', () => {
  expect(idsIn(changedPart(after(set('opening:d', 'atMm', 900)), view))).toEqual(['wall:w']);
});

test('the part in a box leaves out small things that lie elsewhere, but not what is picked', () => {
  const box = { minX: 0, minY: 0, maxX: 2_000, maxY: 2_000 };
  expect(idsIn(partIn(view, box, []))).toEqual(['crack:c', 'slab:a', 'wall:w', 'zone:z']);
  expect(idsIn(partIn(view, box, ['obstruction:b']))).toEqual([
    'crack:c',
    'obstruction:b',
    'slab:a',
    'wall:w',
    'zone:z',
  ]);
  expect(itemCount(view)).toBe(3);
});
