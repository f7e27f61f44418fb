import type { Point } from '../../geometry/floorShape.ts';
import { lineGrid, type LineGrid } from './lineGrid.ts';
import { plateSize } from './plate.ts';
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
}

/** A box in px, counted from the floor's origin at this scale. */
export interface PxBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
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
/** More plates than this are put at their first choice: nobody reads them all at once, and time is short. */
const MOST_CAREFUL = 400;

function meets(a: PxBox, b: PxBox): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

function boxAt(x: number, y: number, width: number, height: number): PxBox {
  const w = width / 2 + RIM;
  const h = height / 2 + RIM;
  return { minX: x - w, minY: y - h, maxX: x + w, maxY: y + h };
}

interface Choice {
  readonly anchor: Point;
  readonly offset: readonly [number, number];
  readonly gap: number;
  readonly cost: number;
}

/** Every place a plate could take, in order of liking. */
function* choices(wish: TagWish, width: number, height: number): Iterable<Choice> {
  for (const [nth, anchor] of wish.anchors.entries()) {
    const base = nth * COST.anchor;
    if (wish.on) yield { anchor, offset: [0, 0], gap: 0, cost: base };
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
  readonly lines: LineGrid;
  readonly taken: readonly PxBox[];
  readonly careful: boolean;
  readonly within: PxBox | null;
}

function sticksOut(box: PxBox, within: PxBox): boolean {
  return box.minX < within.minX || box.minY < within.minY || box.maxX > within.maxX || box.maxY > within.maxY;
}

function best(wish: TagWish, { pxPerMm, lines, taken, careful, within }: Ground): Choice | null {
  const { width, height } = plateSize(wish.text);
  let found: Choice | null = null;
  for (const choice of choices(wish, width, height)) {
    if (found && choice.cost >= found.cost) continue;
    if (!careful) return choice;
    const box = boxAt(
      choice.anchor[0] * pxPerMm + choice.offset[0],
      choice.anchor[1] * pxPerMm + choice.offset[1],
      width,
      height,
    );
    const plates = taken.filter((other) => meets(box, other)).length;
    const outside = within && sticksOut(box, within) ? COST.outside : 0;
    const cost = choice.cost + outside + plates * COST.plate + lines.crossings(box) * COST.line;
    if (!found || cost < found.cost) found = { ...choice, cost };
  }
  return found;
}

/** Puts plates where they cover neither a line nor each other, and inside the sheet, as far as that can be had, with leaders when they stand off. */
export function placeTags(
  wishes: readonly TagWish[],
  lines: readonly (readonly Point[])[],
  pxPerMm: number,
  within: PxBox | null = null,
): TextPrim[] {
  const grid = lineGrid(lines, pxPerMm);
  const taken: PxBox[] = [];
  const careful = wishes.length <= MOST_CAREFUL;
  const placed: TextPrim[] = [];
  for (const wish of wishes.toSorted((a, b) => a.rank - b.rank)) {
    const choice = best(wish, { pxPerMm, lines: grid, taken, careful, within });
    if (!choice) continue;
    const { width, height } = plateSize(wish.text);
    const x = choice.anchor[0] * pxPerMm + choice.offset[0];
    const y = choice.anchor[1] * pxPerMm + choice.offset[1];
    taken.push(boxAt(x, y, width, height));
    placed.push({
      ...wish.text,
      at: choice.anchor,
      offsetPx: choice.offset,
      ...(choice.gap >= LEADER_FROM ? { leader: true } : {}),
    });
  }
  // Leaders lie under all plates that stand where they should.
  return placed.toSorted((a, b) => Number(b.leader ?? false) - Number(a.leader ?? false));
}
