import { LINE, zoneInk } from '../look.ts';
import type { Paint, Prim } from './prim.ts';
import type { ZoneView } from './view.ts';

const OVER_PAGE_OPACITY = 0.6;

export const paintZoneTint: Paint<ZoneView, { readonly overPage: boolean }> = (view, { overPage }) => [
  { kind: 'area', region: view.region, fill: zoneInk(view.index), ...(overPage ? { opacity: OVER_PAGE_OPACITY } : {}) },
];

/** The hatch says the profile; a held zone is crossed out; a zone without a profile stays bare. */
export const paintZoneHatch: Paint<ZoneView> = (view) => {
  const border = view.region.flatMap((rings): Prim[] => {
    const outer = rings[0];
    return outer ? [{ kind: 'line', path: outer, closed: true, ink: 'ink', px: LINE.thin }] : [];
  });
  if (view.held) return [{ kind: 'area', region: view.region, fill: null, texture: 'crosses' }, ...border];
  if (view.csp === null) return border;
  return [{ kind: 'area', region: view.region, fill: null, hatchCsp: Math.round(view.csp) }, ...border];
};
