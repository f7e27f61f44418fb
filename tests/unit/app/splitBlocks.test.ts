import { expect, test } from 'vitest';
import { splitBlocks, splitRemainderM2 } from '../../../src/app/prep/splitBlocks.ts';
import { splitWords } from '../../../src/app/prep/splitWords.ts';
import { zoneRecipe } from '../../../src/app/prep/zoneRecipe.ts';
import { recordOf, type Doc } from '../../../src/model/doc.ts';
import type { RecordId } from '../../../src/model/cell.ts';
import { tightSpots } from '../../../src/takeoff/spotLines.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { docOf, FLOOR, jobCells, record, rectangle, slabCells, zoneCells } from '../../support/jobPlans.ts';

/** A hall of 10 x 8 m, and a room of 4 x 8 m behind a wall with one door. */
function twoRooms(doorMm: number): Doc {
  return docOf(
    jobCells(),
    slabCells(rectangle(14_200, 8000)),
    record('wall:a', {
      floor: FLOOR,
      tag: 'W1',
      path: [
        [10_100, 0],
        [10_100, 8000],
      ],
      thicknessMm: 200,
    }),
    record('opening:a', { wall: 'wall:a', tag: 'D2', atMm: 3000, widthMm: doorMm, heightMm: 2100 }),
    record('entrance:a', { floor: FLOOR, tag: 'M1', at: [5000, 100], widthMm: null, heightMm: null }),
    zoneCells('zone:hall', rectangle(10_100, 8000)),
    zoneCells('zone:room', rectangle(4100, 8000, [10_100, 0])),
  );
}

function blocksOf(doc: Doc, zone: RecordId) {
  const { measure } = takeoff(doc, FLOOR);
  const of = measure.zones.find((each) => each.id === zone);
  if (!of) throw new Error(`no ${zone}`);
  const spots = tightSpots(measure.zones);
  const blocks = splitBlocks(of, (piece) => spots.find((spot) => spot.piece === piece)?.tag ?? null);
  const held = recordOf(doc, 'zone', zone);
  const recipe = held && zoneRecipe(doc, held);
  if (!recipe) throw new Error('no recipe');
  return { of, blocks, said: blocks.map((block) => splitWords(block, { units: 'metric', recipe, doc })) };
}

test('hand floor along a drop says that the machine is kept back, not that it is too small', () => {
  const wall = { kind: 'wall' } as const;
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8000), [wall, { kind: 'drop' }, wall, wall]),
    zoneCells('zone:hall', rectangle(10_000, 8000)),
  );
  const { blocks, said } = blocksOf(doc, 'zone:hall');
  const spot = blocks.findIndex(({ kind }) => kind === 'tight');
  expect(said[spot]?.reason).toBe('Kept back: the machine stays 0.60 m from the drop.');
});

test.each([700, 900])('with a door of %i mm the blocks close to the net floor', (doorMm) => {
  for (const zone of ['zone:hall', 'zone:room'] as const) {
    const { of, blocks } = blocksOf(twoRooms(doorMm), zone);
    expect(blocks[0]?.kind).toBe('machine');
    expect(splitRemainderM2(of, blocks)).toBeCloseTo(0, 3);
    expect(blocks.every((block) => block.share >= 0 && block.share <= 1)).toBe(true);
  }
});

test('behind a door that is too narrow the machine is barred, and says what it needs', () => {
  const { blocks, said } = blocksOf(twoRooms(700), 'zone:room');
  expect(blocks[0]?.barred).toBe(true);
  expect(said[0]?.reason).toBe('Cannot enter: D2 is 0.70 m clear, needs 0.80 m.');
  expect(blocks.some((block) => block.kind === 'cutOff' && block.areaM2 > 30)).toBe(true);
});

test('through a door of exactly what it needs it works', () => {
  const { blocks, said } = blocksOf(twoRooms(800), 'zone:room');
  expect(blocks[0]?.barred).toBe(false);
  expect(said[0]?.reason).toBe('Reaches all but 50 mm at every face.');
});

test('floor in two pieces that one door bars is one block with one reason', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(14_200, 8000)),
    record('wall:a', {
      floor: FLOOR,
      tag: 'W1',
      path: [
        [10_100, 0],
        [10_100, 8000],
      ],
      thicknessMm: 200,
    }),
    record('opening:a', { wall: 'wall:a', tag: 'D2', atMm: 3000, widthMm: 400, heightMm: 2100 }),
    record('entrance:a', { floor: FLOOR, tag: 'M1', at: [5000, 100], widthMm: null, heightMm: null }),
    zoneCells('zone:room', rectangle(4100, 8000, [10_100, 0])),
    // A later zone across the room leaves it in two.
    zoneCells('zone:aisle', rectangle(4100, 1000, [10_100, 5000])),
  );
  const { blocks } = blocksOf(doc, 'zone:room');
  expect(blocks.filter(({ kind }) => kind === 'cutOff')).toHaveLength(1);
});
