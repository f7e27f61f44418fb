import fc from 'fast-check';
import type { Point, Region, Ring } from '../../src/geometry/floorShape.ts';
import { rectangle, turned } from './floors.ts';

/** Machine fields for tests of lanes: plain, invented, in mm. */

/** A hall with columns that stand about where a grid has them, each turned in its own way. */
export interface Hall {
  readonly width: number;
  readonly depth: number;
  readonly columns: readonly { readonly size: number; readonly turn: number; readonly off: Point }[];
  readonly across: number;
}

export const anyHall: fc.Arbitrary<Hall> = fc
  .record({
    across: fc.integer({ min: 2, max: 6 }),
    down: fc.integer({ min: 2, max: 6 }),
    bay: fc.integer({ min: 7000, max: 9000 }),
  })
  .chain(({ across, down, bay }) =>
    fc.record({
      width: fc.constant((across + 1) * bay),
      depth: fc.constant((down + 1) * bay),
      across: fc.constant(across),
      columns: fc.array(
        fc.record({
          size: fc.integer({ min: 300, max: 900 }),
          turn: fc.double({ min: 0, max: 1.5, noNaN: true }),
          off: fc.tuple(fc.integer({ min: -2000, max: 2000 }), fc.integer({ min: -2000, max: 2000 })),
        }),
        { minLength: across * down, maxLength: across * down },
      ),
    }),
  );

export function hallField({ width, depth, columns, across }: Hall): Region {
  const bay = width / (across + 1);
  const holes = columns.map(({ size, turn, off }, i): Ring => {
    const at: Point = [((i % across) + 1) * bay + off[0], (Math.floor(i / across) + 1) * bay + off[1]];
    return rectangle(-size / 2, -size / 2, size, size).map((corner) => {
      const [x, y] = turned(corner, turn);
      return [x + at[0], y + at[1]] as const;
    });
  });
  return [[rectangle(0, 0, width, depth), ...holes]];
}

export function mappedRegion(region: Region, map: (at: Point) => Point): Region {
  return region.map((rings) => rings.map((ring) => ring.map(map)));
}
