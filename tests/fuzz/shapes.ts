import type { FaceKind, Point, Ring, SlabShape, SolidShape, WallShape } from '../../src/geometry/floorShape.ts';
import { rectangle } from '../support/floors.ts';
import type { Dice } from './dice.ts';

/** What families of plans are put together from. Lengths in mm. */

/** A room of a few metres with its first corner in the origin, most corners on a lattice of 500 mm. */
export function room(dice: Dice): Ring {
  const [width, height] = [dice.step(2_000, 9_000, 500), dice.step(2_000, 8_000, 500)];
  const kind = dice.whole(0, 4);
  if (kind <= 1) return rectangle(0, 0, width, height);
  const [cutX, cutY] = [dice.step(500, width - 500, 500), dice.step(500, height - 500, 500)];
  if (kind === 2) {
    return [
      [0, 0],
      [width, 0],
      [width, cutY],
      [cutX, cutY],
      [cutX, height],
      [0, height],
    ];
  }
  if (kind === 3) {
    const [from, to] = [cutX / 3, (cutX * 2) / 3];
    return [
      [0, 0],
      [width, 0],
      [width, height],
      [to, height],
      [to, cutY],
      [from, cutY],
      [from, height],
      [0, height],
    ];
  }
  return star(dice, [width / 2, height / 2], Math.min(width, height) / 4, Math.min(width, height) / 2);
}

/** A ring round a middle, with corners at odd angles and distances; it never crosses itself. */
export function star(dice: Dice, [x, y]: Point, leastMm: number, mostMm: number, corners = dice.whole(3, 9)): Ring {
  const start = dice.between(0, 1);
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = ((i + start) / corners) * 2 * Math.PI;
    const far = dice.between(leastMm, mostMm);
    return [x + far * Math.cos(angle), y + far * Math.sin(angle)];
  });
}

export function round([x, y]: Point, radiusMm: number, corners: number): Ring {
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = (i / corners) * 2 * Math.PI;
    return [x + radiusMm * Math.cos(angle), y + radiusMm * Math.sin(angle)];
  });
}

/** A box on the lattice of 50 mm, somewhere over a room and a little beside it. */
export function latticeBox(dice: Dice, leastMm: number, mostMm: number): Ring {
  return rectangle(
    dice.step(-1_000, 8_000),
    dice.step(-1_000, 7_000),
    dice.step(leastMm, mostMm),
    dice.step(leastMm, mostMm),
  );
}

export function somewhere(dice: Dice): Point {
  return [dice.step(-1_500, 9_500), dice.step(-1_500, 8_500)];
}

export function solids(rings: readonly Ring[], dice?: Dice): SolidShape[] {
  return rings.map((ring, i) => ({ id: `b${i}`, ring, solid: dice ? dice.chance(0.9) : true }));
}

export function patches(letter: string, rings: readonly Ring[]): { id: string; ring: Ring }[] {
  return rings.map((ring, i) => ({ id: `${letter}${i}`, ring }));
}

export function anyFaces(dice: Dice, count: number): FaceKind[] {
  return Array.from({ length: count }, () => dice.pick<FaceKind>(['wall', 'wall', 'wall', 'stop', 'run', 'drop']));
}

export function slabOf(
  dice: Dice,
  ring: Ring,
  id = 's0',
  faces: readonly FaceKind[] = ring.map(() => 'wall'),
): SlabShape {
  const passages = ring.map((_, i) =>
    faces[i] !== 'wall' && dice.chance(0.3)
      ? { id: `${id}door${i}`, widthMm: dice.step(400, 3_000), heightMm: dice.pick([null, null, 1_000, 2_100]) }
      : null,
  );
  return { id, ring, faces, passages };
}

/** A wall along x or y with gaps, some of them at its ends, beyond them or over each other. */
export function wallOf(dice: Dice, id: string): WallShape {
  const [x, y, length, thick] = [
    dice.step(-500, 6_000),
    dice.step(-500, 6_000),
    dice.step(500, 7_000),
    dice.pick([50, 100, 150, 300]),
  ];
  const isAcross = dice.chance(0.5);
  const piece = (from: number, size: number): Ring =>
    isAcross ? rectangle(x + from, y, size, thick) : rectangle(x, y + from, thick, size);
  const gaps = dice.many(0, 3, (i) => {
    const width = dice.step(100, 1_500);
    const from = dice.pick([0, length - width, dice.step(-500, length), dice.between(0, length)]);
    const stated = dice.pick([width, width, 300, 5_000]);
    return {
      passage: { id: `${id}d${i}`, widthMm: stated, heightMm: dice.pick([null, null, null, 900]) },
      ring: piece(from, width),
    };
  });
  return { id, body: piece(0, length), gaps };
}

/** A line of a few legs. */
export function line(dice: Dice, points = dice.whole(2, 5)): Point[] {
  return Array.from({ length: points }, () => somewhere(dice));
}
