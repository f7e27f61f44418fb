import type { Point, Ring } from '../../geometry/floorShape.ts';
import { boxOf } from '../../geometry/box.ts';
import { formRing } from '../../geometry/formRing.ts';
import { between } from '../../geometry/point.ts';
import { ringContains, signedArea } from '../../geometry/ring.ts';
import { crossing } from '../../geometry/segment.ts';
import type { Held } from '../../model/doc.ts';
import { LINE } from '../look.ts';
import type { Paint, Prim } from './prim.ts';

/** Parts of a segment that lie inside a ring. */
export function insideRing(from: Point, to: Point, ring: Ring): (readonly [Point, Point])[] {
  const shares = [0, 1];
  for (const [i, a] of ring.entries()) {
    const meet = crossing(from, to, a, ring[(i + 1) % ring.length] as Point);
    if (meet) shares.push(meet.shareA);
  }
  shares.sort((a, b) => a - b);
  const parts: (readonly [Point, Point])[] = [];
  for (let i = 1; i < shares.length; i += 1) {
    const start = shares[i - 1] as number;
    const end = shares[i] as number;
    if (end - start < 1e-9 || !ringContains(ring, between(from, to, (start + end) / 2))) continue;
    parts.push([between(from, to, start), between(from, to, end)]);
  }
  return parts;
}

/** Both diagonals: of the four corners where there are four, else of the box, cut at the outline. */
function crossOf(ring: Ring): (readonly [Point, Point])[] {
  const [a, b, c, d] = ring;
  if (ring.length === 4 && a && b && c && d)
    return [
      [a, c],
      [b, d],
    ];
  const box = boxOf(ring);
  return [
    ...insideRing([box.minX, box.minY], [box.maxX, box.maxY], ring),
    ...insideRing([box.minX, box.maxY], [box.maxX, box.minY], ring),
  ];
}

const CROSS_PX = 1.2;
const UPSTAND_PX = 1.6;
const SOLID = new Set(['column', 'pier', 'post']);

function outline(ring: Ring, dashed: boolean): Prim {
  return { kind: 'line', path: ring, closed: true, ink: 'ink', px: LINE.item, ...(dashed ? { dashPx: [6, 4] } : {}) };
}

/** Columns, piers and posts solid; equipment, islands and platforms a crossed box; a pit is shaded, a drain has a grate. */
export const paintObstruction: Paint<Held<'obstruction'>> = (obstruction) => {
  const ring = formRing(obstruction.shape);
  const region = [[ring]];
  const upstand: Prim[] = obstruction.upstand
    ? [
        {
          kind: 'line',
          path: ring,
          closed: true,
          ink: 'ink',
          px: UPSTAND_PX,
          shiftPx: signedArea(ring) >= 0 ? LINE.wall : -LINE.wall,
        },
      ]
    : [];
  if (obstruction.under === 'clearedBefore')
    return [{ kind: 'area', region, fill: null, texture: 'slant', opacity: 0.4 }, outline(ring, true)];
  if (SOLID.has(obstruction.kind))
    return [
      { kind: 'area', region, fill: 'ink' },
      { kind: 'line', path: ring, closed: true, ink: 'ink', px: LINE.thin },
      ...upstand,
    ];
  if (obstruction.kind === 'pit')
    return [
      { kind: 'area', region, fill: 'board' },
      { kind: 'area', region, fill: null, texture: 'slant' },
      outline(ring, false),
      ...upstand,
    ];
  const cross = crossOf(ring).map((path): Prim => ({ kind: 'line', path, ink: 'ink', px: CROSS_PX }));
  if (obstruction.kind === 'drain') return [{ kind: 'area', region, fill: 'board' }, outline(ring, false), ...cross];
  return [{ kind: 'area', region, fill: 'board' }, outline(ring, obstruction.under === 'byHand'), ...cross, ...upstand];
};
