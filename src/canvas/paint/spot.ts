import type { Point } from '../../geometry/floorShape.ts';
import { minus } from '../../geometry/point.ts';
import type { Held } from '../../model/doc.ts';
import { LINE } from '../look.ts';
import type { Paint } from './prim.ts';

/** Degrees of a direction on the plan, for turning marks drawn pointing right. */
export function degreesOf(run: Point): number {
  return (Math.atan2(run[1], run[0]) * 180) / Math.PI;
}

/** Where machines come in: an arrow that points to the floor. */
export const paintEntrance: Paint<Held<'entrance'>, { readonly towards: Point }> = (entrance, { towards }) => [
  {
    kind: 'mark',
    at: entrance.at,
    paths: [
      [
        [14, 0],
        [-6, -11],
        [-6, -4],
        [-20, -4],
        [-20, 4],
        [-6, 4],
        [-6, 11],
      ],
    ],
    ink: 'ink',
    px: 0,
    filled: true,
    turnDeg: degreesOf(minus(towards, entrance.at)),
  },
];

export const paintReading: Paint<Held<'reading'>> = (reading) => [
  {
    kind: 'mark',
    at: reading.at,
    paths: [
      [
        [-7, 0],
        [7, 0],
      ],
      [
        [0, -7],
        [0, 7],
      ],
    ],
    ink: 'slab',
    px: 6,
  },
  {
    kind: 'mark',
    at: reading.at,
    paths: [
      [
        [-7, 0],
        [7, 0],
      ],
      [
        [0, -7],
        [0, 7],
      ],
    ],
    ink: 'ink',
    px: LINE.item,
  },
];

/** A speech corner whose tip stands at the place. */
export const paintNote: Paint<Held<'note'>> = (note) => [
  {
    kind: 'mark',
    at: note.at,
    paths: [
      [
        [0, 0],
        [0, -20],
        [20, -20],
        [20, -7],
        [7, -7],
      ],
    ],
    ink: 'board',
    px: 0,
    filled: true,
  },
  {
    kind: 'mark',
    at: note.at,
    paths: [
      [
        [0, 0],
        [0, -20],
        [20, -20],
        [20, -7],
        [7, -7],
        [0, 0],
      ],
    ],
    ink: 'ink',
    px: 2,
  },
];

export const paintPhoto: Paint<Held<'photo'>> = (photo) => [
  {
    kind: 'mark',
    at: photo.at,
    paths: [
      [
        [0, 0],
        [-10, -18],
        [10, -18],
      ],
    ],
    ink: 'board',
    px: 0,
    filled: true,
  },
  {
    kind: 'mark',
    at: photo.at,
    paths: [
      [
        [0, 0],
        [-10, -18],
        [10, -18],
        [0, 0],
      ],
    ],
    ink: 'ink',
    px: 2,
  },
];

export const paintService: Paint<Held<'service'>> = (service) => [
  {
    kind: 'mark',
    at: service.at,
    paths: [
      [
        [-8, -8],
        [8, -8],
        [8, 8],
        [-8, 8],
      ],
    ],
    ink: 'board',
    px: 0,
    filled: true,
  },
  {
    kind: 'mark',
    at: service.at,
    paths: [
      [
        [-8, -8],
        [8, -8],
        [8, 8],
        [-8, 8],
        [-8, -8],
      ],
      [
        [-4, 0],
        [4, 0],
      ],
    ],
    ink: 'ink',
    px: 2,
  },
];
