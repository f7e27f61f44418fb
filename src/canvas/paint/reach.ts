import type { ZoneMeasure } from '../../geometry/floorShape.ts';
import { HATCH_OPACITY, LINE } from '../look.ts';
import type { Prim, Texture } from './prim.ts';

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

const BARS: readonly Texture[] = ['bar', 'twoBars', 'threeBars'];

/** The sign of a machine that follows, by its place in the cascade: 1 for the second machine. */
export function followerTexture(place: number): Texture {
  return BARS[Math.min(place, BARS.length) - 1] ?? 'bar';
}

/** Fields of machines that follow, each with a rim and its bars; the first machine's field is plain. */
export function followerPrims(zone: ZoneMeasure): Prim[] {
  return (zone.fields ?? []).flatMap(({ region }, place): Prim[] => {
    if (place === 0) return [];
    const rims = region.flat().map((path): Prim => ({ kind: 'line', path, closed: true, ink: 'ink', px: LINE.hair }));
    return [{ kind: 'area', region, fill: null, texture: followerTexture(place) }, ...rims];
  });
}

/** Chalk wash for the first machine, the slab's own tone for those that follow; the hatch of the profile on all of them. */
function fieldPrims(zone: ZoneMeasure, csp: number | null): Prim[] {
  const [first, ...followers] = (zone.fields ?? []).map(({ region }) => region);
  const hatch: Prim[] =
    csp === null
      ? []
      : [{ kind: 'area', region: zone.field, fill: null, hatchCsp: Math.round(csp), opacity: HATCH_OPACITY.reach }];
  return [
    { kind: 'area', region: first ?? zone.field, fill: 'chalkWash' },
    ...followers.map((region): Prim => ({ kind: 'area', region, fill: 'slab' })),
    ...hatch,
    ...followerPrims(zone),
  ];
}

/** What the machines work, and what is left for hand tools: washes with the hatch, and solid ink. */
export function reachPrims(zone: ZoneMeasure, csp: number | null): Prim[] {
  return [
    ...fieldPrims(zone, csp),
    { kind: 'area', region: zone.strip, fill: 'ink' },
    ...zone.faceLines
      .filter((face) => !face.hidden)
      .map((face): Prim => ({ kind: 'line', path: face.path, ink: 'ink', px: STRIP_PX })),
    ...tightPrims(zone),
  ];
}
