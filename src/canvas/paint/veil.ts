import type { Point, Ring } from '../../geometry/floorShape.ts';
import { formRing } from '../../geometry/formRing.ts';
import { LINE } from '../look.ts';
import { painted, type Painted } from './kept.ts';
import type { PlanView } from './view.ts';

/** What lies under the veil shows through: it says where a thing was. */
const VEIL_OPACITY = 0.82;

/**
 * Lies over what a picture of the floor still shows and the plan no longer has there: things that are being carried,
 * or are gone. Slabs, zones and walls have none; their new lines say enough.
 */
export function paintVeil(gone: PlanView): readonly Painted[] {
  const over = (id: string, ring: Ring): Painted =>
    painted(id, [
      { kind: 'area', region: [[ring]], fill: 'slab', opacity: VEIL_OPACITY },
      // Outlines reach beyond their ring by half of their line.
      { kind: 'line', path: ring, closed: true, ink: 'slab', px: LINE.edge },
    ]);
  const along = (id: string, path: readonly Point[]): Painted =>
    painted(id, [{ kind: 'line', path, ink: 'slab', px: 2 * LINE.item }]);
  return [
    ...gone.obstructions.map(({ id, shape }) => over(id, formRing(shape))),
    ...[...gone.findings, ...gone.outOfScope, ...gone.steps].map(({ id, ring }) => over(id, ring)),
    ...[...gone.cracks, ...gone.joints].map(({ id, path }) => along(id, path)),
  ];
}
