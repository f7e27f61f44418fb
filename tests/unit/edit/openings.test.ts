import { expect, test } from 'vitest';
import { refusalOf } from '../../../src/edit/run.ts';
import type { CommandCall, Json } from '../../../src/model/cell.ts';
import { recordOf, recordsOf } from '../../../src/model/doc.ts';
import { openingOn, planWith, room, wall } from '../../support/handPlan.ts';

const call = (name: string, args: Json): CommandCall => ({ name, args });
const plan = planWith([room, wall]);
const outline = (doc: typeof plan) => recordOf(doc, 'slab', 'slab:a')?.outline ?? [];

test('a doorway that fills its edge from corner to corner adds no corner', () => {
  const doc = planWith([openingOn('slab:a', 1, 0, 4000)], plan);
  expect(outline(doc)).toHaveLength(4);
  expect(outline(doc)[1]?.edge).toMatchObject({ kind: 'doorway', tag: 'D1' });
});

test('at the end of an edge one jamb is the corner; the wall keeps its upstand', () => {
  const upstand = { kind: 'kerb', heightMm: 100, treat: 'keep' };
  const doc = planWith(
    [call('setUpstand', { id: 'slab:a', edges: [0], upstand }), openingOn('slab:a', 0, 5100, 900)],
    plan,
  );
  expect(outline(doc).map(({ x, edge }) => [x, edge.kind, edge.upstand?.kind])).toEqual([
    [0, 'wall', 'kerb'],
    [5100, 'doorway', undefined],
    [6000, 'wall', undefined],
    [6000, 'wall', undefined],
    [0, 'wall', undefined],
  ]);
});

test('doorways and openings share the letter D, and a doorway that is gone keeps its number', () => {
  const withDoor = planWith([openingOn('slab:a', 0, 1000), openingOn('wall:a', 0, 500)], plan);
  expect(outline(withDoor)[1]?.edge.tag).toBe('D1');
  expect(recordsOf(withDoor, 'opening')[0]?.tag).toBe('D2');
  const without = planWith(
    [
      call('removeRecords', { ids: ['opening:a'] }),
      call('removeCorner', { id: 'slab:a', corner: 1 }),
      call('removeCorner', { id: 'slab:a', corner: 1 }),
      openingOn('slab:a', 1, 1000),
    ],
    withDoor,
  );
  expect(outline(without).filter(({ edge }) => edge.kind === 'doorway')).toEqual([
    expect.objectContaining({ edge: expect.objectContaining({ tag: 'D3' }) as unknown }),
  ]);
});

test('what does not fit is refused', () => {
  const doored = planWith([openingOn('wall:a', 0, 1000), openingOn('slab:a', 0, 1000)], plan);
  const second = (edge: number, atMm: number, widthMm = 900): string | null =>
    refusalOf(doored, openingOn('wall:a', edge, atMm, widthMm, 'opening:b'));
  expect(second(0, 0, 3100)).toBe('openingTooLong');
  expect(second(0, 2200)).toBe('openingTooLong');
  expect(second(0, 1500)).toBe('openingsOverlap');
  expect(second(0, 1900)).toBeNull();
  expect(second(5, 0)).toBe('unknownEdge');
  expect(second(0, 0, 0)).toBe('noSize');
  expect(refusalOf(doored, openingOn('slab:a', 1, 0))).toBe('edgeIsNoWall');
  expect(refusalOf(doored, openingOn('slab:a', 3, 3500))).toBe('openingTooLong');
  expect(refusalOf(doored, openingOn('crack:a', 0, 0))).toBe('openingNeedsWall');
  expect(refusalOf(doored, call('setField', { id: 'opening:a', slot: 'widthMm', value: 2500 }))).toBe(
    'openingOverCorner',
  );
  expect(refusalOf(doored, call('setField', { id: 'opening:a', slot: 'atMm', value: 4700 }))).toBe('openingPastWall');
});

test('removing a wall takes its openings along, and brings back only those', () => {
  const two = planWith(
    [
      openingOn('wall:a', 0, 0),
      openingOn('wall:a', 0, 1500, 900, 'opening:b'),
      call('removeRecords', { ids: ['opening:b'] }),
    ],
    plan,
  );
  const gone = planWith([call('removeRecords', { ids: ['wall:a'] })], two);
  expect(recordsOf(gone, 'wall')).toEqual([]);
  expect(recordsOf(gone, 'opening')).toEqual([]);
  const back = planWith([call('restore', { ids: ['wall:a'] })], gone);
  expect(back).toEqual(two);
});

test('several edges change at once; a doorway gets a number and loses it with its kind', () => {
  const doc = planWith([call('setEdge', { id: 'slab:a', edges: [0, 2], kind: 'doorway', heightMm: 2000 })], plan);
  expect(outline(doc).map(({ edge }) => edge)).toEqual([
    { kind: 'doorway', beyond: 'stop', heightMm: 2000, tag: 'D1' },
    { kind: 'wall' },
    { kind: 'doorway', beyond: 'stop', heightMm: 2000, tag: 'D2' },
    { kind: 'wall' },
  ]);
  const run = planWith([call('setEdge', { id: 'slab:a', edges: [0], beyond: 'run' })], doc);
  expect(outline(run)[0]?.edge).toMatchObject({ kind: 'doorway', beyond: 'run', tag: 'D1' });
  const shut = planWith([call('setEdge', { id: 'slab:a', edges: [0], kind: 'wall' })], run);
  expect(outline(shut)[0]?.edge).toEqual({ kind: 'wall' });
  expect(refusalOf(shut, call('setEdge', { id: 'slab:a', edges: [0], beyond: 'run' }))).toBe('nothingBeyond');
  expect(refusalOf(shut, call('setEdge', { id: 'slab:a', edges: [7], kind: 'open' }))).toBe('unknownEdge');
  expect(refusalOf(shut, call('setEdge', { id: 'wall:a', edges: [0], kind: 'open' }))).toBe('unknownRecord');
  expect(refusalOf(shut, call('setEdge', { id: 'slab:a', edges: [0], kind: 'wall' }))).toBe('noChange');
});

test('upstands: set, taken away, refused where nothing rises', () => {
  const upstand = { kind: 'stemWall', heightMm: 150, treat: 'prepare' };
  const set = planWith([call('setUpstand', { id: 'slab:a', edges: [0, 1], upstand })], plan);
  expect(outline(set).map(({ edge }) => edge.upstand?.heightMm)).toEqual([150, 150, undefined, undefined]);
  const off = planWith([call('setUpstand', { id: 'slab:a', edges: [0, 1], upstand: null })], set);
  expect(outline(off)).toEqual(outline(plan));
  expect(refusalOf(plan, call('setUpstand', { id: 'wall:a', edges: [0], upstand }))).toBe('upstandNeedsEdge');
  expect(refusalOf(plan, call('setUpstand', { id: 'slab:a', edges: [], upstand }))).toBe('unknownEdge');
  expect(refusalOf(plan, call('setUpstand', { id: 'slab:a', edges: [0], upstand: { ...upstand, heightMm: 0 } }))).toBe(
    'noSize',
  );
});
