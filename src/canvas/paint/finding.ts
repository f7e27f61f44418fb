import type { Held } from '../../model/doc.ts';
import { LINE } from '../look.ts';
import type { Paint, Texture } from './prim.ts';

/** What a finding does to the floor decides its texture; a kind not named here lies on top. */
const TEXTURES: Readonly<Record<string, Texture>> = {
  dirt: 'dots',
  oil_light: 'dots',
  oil_deep: 'dots',
  fat: 'dots',
  silicone: 'dots',
  salt: 'dots',
  rubber: 'dots',
  mould: 'dots',
  laitance: 'nicks',
  efflorescence: 'nicks',
  acid_attack: 'nicks',
  pitting: 'nicks',
  hollow: 'nicks',
  mastic_black: 'crosses',
};

export function textureOf(kind: string): Texture {
  return TEXTURES[kind] ?? 'bricks';
}

/** Hatch shows through a little, so that a finding over a whole room still belongs to its zone. */
const COVER_OPACITY = 0.78;

/** What soaked in has a soft, dashed outline; what lies on the floor or is lost from it a plain one. */
export const paintFinding: Paint<Held<'finding'>> = (finding) => {
  const texture = textureOf(finding.kind);
  const region = [[finding.ring]];
  return [
    { kind: 'area', region, fill: 'slab', opacity: COVER_OPACITY },
    { kind: 'area', region, fill: null, texture },
    {
      kind: 'line',
      path: finding.ring,
      closed: true,
      ink: 'ink',
      px: LINE.thin,
      ...(texture === 'dots' ? { dashPx: [3, 3] } : {}),
    },
  ];
};
