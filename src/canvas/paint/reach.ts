import type { ZoneMeasure } from '../../geometry/floorShape.ts';
import { HATCH_OPACITY, LINE } from '../look.ts';
import type { Prim } from './prim.ts';

/** The strip is drawn true or this wide, whichever is more: half of the line falls under the wall. */
const STRIP_PX = 2 * LINE.edge;

/** What the machine works, and what is left for hand tools: chalk wash with the hatch, and solid ink. Cut-off floor is slanted and dashed. */
export function reachPrims(zone: ZoneMeasure, csp: number | null): Prim[] {
  const gaps = zone.tight.filter((piece) => piece.kind === 'gap');
  const cutOff = zone.tight.filter((piece) => piece.kind === 'cutOff');
  return [
    {
      kind: 'area',
      region: zone.field,
      fill: 'chalkWash',
      opacity: 1,
    },
    ...(csp === null ? [] : [{ kind: 'area', region: zone.field, fill: null, hatchCsp: Math.round(csp), opacity: HATCH_OPACITY.reach } as const]),
    { kind: 'area', region: zone.strip, fill: 'ink' },
    ...gaps.map((piece): Prim => ({ kind: 'area', region: piece.region, fill: 'ink' })),
    ...zone.faceLines
      .filter((face) => !face.hidden)
      .map((face): Prim => ({ kind: 'line', path: face.path, ink: 'ink', px: STRIP_PX })),
    ...cutOff.flatMap((piece): Prim[] => [
      { kind: 'area', region: piece.region, fill: 'slab' },
      { kind: 'area', region: piece.region, fill: null, texture: 'slant' },
      ...piece.region.flatMap((rings): Prim[] =>
        rings[0] ? [{ kind: 'line', path: rings[0], closed: true, ink: 'ink', px: LINE.item, dashPx: [8, 6] }] : [],
      ),
    ]),
  ];
}
