import type { Point, Ring } from '../../src/geometry/floorShape.ts';
import type { Dice } from './dice.ts';

/** Rings as nobody would draw them on purpose. */

/** Two corners change places: the outline crosses itself. */
export function bowTie(dice: Dice, ring: Ring): Ring {
  const i = dice.whole(0, ring.length - 1);
  const j = (i + 1) % ring.length;
  return ring.map((at, k) => (k === i ? (ring[j] ?? at) : k === j ? (ring[i] ?? at) : at));
}

/** Out from a corner to somewhere and straight back. */
export function spiked(dice: Dice, ring: Ring): Ring {
  const i = dice.whole(0, ring.length - 1);
  const at = ring[i] ?? [0, 0];
  const tip: Point = [at[0] + dice.step(-2_000, 2_000), at[1] + dice.step(-2_000, 2_000)];
  return [...ring.slice(0, i + 1), tip, at, ...ring.slice(i + 1)];
}

/** Along an edge, back over half of it, and on. */
export function doubledBack(dice: Dice, ring: Ring): Ring {
  const i = dice.whole(0, ring.length - 1);
  const a = ring[i] ?? [0, 0];
  const b = ring[(i + 1) % ring.length] ?? a;
  const share = dice.pick([0.5, 0.25, dice.next()]);
  const back: Point = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  return [...ring.slice(0, i + 1), b, back, ...ring.slice(i + 1)];
}

/** A ring with no area: all corners on one line or in one point. */
export function flat(dice: Dice): Ring {
  const at: Point = [dice.step(0, 6_000), dice.step(0, 6_000)];
  const run: Point = dice.pick([
    [0, 0],
    [dice.step(100, 3_000), 0],
    [0, dice.step(100, 3_000)],
    [dice.step(100, 2_000), dice.step(100, 2_000)],
  ]);
  const shares = dice.pick([
    [0, 1],
    [0, 0.5, 1],
    [0, 1, 0.25, 0.75],
    [0, 0, 1, 1],
  ]);
  return shares.map((share): Point => [at[0] + run[0] * share, at[1] + run[1] * share]);
}

/** Corners twice or thrice, the first again at the end. */
export function repeated(dice: Dice, ring: Ring): Point[] {
  const twice = ring.flatMap((at) => (dice.chance(0.4) ? [at, at] : dice.chance(0.1) ? [at, at, at] : [at]));
  return dice.chance(0.4) ? [...twice, ...ring.slice(0, 1)] : twice;
}

/** More corners on each edge, a hair off it. */
export function wavering(dice: Dice, ring: Ring): Ring {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    const shares = dice.many(0, 3, () => dice.next()).toSorted((x, y) => x - y);
    const between = shares.map((share): Point => {
      const off = dice.tiny(-12, -3);
      return [a[0] + (b[0] - a[0]) * share + off, a[1] + (b[1] - a[1]) * share - off * dice.next()];
    });
    return [a, ...between];
  });
}
