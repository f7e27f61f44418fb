import type { Point, TightPiece } from '../../geometry/floorShape.ts';
import { boxOf } from '../../geometry/box.ts';
import { along, between, distance, minus, quarterTurn, unit } from '../../geometry/point.ts';
import { LETTERS, LINE } from '../look.ts';
import { plateSize } from './plate.ts';
import type { Look, Prim, TextLine, TextPrim } from './prim.ts';
import { wrapText } from './textWidth.ts';
import { openingPath } from './wall.ts';
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
/** A plate stands off so far, and its lines are no longer than this, px. */
const PLATE_OFF_PX = 30;
const PLATE_LINE_PX = 210;

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

/** The narrow line of what is asked about, in chalk, and a plate that says why, on the side of the floor's middle. */
export function askedSpotPrims({ at, line, says }: AskedSpot, view: PlanView, look: Look): Prim[] {
  const px = LETTERS[look.print ? 'paper' : 'screen'].tag;
  const [first, ...others] = says.flatMap((text) => wrapText(text, px, PLATE_LINE_PX));
  if (first === undefined) return [];
  const place = line ? between(line[0], line[1], 0.5) : at;
  const more = others.map((text): TextLine => ({ text, px, weight: 600 }));
  const plate: TextPrim = {
    kind: 'text',
    at: place,
    text: first,
    px,
    weight: 800,
    ink: 'ink',
    plate: 'outlined',
    leader: true,
    ...(more.length > 0 ? { more } : {}),
  };
  const { width, height } = plateSize(plate);
  const [right, down] = towardsMiddle(view, place);
  // Above or below the place, not beside it: beside a place in the middle of a phone there is no room for a plate.
  const offsetPx = [(right * width) / 3, down * (PLATE_OFF_PX + height / 2)] as const;
  return [...(line ? narrowLinePrims(line, look, true) : []), { ...plate, offsetPx }];
}

/** 1 or -1 across and down: which way the middle of the floor lies. */
function towardsMiddle(view: PlanView, [x, y]: Point): readonly [number, number] {
  const { minX, minY, maxX, maxY } = boxOf(view.slabs.flatMap(slabRing));
  return [x < (minX + maxX) / 2 ? 1 : -1, y < (minY + maxY) / 2 ? 1 : -1];
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
