import type { Point, TightPiece } from '../../geometry/floorShape.ts';
import { along, between, distance, minus, quarterTurn, unit } from '../../geometry/point.ts';
import { LETTERS, LINE } from '../look.ts';
import { openingPath } from './wall.ts';
import type { Look, Prim, TextLine } from './prim.ts';
import { slabRing, type PlanView } from './view.ts';

/** The free width at a narrow place, from face to face. */
export type NarrowLine = readonly [from: Point, to: Point];

/** A place that is asked about: where it is, its narrow line if it has one, and why no machine works there. */
export interface AskedSpot {
  readonly at: Point;
  readonly line: NarrowLine | null;
  /** On its plate: what is free, and what is needed. */
  readonly says: readonly string[];
}

/** Half the bar across each end of the line, px. */
const END_PX = 6;
const PLATE_OFF_PX: readonly [number, number] = [0, -46];

/** A measured line with a bar across each end, light enough to be read on solid ink. */
export function narrowLinePrims([from, to]: NarrowLine, look: Pick<Look, 'pxPerMm'>, asked = false): Prim[] {
  if (distance(from, to) === 0) return [];
  const across = quarterTurn(unit(minus(to, from)));
  const reach = END_PX / look.pxPerMm;
  const paths = [
    [from, to],
    [along(from, across, -reach), along(from, across, reach)],
    [along(to, across, -reach), along(to, across, reach)],
  ];
  const [ink, px] = asked ? (['chalk', LINE.item] as const) : (['ink', LINE.thin] as const);
  return paths.map((path): Prim => ({ kind: 'line', path, ink, px, haloPx: 2 }));
}

/** The narrow line of what is asked about, in chalk, and a plate that says why. */
export function askedSpotPrims({ at, line, says }: AskedSpot, look: Look): Prim[] {
  const [first, ...others] = says;
  if (first === undefined) return [];
  const px = LETTERS[look.print ? 'paper' : 'screen'].tag;
  const more = others.map((text): TextLine => ({ text, px, weight: 600 }));
  return [
    ...(line ? narrowLinePrims(line, look, true) : []),
    {
      kind: 'text',
      at: line ? between(line[0], line[1], 0.5) : at,
      text: first,
      px,
      weight: 800,
      ink: 'ink',
      plate: 'outlined',
      offsetPx: PLATE_OFF_PX,
      leader: true,
      ...(more.length > 0 ? { more } : {}),
    },
  ];
}

/** Where a piece is narrow: its gap, or the passage that keeps the machine out as it is drawn; null for neither. */
export function narrowLineOf(view: PlanView, piece: TightPiece): NarrowLine | null {
  if (piece.gap) return [piece.gap.from, piece.gap.to];
  if (!piece.blockedBy || piece.blockedBy.what === 'height') return null;
  return passageLine(view, piece.blockedBy.passage.id);
}

/** A doorway in a slab's outline is `slab#edge`; an opening stands in a wall. */
function passageLine(view: PlanView, id: string): NarrowLine | null {
  const [slabId, edge] = id.split('#');
  const slab = edge === undefined ? undefined : view.slabs.find((each) => each.id === slabId);
  const ring = slab ? slabRing(slab) : [];
  const [a, b] = [ring[Number(edge)], ring[(Number(edge) + 1) % ring.length]];
  if (a && b) return [a, b];
  for (const wall of view.walls) {
    const opening = wall.openings.find((each) => each.id === id);
    const path = opening ? openingPath(wall, opening) : [];
    const [from, to] = [path[0], path.at(-1)];
    if (from && to) return [from, to];
  }
  return null;
}
