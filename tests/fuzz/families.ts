import type { FloorShape, Point, Ring } from '../../src/geometry/floorShape.ts';
import { rectangle } from '../support/floors.ts';
import type { Dice } from './dice.ts';
import { anyFaces, latticeBox, line, patches, room, round, slabOf, solids, somewhere, star, wallOf } from './shapes.ts';
import { bowTie, doubledBack, flat, repeated, spiked, wavering } from './spoilt.ts';

/*
 * Plans that are hard to measure, one family a kind of trouble. A family says what is drawn; machines, and what it
 * leaves out, come from plan.ts, which may also turn the plan, put it far away or shake it by 1e-9 mm.
 */
export interface Drawn extends Partial<Omit<FloorShape, 'zones' | 'machines'>> {
  readonly slabs: FloorShape['slabs'];
  readonly zones?: readonly { readonly id: string; readonly ring: Ring }[];
}

type Family = (dice: Dice) => Drawn;

const sharedEdges: Family = (dice) => ({
  slabs: [slabOf(dice, room(dice))],
  solids: solids(row(dice, 300, 900)),
  zones: patches('z', row(dice, 1_000, 4_000)),
  findings: patches('f', row(dice, 500, 2_000)),
});

/** Boxes side by side: each begins where the one before ended. */
function row(dice: Dice, leastMm: number, mostMm: number): Ring[] {
  let [x, y] = [dice.step(-500, 4_000), dice.step(-500, 6_000)];
  return dice.many(2, 6, () => {
    const [width, height] = [dice.step(leastMm, mostMm), dice.step(leastMm, mostMm)];
    const box = rectangle(x, y, width, height);
    if (dice.chance(0.7)) x += width;
    else y += height;
    return box;
  });
}

/** Corners in the middle of the edges of others. */
const teeJunctions: Family = (dice) => {
  const base = latticeBox(dice, 1_000, 3_000);
  const [[x, y] = [0, 0], , [right, bottom] = [0, 0]] = base;
  const on = (): Point =>
    dice.pick([
      [x, dice.step(y, bottom)],
      [dice.step(x, right), y],
      [right, dice.between(y, bottom)],
    ]);
  const boxes = dice.many(1, 5, () => {
    const [px, py] = on();
    return rectangle(px, py, dice.pick([-1, 1]) * dice.step(200, 1_500), dice.pick([-1, 1]) * dice.step(200, 1_500));
  });
  return {
    slabs: [slabOf(dice, room(dice))],
    solids: solids(dice.chance(0.5) ? [base, ...boxes] : boxes),
    zones: patches('z', dice.chance(0.5) ? [base, ...boxes] : [base]),
    lines: [{ id: 'c0', path: [on(), on(), somewhere(dice)] }],
  };
};

const nearCollinear: Family = (dice) => ({
  slabs: [slabOf(dice, wavering(dice, room(dice)))],
  solids: solids(dice.many(1, 6, () => wavering(dice, latticeBox(dice, 200, 1_500)))),
  zones: patches(
    'z',
    dice.many(0, 4, () => wavering(dice, latticeBox(dice, 1_000, 6_000))),
  ),
});

const duplicatePoints: Family = (dice) => ({
  slabs: [slabOf(dice, repeated(dice, room(dice)))],
  solids: solids(dice.many(1, 5, () => repeated(dice, latticeBox(dice, 200, 1_500)))),
  zones: patches(
    'z',
    dice.many(0, 3, () => repeated(dice, latticeBox(dice, 1_000, 6_000))),
  ),
  findings: patches(
    'f',
    dice.many(0, 3, () => repeated(dice, latticeBox(dice, 500, 3_000))),
  ),
  lines: dice.many(1, 3, (i) => ({ id: `c${i}`, path: repeated(dice, line(dice)) })),
});

const duplicateColumns: Family = (dice) => {
  const boxes = dice.many(1, 5, () => latticeBox(dice, 200, 1_200));
  const again = boxes.filter(() => dice.chance(0.7)).map((box) => (dice.chance(0.5) ? box.toReversed() : box));
  return { slabs: [slabOf(dice, room(dice))], solids: solids([...boxes, ...again], dice) };
};

/** Columns flush with the outline, across it, on its corners. */
const columnsOnOutline: Family = (dice) => {
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

const columnsOnWalls: Family = (dice) => {
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

const crossingOutlines: Family = (dice) => {
  const spoilt = (ring: Ring): Ring => dice.pick([bowTie, spiked, doubledBack])(dice, ring);
  return {
    slabs: [slabOf(dice, dice.chance(0.6) ? spoilt(room(dice)) : room(dice))],
    solids: solids(dice.many(1, 4, () => spoilt(latticeBox(dice, 300, 2_000)))),
    zones: patches(
      'z',
      dice.many(0, 3, () => spoilt(latticeBox(dice, 1_000, 6_000))),
    ),
    findings: patches(
      'f',
      dice.many(0, 3, () => spoilt(latticeBox(dice, 500, 4_000))),
    ),
  };
};

const flatRings: Family = (dice) => ({
  slabs: dice.chance(0.2)
    ? [slabOf(dice, flat(dice)), slabOf(dice, room(dice), 's1')]
    : [slabOf(dice, room(dice)), ...(dice.chance(0.5) ? [slabOf(dice, flat(dice), 's1')] : [])],
  solids: solids([...dice.many(1, 4, () => flat(dice)), latticeBox(dice, 200, 900)]),
  walls: dice.many(0, 2, (i) => ({ id: `w${i}`, body: flat(dice), gaps: [] })),
  zones: patches(
    'z',
    dice.many(0, 3, () => flat(dice)),
  ),
  findings: patches(
    'f',
    dice.many(0, 3, () => flat(dice)),
  ),
});

/** Floor, columns and zones from 1e-6 to 1 mm thin, and slits as thin between columns. */
const slivers: Family = (dice) => {
  const thin = (): number => Math.abs(dice.tiny(-6, 0));
  const sliver = (): Ring => {
    const [x, y] = somewhere(dice);
    const long = dice.step(200, 5_000);
    if (dice.chance(0.3))
      return [
        [x, y],
        [x + long, y + thin()],
        [x + long / 2, y + thin()],
      ];
    return dice.chance(0.5) ? rectangle(x, y, long, thin()) : rectangle(x, y, thin(), long);
  };
  const box = latticeBox(dice, 300, 1_500);
  const [[x, y] = [0, 0], [right] = [0, 0]] = box;
  return {
    slabs: [slabOf(dice, room(dice)), ...(dice.chance(0.3) ? [slabOf(dice, sliver(), 's1')] : [])],
    solids: solids([
      box,
      rectangle(right + thin(), y, 500, 700),
      rectangle(x, y - 400 - thin(), 300, 400),
      ...dice.many(0, 4, sliver),
    ]),
    zones: patches('z', dice.many(0, 4, sliver)),
    findings: patches('f', dice.many(0, 3, sliver)),
  };
};

const oddTurned: Family = (dice) => {
  const ring = room(dice);
  return {
    slabs: [slabOf(dice, ring, 's0', anyFaces(dice, ring.length))],
    solids: solids(dice.many(1, 9, () => latticeBox(dice, 200, 1_000))),
    walls: dice.many(0, 2, (i) => wallOf(dice, `w${i}`)),
  };
};

/** Rings within rings, some sharing a side or a corner with the next. */
const nested: Family = (dice) => {
  const [x, y] = [dice.step(0, 3_000), dice.step(0, 3_000)];
  const shrink = dice.step(50, 200);
  const [keepX, keepY] = [dice.chance(0.3), dice.chance(0.3)];
  const rings = dice.many(2, 8, (i) => {
    const size = 5_000 - 2 * i * shrink;
    const ring = rectangle(keepX ? x : x + i * shrink, keepY ? y : y + i * shrink, size, size);
    return dice.chance(0.5) ? ring.toReversed() : ring;
  });
  const split = dice.whole(0, 3);
  return {
    slabs: [slabOf(dice, room(dice)), ...(split === 3 ? rings.map((ring, i) => slabOf(dice, ring, `s${i + 1}`)) : [])],
    solids: solids(split === 0 ? rings.slice(1) : rings.slice(-1)),
    zones: patches('z', split === 1 ? rings : rings.slice(0, 2)),
    findings: patches('f', split === 2 ? rings : []),
  };
};

/** Slices about one corner. */
const oneCorner: Family = (dice) => {
  const [x, y] = [dice.step(1_000, 6_000), dice.step(1_000, 6_000)];
  const count = dice.whole(4, 24);
  const far = dice.step(300, 3_000);
  const at = (k: number): Point => [
    x + far * Math.cos((2 * Math.PI * k) / count),
    y + far * Math.sin((2 * Math.PI * k) / count),
  ];
  const slices = Array.from({ length: count }, (_, i): Ring => [[x, y], at(i), at(i + dice.pick([0.5, 1]))]);
  const cut = dice.whole(1, count - 1);
  return {
    slabs: [slabOf(dice, room(dice))],
    solids: solids(slices.slice(0, cut)),
    zones: patches('z', slices.slice(dice.chance(0.5) ? 0 : cut)),
    lines: [{ id: 'c0', path: [at(0), [x, y], at(count / 2)] }],
  };
};

/** A chequered floor: columns, and rooms, that touch in corners only. */
const touchingCorners: Family = (dice) => {
  const side = dice.step(200, 900);
  const [x, y] = [dice.step(0, 3_000), dice.step(0, 3_000)];
  const boxes = dice.many(3, 14, (i) => rectangle(x + (i % 4) * side, y + Math.floor(i / 4) * side, side, side));
  const isDark = (i: number): boolean => (i + Math.floor(i / 4)) % 2 === 0;
  const rooms = dice.chance(0.4)
    ? [slabOf(dice, rectangle(0, 0, 4_000, 4_000)), slabOf(dice, rectangle(4_000, 4_000, 3_000, 3_000), 's1')]
    : [slabOf(dice, room(dice))];
  return {
    slabs: rooms,
    solids: solids(boxes.filter((_, i) => isDark(i))),
    zones: patches(
      'z',
      boxes.filter((_, i) => !isDark(i)),
    ),
  };
};

const zonesEverywhere: Family = (dice) => {
  const ring = room(dice);
  const zones = dice.many(3, 12, () =>
    dice.pick([latticeBox(dice, 500, 6_000), star(dice, somewhere(dice), 300, 4_000), ring, ring.toReversed()]),
  );
  return { slabs: [slabOf(dice, ring)], zones: patches('z', zones), solids: solids([latticeBox(dice, 200, 900)]) };
};

const findingsOverlap: Family = (dice) => {
  const boxes = dice.many(3, 10, () =>
    dice.pick([latticeBox(dice, 300, 4_000), star(dice, somewhere(dice), 200, 2_500)]),
  );
  return {
    slabs: [slabOf(dice, room(dice))],
    findings: patches('f', [...boxes, ...boxes.slice(0, dice.whole(0, 2))]),
    zones: patches('z', boxes.slice(0, dice.whole(0, 3))),
  };
};

const cracksAlongEdges: Family = (dice) => {
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

const entrancesAnywhere: Family = (dice) => ({
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

const openEdges: Family = (dice) => {
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

const doorsAtEnds: Family = (dice) => ({
  slabs: [slabOf(dice, room(dice))],
  walls: dice.many(1, 5, (i) => wallOf(dice, `w${i}`)),
  zones: patches(
    'z',
    dice.many(0, 2, () => latticeBox(dice, 1_000, 6_000)),
  ),
});

/** Slabs side by side, over each other, one twice. */
const manySlabs: Family = (dice) => {
  let x = 0;
  const slabs = dice.many(2, 5, (i) => {
    const [width, height] = [dice.step(1_000, 5_000, 500), dice.step(1_000, 5_000, 500)];
    const ring = rectangle(x, dice.step(0, 1_000, 500), width, height);
    x += dice.pick([width, width, width - 500, 0]);
    return slabOf(dice, dice.chance(0.5) ? ring.toReversed() : ring, `s${i}`, anyFaces(dice, 4));
  });
  return { slabs, solids: solids(dice.many(0, 5, () => latticeBox(dice, 200, 1_200))) };
};

const hardlyAnything: Family = (dice) => ({
  slabs: dice.chance(0.5) ? [] : [slabOf(dice, room(dice))],
  solids: solids(dice.many(0, 1, () => rectangle(-1_000, -1_000, 20_000, 20_000))),
  zones: patches(
    'z',
    dice.many(0, 2, () => latticeBox(dice, 500, 2_000)),
  ),
  lines: dice.many(0, 2, (i) => ({ id: `c${i}`, path: line(dice, dice.whole(0, 2)) })),
});

const roundThings: Family = (dice) => {
  const side = dice.step(100, 500);
  const at: Point = [dice.step(500, 6_000), dice.step(500, 6_000)];
  const rings = [
    round(at, side, dice.whole(8, 40)),
    round([at[0] + 2 * side, at[1]], side, 16),
    ...dice.many(0, 4, () => round(somewhere(dice), dice.step(50, 800), dice.whole(5, 32))),
  ];
  const outline = dice.chance(0.3) ? round([4_000, 4_000], 4_000, dice.whole(12, 48)) : room(dice);
  return { slabs: [slabOf(dice, outline)], solids: solids(rings), findings: patches('f', [round(at, 3 * side, 24)]) };
};

/** Necks of just the width that machines of plan.ts need, or a hair beside it. */
const exactNecks: Family = (dice) => {
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

const outOfScopeAreas: Family = (dice) => ({
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

const brokenRecords: Family = (dice) => {
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

export const FAMILIES = {
  sharedEdges,
  teeJunctions,
  nearCollinear,
  duplicatePoints,
  duplicateColumns,
  columnsOnOutline,
  columnsOnWalls,
  crossingOutlines,
  flatRings,
  slivers,
  oddTurned,
  nested,
  oneCorner,
  touchingCorners,
  zonesEverywhere,
  findingsOverlap,
  cracksAlongEdges,
  entrancesAnywhere,
  openEdges,
  doorsAtEnds,
  manySlabs,
  hardlyAnything,
  roundThings,
  exactNecks,
  outOfScopeAreas,
  brokenRecords,
} as const satisfies Record<string, Family>;

export type FamilyName = keyof typeof FAMILIES;

export const FAMILY_NAMES = Object.keys(FAMILIES) as FamilyName[];
