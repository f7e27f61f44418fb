import type { Point, Ring } from '../../src/geometry/floorShape.ts';
import { rectangle } from '../support/floors.ts';
import type { Family } from './drawn.ts';
import { anyFaces, latticeBox, line, patches, room, slabOf, solids, somewhere, star, wallOf } from './shapes.ts';

/** Trouble with what stands and lies on the floor, where it ends and who comes in. */

/** Columns flush with the outline, across it, on its corners. */
export const columnsOnOutline: Family = (dice) => {
  const ring = room(dice);
  const boxes = dice.many(2, 9, () => {
    const i = dice.whole(0, ring.length - 1);
    const [a, b] = [ring[i] ?? [0, 0], ring[(i + 1) % ring.length] ?? [0, 0]];
    const share = dice.pick([0, 1, 0.5, dice.next()]);
    const side = dice.step(100, 900);
    const off = dice.pick([0, -side, -side / 2, dice.tiny(-9, 0)]);
    return rectangle(a[0] + (b[0] - a[0]) * share + off, a[1] + (b[1] - a[1]) * share + off, side, side);
  });
  return { slabs: [slabOf(dice, ring, 's0', anyFaces(dice, ring.length))], solids: solids(boxes) };
};

export const columnsOnWalls: Family = (dice) => {
  const walls = dice.many(1, 3, (i) => wallOf(dice, `w${i}`));
  const boxes = walls.flatMap(({ body }) =>
    dice.many(1, 3, () => {
      const [x, y] = dice.pick(body as unknown as readonly [Point, ...Point[]]);
      const side = dice.step(100, 600);
      return rectangle(x - dice.pick([0, side, side / 2]), y - dice.pick([0, side, side / 2]), side, side);
    }),
  );
  return { slabs: [slabOf(dice, room(dice))], walls, solids: solids(boxes) };
};

export const oddTurned: Family = (dice) => {
  const ring = room(dice);
  return {
    slabs: [slabOf(dice, ring, 's0', anyFaces(dice, ring.length))],
    solids: solids(dice.many(1, 9, () => latticeBox(dice, 200, 1_000))),
    walls: dice.many(0, 2, (i) => wallOf(dice, `w${i}`)),
  };
};

export const zonesEverywhere: Family = (dice) => {
  const ring = room(dice);
  const zones = dice.many(3, 12, () =>
    dice.pick([latticeBox(dice, 500, 6_000), star(dice, somewhere(dice), 300, 4_000), ring, ring.toReversed()]),
  );
  return { slabs: [slabOf(dice, ring)], zones: patches('z', zones), solids: solids([latticeBox(dice, 200, 900)]) };
};

export const findingsOverlap: Family = (dice) => {
  const boxes = dice.many(3, 10, () =>
    dice.pick([latticeBox(dice, 300, 4_000), star(dice, somewhere(dice), 200, 2_500)]),
  );
  return {
    slabs: [slabOf(dice, room(dice))],
    findings: patches('f', [...boxes, ...boxes.slice(0, dice.whole(0, 2))]),
    zones: patches('z', boxes.slice(0, dice.whole(0, 3))),
  };
};

export const cracksAlongEdges: Family = (dice) => {
  const ring = room(dice);
  const box = latticeBox(dice, 500, 2_000);
  const zone = latticeBox(dice, 1_000, 6_000);
  const lines = [
    ring,
    box,
    zone,
    [...ring, ...ring.slice(0, 1)],
    line(dice),
    [ring[0] ?? [0, 0], box[0] ?? [0, 0], box[2] ?? [0, 0]],
  ];
  return {
    slabs: [slabOf(dice, ring)],
    solids: solids([box]),
    zones: patches('z', [zone, latticeBox(dice, 1_000, 6_000)]),
    lines: lines.map((path, i) => ({ id: `c${i}`, path: dice.chance(0.3) ? path.toReversed() : path })),
  };
};

export const entrancesAnywhere: Family = (dice) => ({
  slabs: [slabOf(dice, room(dice))],
  walls: dice.many(1, 3, (i) => wallOf(dice, `w${i}`)),
  solids: solids(dice.many(0, 5, () => latticeBox(dice, 200, 900))),
  entrances: dice.many(1, 4, (i) => ({
    id: `e${i}`,
    at: dice.pick([somewhere(dice), [0, 0], [dice.step(0, 2_000), 0], [0, dice.between(0, 2_000)]]),
    widthMm: dice.pick([null, null, 100, 900, 3_000]),
    heightMm: dice.pick([null, null, 800, 2_100]),
  })),
});

export const openEdges: Family = (dice) => {
  const ring = room(dice);
  return {
    slabs: [slabOf(dice, ring, 's0', anyFaces(dice, ring.length))],
    solids: solids(dice.many(0, 4, () => latticeBox(dice, 200, 1_200))),
    outOfScope: patches(
      'o',
      dice.many(0, 2, () => latticeBox(dice, 500, 3_000)),
    ),
  };
};

export const doorsAtEnds: Family = (dice) => ({
  slabs: [slabOf(dice, room(dice))],
  walls: dice.many(1, 5, (i) => wallOf(dice, `w${i}`)),
  zones: patches(
    'z',
    dice.many(0, 2, () => latticeBox(dice, 1_000, 6_000)),
  ),
});

/** Slabs side by side, over each other, one twice. */
export const manySlabs: Family = (dice) => {
  let x = 0;
  const slabs = dice.many(2, 5, (i) => {
    const [width, height] = [dice.step(1_000, 5_000, 500), dice.step(1_000, 5_000, 500)];
    const ring = rectangle(x, dice.step(0, 1_000, 500), width, height);
    x += dice.pick([width, width, width - 500, 0]);
    return slabOf(dice, dice.chance(0.5) ? ring.toReversed() : ring, `s${i}`, anyFaces(dice, 4));
  });
  return { slabs, solids: solids(dice.many(0, 5, () => latticeBox(dice, 200, 1_200))) };
};

export const hardlyAnything: Family = (dice) => ({
  slabs: dice.chance(0.5) ? [] : [slabOf(dice, room(dice))],
  solids: solids(dice.many(0, 1, () => rectangle(-1_000, -1_000, 20_000, 20_000))),
  zones: patches(
    'z',
    dice.many(0, 2, () => latticeBox(dice, 500, 2_000)),
  ),
  lines: dice.many(0, 2, (i) => ({ id: `c${i}`, path: line(dice, dice.whole(0, 2)) })),
});

/** Necks of just the width that machines of plan.ts need, or a hair beside it. */
export const exactNecks: Family = (dice) => {
  const neck = dice.pick([125, 175, 250, 350, 600, 700, 900]) + dice.pick([0, 0, 0.5, -0.5, -1, 1, dice.tiny(-9, -1)]);
  const [width, height] = [8_000, 5_000];
  const ring: Ring = [
    [0, 0],
    [3_000, 0],
    [3_000, 2_000],
    [4_000, 2_000],
    [4_000, 0],
    [width, 0],
    [width, height],
    [4_000, height],
    [4_000, 2_000 + neck],
    [3_000, 2_000 + neck],
    [3_000, height],
    [0, height],
  ];
  const entrance = { id: 'e0', at: [1_000, 1_000] as Point, widthMm: null, heightMm: null };
  const boxes = [
    rectangle(5_000, 1_000, 400, 400),
    rectangle(5_400 + neck, 1_000, 400, 400),
    rectangle(neck, 3_000, 500, 500),
  ];
  return { slabs: [slabOf(dice, ring)], solids: solids(boxes), entrances: dice.chance(0.6) ? [entrance] : [] };
};

export const outOfScopeAreas: Family = (dice) => ({
  slabs: [slabOf(dice, room(dice))],
  outOfScope: patches(
    'o',
    dice.many(1, 4, () => latticeBox(dice, 500, 4_000)),
  ),
  solids: solids(
    dice.many(0, 4, () => latticeBox(dice, 200, 1_200)),
    dice,
  ),
  walls: dice.many(0, 2, (i) => wallOf(dice, `w${i}`)),
});

export const brokenRecords: Family = (dice) => {
  const bad = (): number => dice.pick([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]);
  const broken = (ring: Ring): Ring => ring.map((at, i) => (i === 1 ? [bad(), at[1]] : at));
  const slab = slabOf(dice, room(dice));
  return {
    slabs: [dice.chance(0.3) ? { ...slab, faces: slab.faces.slice(1) } : slab, slabOf(dice, broken(room(dice)), 's1')],
    solids: solids([broken(latticeBox(dice, 200, 900)), latticeBox(dice, 200, 900), [], [[1_000, 1_000]]]),
    zones: patches('z', [latticeBox(dice, 900, 4_000), broken(latticeBox(dice, 900, 4_000))]),
    lines: [
      { id: 'c0', path: [somewhere(dice), [bad(), 0]] },
      { id: 'c1', path: dice.chance(0.5) ? [] : line(dice) },
    ],
    entrances: [{ id: 'e0', at: [bad(), 0], widthMm: null, heightMm: null }],
    restMachine: dice.pick(['nowhere', 'm0']),
  };
};
