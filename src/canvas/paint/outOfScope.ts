import type { Held } from '../../model/doc.ts';
import type { Paint } from './prim.ts';

export const paintOutOfScope: Paint<Held<'outOfScope'>> = (area) => [
  { kind: 'area', region: [[area.ring]], fill: 'ground' },
  { kind: 'area', region: [[area.ring]], fill: null, texture: 'slant', opacity: 0.5 },
  { kind: 'line', path: area.ring, closed: true, ink: 'ink', px: 2, dashPx: [6, 4] },
];
