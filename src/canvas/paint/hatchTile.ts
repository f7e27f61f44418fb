import type { Point } from '../../geometry/floorShape.ts';
import type { Texture } from './prim.ts';

/**
 * The hatch of a profile: rows of teeth, coarser as the floor gets rougher. Per CSP 1 to 10: row pitch,
 * tooth width, tooth height and stroke, px. Even numbers lean 45 degrees, so that neighbours never look alike.
 */
const ROWS: readonly (readonly [pitch: number, tooth: number, height: number, stroke: number])[] = [
  [5, 8, 0, 0.7],
  [6, 8, 1.2, 0.8],
  [8, 8, 2.6, 0.95],
  [9.5, 9, 3.4, 1.1],
  [12, 11, 5, 1.25],
  [14, 12, 6, 1.45],
  [17, 15, 8.5, 1.7],
  [20, 17, 10, 2],
  [24, 21, 13, 2.3],
  [30, 26, 17, 2.8],
];

/** One tile that repeats in both directions, px. */
export interface HatchTile {
  readonly width: number;
  readonly height: number;
  /** Runs over both sides of the tile, so that the joins do not show. */
  readonly path: readonly Point[];
  readonly stroke: number;
  readonly leanDeg: 0 | -45;
}

export function hatchTile(csp: number): HatchTile {
  const number = Math.min(10, Math.max(1, Math.round(csp)));
  const [pitch, tooth, height, stroke] = ROWS[number - 1] ?? [8, 8, 2.6, 0.95];
  const low = pitch / 2 + height / 2;
  const high = pitch / 2 - height / 2;
  return {
    width: tooth,
    height: pitch,
    path: [
      [-tooth / 2, low],
      [0, high],
      [tooth / 2, low],
      [tooth, high],
      [tooth * 1.5, low],
    ],
    stroke,
    leanDeg: number % 2 === 0 ? -45 : 0,
  };
}

export interface TextureTile {
  readonly width: number;
  readonly height: number;
  readonly filled: readonly (readonly Point[])[];
  readonly strokes: readonly (readonly Point[])[];
  readonly stroke: number;
}

function box(x: number, y: number, w: number, h: number): readonly Point[] {
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
}

/** Upright bars side by side, in two rows that stand between each other: rows of teeth run across them and both stay readable. */
function bars(count: number): TextureTile {
  const [width, height, apart, long] = [24 + 8 * (count - 1), 26, 4, 8];
  const upright = (x: number, y: number): readonly Point[] => [
    [x, y],
    [x, y + long],
  ];
  const strokes = Array.from({ length: count }, (_, i) => [
    upright(width / 4 + (i - (count - 1) / 2) * apart, 2.5),
    upright((3 * width) / 4 + (i - (count - 1) / 2) * apart, 2.5 + height / 2),
  ]);
  return { width, height, filled: [], strokes: strokes.flat(), stroke: 1.8 };
}

/** Textures of findings, of machines that follow and of floor that is not worked, px. */
export const TEXTURE_TILES: Readonly<Record<Texture, TextureTile>> = {
  bar: bars(1),
  twoBars: bars(2),
  threeBars: bars(3),
  dots: { width: 9, height: 9, filled: [box(1, 1, 2.2, 2.2), box(5.5, 5.5, 2.2, 2.2)], strokes: [], stroke: 0 },
  bricks: {
    width: 8,
    height: 8,
    filled: [box(1, 1.2, 4.6, 1.8), box(5, 5.2, 3, 1.8), box(0, 5.2, 1.6, 1.8)],
    strokes: [],
    stroke: 0,
  },
  nicks: {
    width: 14,
    height: 12,
    filled: [],
    strokes: [
      [
        [1.5, 5],
        [3.5, 1.5],
        [5.5, 5],
      ],
      [
        [8.5, 11],
        [10.5, 7.5],
        [12.5, 11],
      ],
    ],
    stroke: 1.2,
  },
  crosses: {
    width: 18,
    height: 18,
    filled: [],
    strokes: [
      [
        [2, 2],
        [7, 7],
      ],
      [
        [7, 2],
        [2, 7],
      ],
      [
        [11, 11],
        [16, 16],
      ],
      [
        [16, 11],
        [11, 16],
      ],
    ],
    stroke: 1.3,
  },
  slant: {
    width: 9,
    height: 9,
    filled: [],
    strokes: [
      [
        [-1, 10],
        [10, -1],
      ],
      [
        [-1, 1],
        [1, -1],
      ],
      [
        [8, 10],
        [10, 8],
      ],
    ],
    stroke: 1.1,
  },
};
