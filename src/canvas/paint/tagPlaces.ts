import type { Point } from '../../geometry/floorShape.ts';
import { lineGrid, type LineGrid } from './lineGrid.ts';
import { plateSize } from './plate.ts';
import { plateGrid, type PlateGrid, type PxBox } from './plateGrid.ts';
import type { TextPrim } from './prim.ts';

/** A plate that wants a place: near one of its anchors, best first, without covering lines or other plates. */
export interface TagWish {
  readonly id: string;
  readonly anchors: readonly Point[];
  readonly text: TextPrim;
  /** Plates of one rank are placed before those of the next. */
  readonly rank: number;
  /** May it stand on its anchor (a zone's number) or must it stand beside it? */
  readonly on: boolean;
  /** It stands on an anchor and nowhere else, whatever lies there. */
  readonly stays?: true;
}

const DIRECTIONS: readonly (readonly [number, number])[] = [
  [1, -0.7],
  [-1, -0.7],
  [1, 0.7],
  [-1, 0.7],
  [0, -1],
  [0, 1],
  [1, 0],
  [-1, 0],
];
/** Steps away from the anchor, px, beyond touching it. */
const STEPS = [7, 22, 46, 80] as const;
/** A plate's own clear rim. */
const RIM = 3;
const COST = { plate: 500, outside: 900, line: 60, step: 0.55, anchor: 4, direction: 0.4 } as const;
/** From this gap on a line leads from the item to its plate. */
const LEADER_FROM = 16;
/** Farther off than this nobody follows the line any more: on the screen the plate stays away until there is room. */
const FARTHEST = 22;
/** Of more plates than this each looks at a few places only and minds no lines: there is no room anyway, and time is short. */
const MOST_CAREFUL = 400;
/** Nor are lines minded where there are more of them than this: everything lies on some. */
const MOST_LINES = 2500;
const HASTY_CHOICES = 4;

function boxAt(x: number, y: number, width: number, height: number): PxBox {
  const w = width / 2 + RIM;
  const h = height / 2 + RIM;
  return { minX: x - w, minY: y - h, maxX: x + w, maxY: y + h };
}

interface Offer {
  readonly anchor: Point;
  readonly offset: readonly [number, number];
  readonly gap: number;
  readonly cost: number;
}

interface Place extends Offer {
  readonly box: PxBox;
  /** It lies on a plate that was there before. */
  readonly covers: boolean;
}

/** Every place a plate could take, in order of liking. */
function* offers(wish: TagWish, width: number, height: number): Iterable<Offer> {
  for (const [nth, anchor] of wish.anchors.entries()) {
    const base = nth * COST.anchor;
    if (wish.on) yield { anchor, offset: [0, 0], gap: 0, cost: base };
    if (wish.stays) continue;
    for (const step of STEPS) {
      for (const [turn, [dx, dy]] of DIRECTIONS.entries()) {
        const offset = [dx * (width / 2 + step), dy * (height / 2 + step)] as const;
        yield { anchor, offset, gap: step, cost: base + step * COST.step + turn * COST.direction + (wish.on ? 20 : 0) };
      }
    }
  }
}

interface Ground {
  readonly pxPerMm: number;
  readonly lines: LineGrid | null;
  readonly taken: PlateGrid;
  readonly within: PxBox | null;
}

function sticksOut(box: PxBox, within: PxBox): boolean {
  return box.minX < within.minX || box.minY < within.minY || box.maxX > within.maxX || box.maxY > within.maxY;
}

function best(wish: TagWish, { pxPerMm, lines, taken, within }: Ground): Place | null {
  const { width, height } = plateSize(wish.text);
  let found: Place | null = null;
  let looked = 0;
  for (const offer of offers(wish, width, height)) {
    if (found && (offer.cost >= found.cost || (!lines && looked >= HASTY_CHOICES))) continue;
    looked += 1;
    const x = offer.anchor[0] * pxPerMm + offer.offset[0];
    const y = offer.anchor[1] * pxPerMm + offer.offset[1];
    const box = boxAt(x, y, width, height);
    const plates = taken.covered(box);
    const outside = within && sticksOut(box, within) ? COST.outside : 0;
    const cost = offer.cost + outside + plates * COST.plate + (lines?.crossings(box) ?? 0) * COST.line;
    if (!found || cost < found.cost) found = { ...offer, cost, box, covers: plates > 0 };
  }
  return found;
}

/** How plates are placed on the screen; paper keeps them all, and keeps them on the sheet. */
export interface Placing {
  /** A plate without room of its own is drawn all the same. */
  readonly keepAll: boolean;
  readonly within: PxBox | null;
}

/** Puts plates where they cover neither a line nor each other, as far as that can be had, with leaders when they stand off. */
export function placeTags(
  wishes: readonly TagWish[],
  lines: readonly (readonly Point[])[],
  pxPerMm: number,
  { keepAll, within }: Placing = { keepAll: false, within: null },
): TextPrim[] {
  const careful = wishes.length <= MOST_CAREFUL && lines.length <= MOST_LINES;
  const ground: Ground = { pxPerMm, lines: careful ? lineGrid(lines, pxPerMm) : null, taken: plateGrid(), within };
  const placed: TextPrim[] = [];
  for (const wish of wishes.toSorted((a, b) => a.rank - b.rank)) {
    const place = best(wish, ground);
    if (!place || (!keepAll && wish.rank > 0 && (place.covers || place.gap > FARTHEST))) continue;
    ground.taken.add(place.box);
    const leader = place.gap >= LEADER_FROM ? { leader: true } : {};
    placed.push({ ...wish.text, at: place.anchor, offsetPx: place.offset, ...leader });
  }
  // Leaders lie under all plates that stand where they should.
  return placed.toSorted((a, b) => Number(b.leader ?? false) - Number(a.leader ?? false));
}
