import type { Held } from '../../model/doc.ts';
import { HALO_PX, LINE } from '../look.ts';
import type { LinePrim, Paint } from './prim.ts';

/** ACI 224: under 0.3 mm a crack is a hairline; nothing is done to it. */
const HAIRLINE_UNDER_MM = 0.3;

export function isHairline(crack: { readonly widthMm: number | null; readonly behaviour: string }): boolean {
  const quiet = crack.behaviour === 'notJudged' || crack.behaviour === 'static';
  return quiet && crack.widthMm !== null && crack.widthMm < HAIRLINE_UNDER_MM;
}

/** Weight and shape tell the class apart: thin hairline, plain static, barbed working, doubled structural. */
export const paintCrack: Paint<Held<'crack'>> = (crack) => {
  const line: LinePrim = { kind: 'line', path: crack.path, ink: 'ink', px: LINE.item, haloPx: HALO_PX };
  if (isHairline(crack)) return [{ ...line, px: LINE.thin }];
  if (crack.behaviour === 'working') return [{ ...line, teeth: { shape: 'barb', everyPx: 20, reachPx: 7, px: 2 } }];
  if (crack.behaviour === 'structural')
    return [
      { ...line, px: 6 },
      { kind: 'line', path: crack.path, ink: 'slab', px: 1.8 },
    ];
  return [line];
};
