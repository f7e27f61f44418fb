import type { ZoneMeasure } from '../../geometry/floorShape.ts';
import { HATCH_OPACITY, LINE } from '../look.ts';
import type { Prim } from './prim.ts';

/** The strip is drawn true or this wide, whichever is more: half of the line falls under the wall. */
const STRIP_PX = 2 * LINE.edge;

/** Floor that no machine gets to: solid where it is a gap, slanted and dashed where it is cut off. */
export function tightPrims(zone: ZoneMeasure): Prim[] {
  return zone.tight.flatMap((piece): Prim[] => {
    if (piece.kind === 'gap') return [{ kind: 'area', region: piece.region, fill: 'ink' }];
    const border = piece.region.flatMap((rings): Prim[] =>
      rings[0] ? [{ kind: 'line', path: rings[0], closed: true, ink: 'ink', px: LINE.item, dashPx: [8, 6] }] : [],
    );
    return [
      { kind: 'area', region: piece.region, fill: 'slab' },
      { kind: 'area', region: piece.region, fill: null, texture: 'slant' },
      ...border,
    ];
  });
}

/** What the machine works, and what is left for hand tools: chalk wash with the hatch, and solid ink. */
export function reachPrims(zone: ZoneMeasure, csp: number | null): Prim[] {
  const hatch: Prim[] =
    csp === null
      ? []
      : [{ kind: 'area', region: zone.field, fill: null, hatchCsp: Math.round(csp), opacity: HATCH_OPACITY.reach }];
  return [
    { kind: 'area', region: zone.field, fill: 'chalkWash' },
    ...hatch,
    { kind: 'area', region: zone.strip, fill: 'ink' },
    ...zone.faceLines
      .filter((face) => !face.hidden)
      .map((face): Prim => ({ kind: 'line', path: face.path, ink: 'ink', px: STRIP_PX })),
    ...tightPrims(zone),
  ];
}
