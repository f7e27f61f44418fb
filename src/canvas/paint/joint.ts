import type { Held } from '../../model/doc.ts';
import { HALO_PX, LINE } from '../look.ts';
import type { LinePrim, Paint } from './prim.ts';

const ISOLATION_HALF_PX = 4;

/** Control: dash and dot. Construction: long dashes, heavier. Isolation: two lines, as it goes through the slab. */
export const paintJoint: Paint<Held<'joint'>> = (joint) => {
  const line: LinePrim = { kind: 'line', path: joint.path, ink: 'ink', px: LINE.thin, haloPx: HALO_PX };
  if (joint.kind === 'control') return [{ ...line, dashPx: [16, 5, 3, 5] }];
  if (joint.kind === 'construction') return [{ ...line, px: 2, dashPx: [26, 7] }];
  const body = 2 * ISOLATION_HALF_PX + 2 * HALO_PX;
  return [
    { kind: 'line', path: joint.path, ink: 'slab', px: body },
    { kind: 'line', path: joint.path, ink: 'ink', px: LINE.thin, shiftPx: ISOLATION_HALF_PX },
    { kind: 'line', path: joint.path, ink: 'ink', px: LINE.thin, shiftPx: -ISOLATION_HALF_PX },
  ];
};
