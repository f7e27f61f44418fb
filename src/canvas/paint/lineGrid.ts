import type { Point } from '../../geometry/floorShape.ts';

interface Segment {
  readonly a: Point;
  readonly b: Point;
}

interface PxBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export interface LineGrid {
  /** How many segments pass through a box, screen px. */
  crossings(box: PxBox): number;
}

const CELL_PX = 64;

/** True when a segment and an upright box share a point (clipping against the four sides in turn). */
function passesThrough({ a, b }: Segment, box: PxBox): boolean {
  let from = 0;
  let to = 1;
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const sides = [
    [-dx, a[0] - box.minX],
    [dx, box.maxX - a[0]],
    [-dy, a[1] - box.minY],
    [dy, box.maxY - a[1]],
  ] as const;
  for (const [pace, room] of sides) {
    if (pace === 0) {
      if (room < 0) return false;
      continue;
    }
    const share = room / pace;
    if (pace < 0) from = Math.max(from, share);
    else to = Math.min(to, share);
    if (from > to) return false;
  }
  return true;
}

/** Lines of the plan by cells of the screen, to ask quickly what a plate would cover. */
export function lineGrid(lines: readonly (readonly Point[])[], pxPerMm: number): LineGrid {
  const cells = new Map<string, Segment[]>();
  const cellOf = (px: number): number => Math.floor(px / CELL_PX);
  const put = (segment: Segment): void => {
    // A long line is cut in pieces of a cell, so that it lies in few cells it does not cross.
    const size = Math.max(Math.abs(segment.b[0] - segment.a[0]), Math.abs(segment.b[1] - segment.a[1]));
    const pieces = Math.min(200, Math.max(1, Math.ceil(size / CELL_PX)));
    for (let i = 0; i < pieces; i += 1) {
      const part = { a: shareOf(segment, i / pieces), b: shareOf(segment, (i + 1) / pieces) };
      for (let x = cellOf(Math.min(part.a[0], part.b[0])); x <= cellOf(Math.max(part.a[0], part.b[0])); x += 1) {
        for (let y = cellOf(Math.min(part.a[1], part.b[1])); y <= cellOf(Math.max(part.a[1], part.b[1])); y += 1) {
          const key = `${x} ${y}`;
          const list = cells.get(key);
          if (list) list.push(part);
          else cells.set(key, [part]);
        }
      }
    }
  };
  for (const path of lines) {
    for (let i = 1; i < path.length; i += 1) {
      const a = path[i - 1] as Point;
      const b = path[i] as Point;
      put({ a: [a[0] * pxPerMm, a[1] * pxPerMm], b: [b[0] * pxPerMm, b[1] * pxPerMm] });
    }
  }
  return {
    crossings(box) {
      const met = new Set<Segment>();
      for (let x = cellOf(box.minX); x <= cellOf(box.maxX); x += 1) {
        for (let y = cellOf(box.minY); y <= cellOf(box.maxY); y += 1) {
          for (const segment of cells.get(`${x} ${y}`) ?? []) if (passesThrough(segment, box)) met.add(segment);
        }
      }
      return met.size;
    },
  };
}

function shareOf({ a, b }: Segment, share: number): Point {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}
