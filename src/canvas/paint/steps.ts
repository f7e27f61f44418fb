import type { Point } from '../../geometry/floorShape.ts';
import { between } from '../../geometry/point.ts';
import type { Held } from '../../model/doc.ts';
import { LINE } from '../look.ts';
import type { Paint, Prim } from './prim.ts';

/** Treads run along the first edge; an outline that is not four-sided shows only its edge. */
function treads(ring: readonly Point[], count: number): (readonly [Point, Point])[] {
  const [a, b, c, d] = ring;
  if (ring.length !== 4 || !a || !b || !c || !d) return [];
  return Array.from({ length: Math.max(0, count - 1) }, (_, i) => {
    const share = (i + 1) / count;
    return [between(a, d, share), between(b, c, share)] as const;
  });
}

export const paintSteps: Paint<Held<'steps'>> = (steps) => [
  { kind: 'area', region: [[steps.ring]], fill: 'board' },
  ...treads(steps.ring, Math.round(steps.count)).map((path): Prim => ({
    kind: 'line',
    path,
    ink: 'ink',
    px: LINE.thin,
  })),
  { kind: 'line', path: steps.ring, closed: true, ink: 'ink', px: LINE.item },
];
