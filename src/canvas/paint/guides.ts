import type { Point } from '../../geometry/floorShape.ts';
import { boxOf } from '../../geometry/box.ts';
import { between, minus } from '../../geometry/point.ts';
import { FINGER, LINE } from '../look.ts';
import type { Prim } from './prim.ts';
import { degreesOf } from './spot.ts';
import { textWidth } from './textWidth.ts';

/** The line under the hand. `path` ends at the point that is being set. */
export function liveLine(path: readonly Point[], closed = false): Prim[] {
  if (path.length < 2) return [];
  return [{ kind: 'line', path, closed, ink: 'chalk', px: LINE.live, haloPx: 2 }];
}

/** Points that have been set and can still be taken back. */
export function livePoints(path: readonly Point[]): Prim[] {
  return path.map((at) => ({
    kind: 'mark',
    at,
    paths: [
      [
        [-4, -4],
        [4, -4],
        [4, 4],
        [-4, 4],
      ],
    ],
    ink: 'chalk',
    px: 0,
    filled: true,
  }));
}

/** Lines along which the point lies: thin and dashed, in chalk. */
export function guideLines(guides: readonly (readonly [Point, Point])[]): Prim[] {
  return guides.map((path) => ({ kind: 'line', path, ink: 'chalk', px: LINE.thin, dashPx: [4, 4] }));
}

const TICK_LENGTH = 22;
const TICK_WIDTH = 6;
const TICK_HALO = 2.5;
const REASON_PX = 17;
const WORD_OFF_PX = 16;

function bar(length: number, width: number): readonly Point[] {
  const l = length / 2;
  const w = width / 2;
  return [
    [-l, -w],
    [l, -w],
    [l, w],
    [-l, w],
  ];
}

export interface TickWord {
  readonly reason: string;
  /** Above the tick: a finger or the rim of the view is below. */
  readonly above: boolean;
  /** Left of it: the rim of the view is at its right. */
  readonly left: boolean;
}

/** How far a reason reaches from its tick, px. */
export function tickReachPx(reason: string): number {
  return WORD_OFF_PX + textWidth(reason, REASON_PX) + 4;
}

/** The chalk tick: a bar across the live line, along what was met, with its reason in a word. */
export function chalkTick(at: Point, along: Point | null, { reason, above, left }: TickWord): Prim[] {
  const turnDeg = along ? degreesOf(along) : 0;
  const halo = bar(TICK_LENGTH + 2 * TICK_HALO, TICK_WIDTH + 2 * TICK_HALO);
  return [
    { kind: 'mark', at, paths: [halo], ink: 'slab', px: 0, filled: true, turnDeg },
    { kind: 'mark', at, paths: [bar(TICK_LENGTH, TICK_WIDTH)], ink: 'chalk', px: 0, filled: true, turnDeg },
    {
      kind: 'text',
      at,
      text: reason,
      px: REASON_PX,
      weight: 800,
      ink: 'chalk',
      align: left ? 'right' : 'left',
      halo: 'slab',
      offsetPx: [left ? -WORD_OFF_PX : WORD_OFF_PX, above ? -24 : 26],
    },
  ];
}

function circle(radius: number, dx: number, dy: number): readonly Point[] {
  return Array.from({ length: 49 }, (_, i): Point => {
    const angle = (i * Math.PI) / 24;
    return [dx + Math.cos(angle) * radius, dy + Math.sin(angle) * radius];
  });
}

/** A length that is known on a page: an ink line with a tick across each end, its words beside its middle. */
export function knownLine([from, to]: readonly [Point, Point], words: string): Prim[] {
  const turnDeg = degreesOf(minus(to, from));
  const upright = Math.abs(turnDeg % 180) > 45 && Math.abs(turnDeg % 180) < 135;
  const end = (at: Point): Prim => ({
    kind: 'mark',
    at,
    paths: [
      [
        [0, -9],
        [0, 9],
      ],
    ],
    ink: 'ink',
    px: 3,
    turnDeg,
  });
  return [
    { kind: 'line', path: [from, to], ink: 'ink', px: 2, haloPx: 2 },
    end(from),
    end(to),
    {
      kind: 'text',
      at: between(from, to, 0.5),
      text: words,
      px: 16,
      weight: 800,
      ink: 'ink',
      halo: 'slab',
      align: upright ? 'left' : 'middle',
      offsetPx: upright ? [12, 6] : [0, 22],
    },
  ];
}

/** Where a line crosses itself: a ring about the place. */
export function crossingMark(at: Point): Prim[] {
  const ring = circle(18, 0, 0);
  return [
    { kind: 'mark', at, paths: [ring], ink: 'slab', px: 8 },
    { kind: 'mark', at, paths: [ring], ink: 'ink', px: 4 },
  ];
}

/** The place that is meant: a cross. Under a finger also the contact ring and the stem that joins them. */
export function handPoint(at: Point, finger: boolean): Prim[] {
  const cross: Prim = {
    kind: 'mark',
    at,
    paths: [
      [
        [-12, 0],
        [12, 0],
      ],
      [
        [0, -12],
        [0, 12],
      ],
    ],
    ink: 'chalk',
    px: 3,
  };
  if (!finger) return [cross];
  const radius = FINGER.ringPx / 2;
  const ring = circle(radius, 0, FINGER.abovePx);
  return [
    {
      kind: 'mark',
      at,
      paths: [
        [
          [0, 6],
          [0, FINGER.abovePx - radius],
        ],
      ],
      ink: 'chalk',
      px: 2,
      dashPx: [4, 4],
    },
    { kind: 'mark', at, paths: [ring], ink: 'chalk', px: 0, filled: true, opacity: 0.2 },
    { kind: 'mark', at, paths: [ring], ink: 'chalk', px: 2 },
    cross,
  ];
}

/** The one selection box. Dashed when it also takes what it only touches. */
export function selectionBox(from: Point, to: Point, touchingToo: boolean): Prim[] {
  const box = boxOf([from, to]);
  const ring = [
    [box.minX, box.minY],
    [box.maxX, box.minY],
    [box.maxX, box.maxY],
    [box.minX, box.maxY],
  ] as const;
  return [
    { kind: 'area', region: [[ring]], fill: 'chalkWash', opacity: 0.35 },
    { kind: 'line', path: ring, closed: true, ink: 'chalk', px: 2, ...(touchingToo ? { dashPx: [6, 4] } : {}) },
  ];
}
