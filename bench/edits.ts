import type { FloorShape, Point, Ring } from '../src/geometry/floorShape.ts';

/** A thing that a hand drags: the shape after so many moves of it. What does not move stays the very same object. */
export interface Edit {
  readonly what: string;
  moved(shape: FloorShape, move: number): FloorShape;
}

/** 40 mm a move, to and fro over 2 m and a little aslant, as a hand goes. */
function offset(move: number): Point {
  const along = 40 * (50 - Math.abs((move % 100) - 50));
  return [along, 0.35 * along + (move % 7)];
}

export const EDITS: readonly Edit[] = [
  {
    what: 'crack point',
    moved: (shape, move) => ({
      ...shape,
      lines: oneChanged(shape.lines, middleOf(shape.lines), (line) => ({
        ...line,
        path: oneChanged(line.path, 2, (at) => plus(at, offset(move))),
      })),
    }),
  },
  {
    what: 'column',
    moved: (shape, move) => ({
      ...shape,
      solids: oneChanged(shape.solids, middleOf(shape.solids), (solid) => ({
        ...solid,
        ring: solid.ring.map((at) => plus(at, offset(move))),
      })),
    }),
  },
  {
    what: 'slab corner',
    moved: (shape, move) => ({
      ...shape,
      slabs: oneChanged(shape.slabs, 0, (slab) => ({ ...slab, ring: lastCornerMoved(slab.ring, move) })),
    }),
  },
];

/** The corner at the end of the last wall, pulled out of the floor and back. */
function lastCornerMoved(ring: Ring, move: number): Ring {
  const [x, y] = offset(move);
  return oneChanged(ring, ring.length - 1, (at) => plus(at, [-x, y]));
}

function middleOf(list: readonly unknown[]): number {
  return Math.floor(list.length / 2);
}

function plus(a: Point, b: Point): Point {
  return [a[0] + b[0], a[1] + b[1]];
}

function oneChanged<T>(list: readonly T[], at: number, change: (one: T) => T): T[] {
  return list.map((one, i) => (i === at ? change(one) : one));
}
