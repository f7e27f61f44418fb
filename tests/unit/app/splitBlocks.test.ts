import { expect, test } from 'vitest';
import { type SplitBlock, splitBlocks, splitRemainderM2 } from '../../../src/app/prep/splitBlocks.ts';
import { splitWords } from '../../../src/app/prep/splitWords.ts';
import { zoneRecipe } from '../../../src/app/prep/zoneRecipe.ts';
import type { NarrowGap, TightPiece, ZoneMeasure } from '../../../src/geometry/floorShape.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
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

/** A hall for a large grinder with a small one after it, and numbers as an engine would give them. */
function cascade(fields: ZoneMeasure['fields'], tight: readonly TightPiece[]) {
  const large = defaultMachine('grinder_large');
  const small = defaultMachine('grinder_small');
  if (!large || !small) throw new Error('no machine');
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8000)),
    record('machine:large', { ...large, name: 'Large one' }),
    record('machine:small', { ...small, name: 'Small one', lapMm: 60 }),
    record('obstruction:a', {
      floor: FLOOR,
      tag: 'B3',
      kind: 'column',
      shape: { form: 'rectangle', at: [840, 4000], widthMm: 400, depthMm: 400, turnDeg: 0 },
      under: 'none',
    }),
    record('recipe:a', { name: 'Grind', followedBy: ['machine:small'] }),
    record('pass:a', {
      recipe: 'recipe:a',
      method: 'grinder_large',
      machine: 'machine:large',
      times: 1,
      edgeMethod: 'hand_grinder',
      edgeTimes: 1,
    }),
    zoneCells('zone:hall', rectangle(10_000, 8000), { recipe: 'recipe:a' }),
  );
  const of = takeoff(doc, FLOOR).measure.zones.find((each) => each.id === 'zone:hall');
  const held = recordOf(doc, 'zone', 'zone:hall');
  const recipe = held && zoneRecipe(doc, held);
  if (!of || !recipe) throw new Error('no zone');
  const zone: ZoneMeasure = { ...of, ...(fields ? { fields } : {}), tight };
  const blocks = splitBlocks(zone, () => 'T1');
  return { blocks, said: blocks.map((block) => splitWords(block, { units: 'metric', recipe, doc })) };
}

const piece = {
  kind: 'gap',
  areaM2: 1.2,
  region: [],
  at: [320, 4000],
  zone: 'zone:hall',
  blockedBy: null,
} as const satisfies TightPiece;
const gap = {
  machine: 'machine:small',
  widthMm: 640,
  needsMm: 800,
  from: [0, 4000],
  to: [640, 4000],
  sides: [
    { kind: 'wall', of: 'slab:a' },
    { kind: 'obstruction', of: 'obstruction:a' },
  ],
} as const satisfies NarrowGap;

test('machines that follow each other have a block each, in their order, with their own reason', () => {
  const fields = [
    { machine: 'machine:large', areaM2: 60, region: [] },
    { machine: 'machine:small', areaM2: 12, region: [] },
  ];
  const { blocks, said } = cascade(fields, []);
  expect(blocks.slice(0, 2).map(({ machine, place, areaM2, barred }) => [machine, place, areaM2, barred])).toEqual([
    ['machine:large', 0, 60, false],
    ['machine:small', 1, 12, false],
  ]);
  expect(said.slice(0, 2)).toEqual([
    { name: 'Large one', reason: 'Reaches all but 50 mm at every face.' },
    { name: 'Small one', reason: 'Works what is left, to 50 mm from every face.' },
  ]);
  // The strip is that of the last machine, 50 + 60 mm, and says so.
  expect(said.find(({ name }) => name.includes('edge strip'))?.reason).toContain(
    '110 mm wide everywhere: clearance and lap of Small one, the last to work.',
  );
});

test('one that is kept out says by what, one with nothing left says that', () => {
  const passage = { id: 'opening:none', widthMm: 900, heightMm: null };
  const { blocks, said } = cascade(
    [
      { machine: 'machine:large', areaM2: 0, region: [], blockedBy: { passage, needsMm: 950, what: 'width' } },
      { machine: 'machine:small', areaM2: 0, region: [] },
    ],
    [],
  );
  expect(blocks.slice(0, 2).map(({ barred }) => barred)).toEqual([true, true]);
  expect(said[0]?.reason).toBe('Cannot enter: The way in is 0.90 m clear, needs 0.95 m.');
  expect(said[1]?.reason).toBe('Gets to none of what is left.');
});

test('a tight spot says between what it is narrow, by how much and for which machine', () => {
  const { blocks, said } = cascade(undefined, [{ ...piece, gap }]);
  const spot = blocks.findIndex(({ kind }) => kind === 'tight');
  expect(said[spot]?.reason).toBe('Between column B3 and the wall: 0.64 m clear, Small one needs 0.80 m.');
  expect(blocks[spot]?.at).toEqual(piece.at);
  const walls = cascade(undefined, [{ ...piece, gap: { ...gap, sides: [gap.sides[0], gap.sides[0]] } }]);
  expect(walls.said[spot]?.reason).toBe('Between walls: 0.64 m clear, Small one needs 0.80 m.');
});

test('floor that a gap cuts off says so, and pieces behind one gap are one block', () => {
  const behind = { ...piece, kind: 'cutOff' as const, gap };
  const { blocks, said } = cascade(undefined, [behind, { ...behind, areaM2: 3 }]);
  const cutOff = blocks.filter(({ kind }) => kind === 'cutOff');
  expect(cutOff.map(({ areaM2 }) => areaM2)).toEqual([4.2]);
  expect(said[blocks.indexOf(cutOff[0] as SplitBlock)]?.reason).toContain('0.64 m clear');
});
