import type { Point } from '../../geometry/floorShape.ts';
import { minus, plus, quarterTurn, times, unit } from '../../geometry/point.ts';
import type { Prim } from './prim.ts';

const DOUBLE = { outer: 9, inner: 4 } as const;
const TICK = { px: 3, off: 7, long: 15 } as const;
const NUMBER_OUT_PX = 24;
/** Of a wild outline single corners are not to be taken by number. */
const MOST_NUMBERED = 200;
/** Numbers nearer to each other than this would cover each other, px: the later one is left out, its ticks stay. */
const NUMBER_ROOM = { across: 24, down: 19 } as const;

function number(at: Point, out: Point, text: string): Prim {
  const way = unit(out);
  return {
    kind: 'text',
    at,
    text,
    px: 16,
    weight: 800,
    ink: 'chalk',
    halo: 'ground',
    offsetPx: [way[0] * NUMBER_OUT_PX, way[1] * NUMBER_OUT_PX],
  };
}

function tick(at: Point, way: Point): Prim {
  return {
    kind: 'mark',
    at,
    paths: [[times(way, TICK.off), times(way, TICK.off + TICK.long)]],
    ink: 'chalk',
    px: TICK.px,
  };
}

function doubled(path: readonly Point[], closed: boolean): Prim[] {
  return [
    { kind: 'line', path, closed, ink: 'chalk', px: DOUBLE.outer },
    { kind: 'line', path, closed, ink: 'slab', px: DOUBLE.inner },
  ];
}

/** Doubled outline, two ticks a corner in line with its edges, corner numbers outside. No box, no handles. */
export function pickedRing(ring: readonly Point[]): Prim[] {
  if (ring.length > MOST_NUMBERED) return doubled(ring, true);
  const corners = ring.flatMap((at, i): Prim[] => {
    const arrive = unit(minus(at, ring.at(i - 1) as Point));
    const leave = unit(minus(ring[(i + 1) % ring.length] as Point, at));
    const back = times(leave, -1);
    const out = plus(arrive, back);
    const straight = Math.hypot(out[0], out[1]) < 1e-6;
    const aside = straight ? times(quarterTurn(arrive), -1) : out;
    return [...(straight ? [tick(at, aside)] : [tick(at, arrive), tick(at, back)]), number(at, aside, String(i + 1))];
  });
  return [...doubled(ring, true), ...corners];
}

/** A picked line: doubled, with ticks across its ends and numbers at its points. */
export function pickedPath(path: readonly Point[]): Prim[] {
  const points =
    path.length > MOST_NUMBERED
      ? []
      : path.flatMap((at, i): Prim[] => {
          const before = path[i - 1];
          const after = path[i + 1];
          const arrive = before ? unit(minus(at, before)) : null;
          const leave = after ? unit(minus(after, at)) : null;
          if (arrive && leave) {
            const sum = minus(arrive, leave);
            const out = Math.hypot(sum[0], sum[1]) < 1e-6 ? quarterTurn(arrive) : sum;
            return [tick(at, unit(out)), number(at, out, String(i + 1))];
          }
          const run = arrive ?? times(leave ?? [1, 0], -1);
          const side = quarterTurn(run);
          return [tick(at, side), tick(at, times(side, -1)), number(at, run, String(i + 1))];
        });
  return [...doubled(path, false), ...points];
}

/** A picked spot: four ticks about it. */
export function pickedSpot(at: Point): Prim[] {
  return (
    [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const
  ).map((way) => tick(at, times(way, 1.6)));
}

/** The same with the numbers that have room beside those before them; none at all while several items are picked. */
export function withRoom(prims: readonly Prim[], pxPerMm: number, numbered: boolean): Prim[] {
  const taken: Point[] = [];
  return prims.filter((prim) => {
    if (prim.kind !== 'text') return true;
    if (!numbered) return false;
    const [dx, dy] = prim.offsetPx ?? [0, 0];
    const place: Point = [prim.at[0] * pxPerMm + dx, prim.at[1] * pxPerMm + dy];
    const crowded = taken.some(
      ([x, y]) => Math.abs(x - place[0]) < NUMBER_ROOM.across && Math.abs(y - place[1]) < NUMBER_ROOM.down,
    );
    if (!crowded) taken.push(place);
    return !crowded;
  });
}

/** A circle has no corners. */
export function pickedRound(ring: readonly Point[]): Prim[] {
  return doubled(ring, true);
}

/** Edges that the sheet speaks of, on a picked outline. */
export function pickedEdges(ring: readonly Point[], edges: readonly number[]): Prim[] {
  return edges.flatMap((i): Prim[] => {
    const a = ring[i];
    const b = ring[(i + 1) % ring.length];
    return a && b ? [{ kind: 'line', path: [a, b], ink: 'chalk', px: DOUBLE.outer }] : [];
  });
}
