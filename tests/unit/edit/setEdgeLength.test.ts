import { expect, test } from 'vitest';
import { itemShape } from '../../../src/edit/itemShape.ts';
import { runCommand } from '../../../src/edit/run.ts';
import type { Json } from '../../../src/model/cell.ts';
import { planStore } from '../../../src/model/store.ts';
import { FLOOR, planWith } from '../../support/handPlan.ts';

const slabOf = (ring: readonly (readonly [number, number])[]) =>
  planWith([{ name: 'drawSlab', args: { id: 'slab:a', floor: FLOOR, ring: ring.map(([x, y]) => [x, y]) } }]);
const rectangle = [
  [0, 0],
  [6000, 0],
  [6000, 4000],
  [0, 4000],
] as const;

function after(ring: readonly (readonly [number, number])[], edge: number, lengthMm: number) {
  const store = planStore({ doc: slabOf(ring) });
  const args: Json = { id: 'slab:a', edge, lengthMm };
  const result = runCommand(store, { name: 'setEdgeLength', args });
  return { refused: 'refused' in result ? result.refused : null, ring: itemShape(store.getState(), 'slab:a')?.points };
}

test('the wall after it is carried along, and every corner stays square', () => {
  expect(after(rectangle, 0, 6500).ring).toEqual([
    [0, 0],
    [6500, 0],
    [6500, 4000],
    [0, 4000],
  ]);
  expect(after(rectangle, 1, 3800).ring).toEqual([
    [0, 0],
    [6000, 0],
    [6000, 3800],
    [0, 3800],
  ]);
  // The last edge ends at the first corner.
  expect(after(rectangle, 3, 5000).ring).toEqual([
    [0, -1000],
    [6000, -1000],
    [6000, 4000],
    [0, 4000],
  ]);
});

test('beside a slanting wall the edge still gets its length', () => {
  const ring = after(
    [
      [0, 0],
      [6000, 0],
      [5000, 4000],
      [0, 4000],
    ],
    0,
    7000,
  ).ring;
  expect(ring?.[1]).toEqual([7000, 0]);
  expect(ring?.[2]).toEqual([6000, 4000]);
});

test('where the outline goes straight on, only the corner between moves', () => {
  const ring = [
    [0, 0],
    [2000, 0],
    [6000, 0],
    [6000, 4000],
    [0, 4000],
  ] as const;
  expect(after(ring, 0, 2500).ring).toEqual([
    [0, 0],
    [2500, 0],
    [6000, 0],
    [6000, 4000],
    [0, 4000],
  ]);
});

test('what would fold the outline, and no length at all, is refused and changes nothing', () => {
  expect(after(rectangle, 0, 0).refused).toBe('noSize');
  const ring = [
    [0, 0],
    [2000, 0],
    [2000, 1000],
    [1000, 1000],
    [1000, 3000],
    [0, 3000],
  ] as const;
  const folded = after(ring, 2, 2500);
  expect(folded.refused).toBe('crossesItself');
  expect(folded.ring).toEqual(ring);
});
