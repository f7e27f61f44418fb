import type { Point, Ring } from '../../src/geometry/floorShape.ts';
import { rectangle } from '../support/floors.ts';
import type { Dice } from './dice.ts';
import type { Family } from './drawn.ts';
import { anyFaces, latticeBox, line, patches, room, round, slabOf, solids, somewhere, star } from './shapes.ts';
import { bowTie, doubledBack, flat, repeated, spiked, wavering } from './spoilt.ts';

/** Trouble with rings: how they are drawn and how they meet. */

export const sharedEdges: Family = (dice) => ({
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
export const teeJunctions: Family = (dice) => {
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

export const nearCollinear: Family = (dice) => ({
  slabs: [slabOf(dice, wavering(dice, room(dice)))],
  solids: solids(dice.many(1, 6, () => wavering(dice, latticeBox(dice, 200, 1_500)))),
  zones: patches(
    'z',
    dice.many(0, 4, () => wavering(dice, latticeBox(dice, 1_000, 6_000))),
  ),
});

export const duplicatePoints: Family = (dice) => ({
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

export const duplicateColumns: Family = (dice) => {
  const boxes = dice.many(1, 5, () => latticeBox(dice, 200, 1_200));
  const again = boxes.filter(() => dice.chance(0.7)).map((box) => (dice.chance(0.5) ? box.toReversed() : box));
  return { slabs: [slabOf(dice, room(dice))], solids: solids([...boxes, ...again], dice) };
};

export const crossingOutlines: Family = (dice) => {
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

export const flatRings: Family = (dice) => ({
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
export const slivers: Family = (dice) => {
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

/** Rings within rings, some sharing a side or a corner with the next. */
export const nested: Family = (dice) => {
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
export const oneCorner: Family = (dice) => {
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
export const touchingCorners: Family = (dice) => {
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

export const roundThings: Family = (dice) => {
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

/** A court: out along the outline, over a bridge round the hole and back over the same bridge. */
export const keyholes: Family = (dice) => {
  const [width, height] = [dice.step(4_000, 12_000), dice.step(4_000, 12_000)];
  const keyhole = (x: number, y: number, w: number, h: number): Ring => {
    const edge = dice.step(100, 1_500);
    const gap = dice.pick([0, 0, dice.tiny(-9, -3)]);
    return [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
      [x, y + edge + gap],
      [x + edge, y + edge + gap],
      [x + edge, y + h - edge],
      [x + w - edge, y + h - edge],
      [x + w - edge, y + edge],
      [x, y + edge],
    ];
  };
  return {
    slabs: [slabOf(dice, keyhole(0, 0, width, height))],
    solids: solids([keyhole(500, 500, 3_000, 3_000), latticeBox(dice, 200, 900)].slice(dice.whole(0, 2))),
    zones: patches('z', [keyhole(-500, -500, 6_000, 6_000)]),
    findings: patches('f', [keyhole(1_000, 1_000, 4_000, 4_000)]),
  };
};

/** Floors of a hair, and floors of hundreds of metres. */
export const extremeSizes: Family = (dice) => {
  const scale = 10 ** dice.pick([-6, -4, -3, -1, 1]);
  const scaled = (ring: Ring): Ring => ring.map(([x, y]): Point => [x * scale, y * scale]);
  return {
    slabs: [slabOf(dice, scaled(room(dice)))],
    solids: solids(dice.many(0, 3, () => scaled(latticeBox(dice, 200, 1_500)))),
    zones: patches(
      'z',
      dice.many(0, 2, () => scaled(latticeBox(dice, 1_000, 6_000))),
    ),
    lines: dice.many(0, 2, (i) => ({ id: `c${i}`, path: scaled(line(dice)) })),
  };
};

/** As many things as a small plan holds, wherever they fall. */
export const crowded: Family = (dice) => {
  const ring = room(dice);
  const any = (): Ring => dice.pick([latticeBox(dice, 100, 1_200), star(dice, somewhere(dice), 50, 800)]);
  return {
    slabs: [slabOf(dice, ring, 's0', anyFaces(dice, ring.length))],
    solids: solids(dice.many(6, 16, any), dice),
    zones: patches(
      'z',
      dice.many(1, 5, () => star(dice, somewhere(dice), 500, 5_000)),
    ),
    findings: patches(
      'f',
      dice.many(2, 6, () => star(dice, somewhere(dice), 200, 3_000)),
    ),
    lines: dice.many(2, 6, (i) => ({ id: `c${i}`, path: line(dice) })),
  };
};
