import { type Box, boxAroundAll, boxRing, grownBox } from '../box.ts';
import type { FaceKind, Point } from '../floorShape.ts';
import type { EdgePart, EdgeSource } from './edge.ts';
import { HARD_LAYERS, SLAB } from './layers.ts';
import { type Outline, ringOutline } from './outline.ts';
import { placeIn, crossEdge } from './place.ts';
import { sweep } from './sweep.ts';
import { type TileEdges, tileEdges } from './tileEdges.ts';
import { type TracedLoop, tracer } from './trace.ts';

/*
 * Things that touch, taken together: a slab with the columns in its outline, a wall with what leans on it, or a
 * column on its own.
 *
 *    slab   +---#-------+     The boundary of net floor among them is traced here, once, with what each piece
 *           |   #       |     was drawn as; strips, reach and edge metres follow from it.
 *           +-----------+
 */
export interface DrawnEdge extends EdgeSource {
  /** 'soft': floor goes on but is not ours to measure. */
  readonly kind: FaceKind | 'soft';
  readonly of: string;
}

/** A piece of the boundary of net floor, floor on its left. */
export interface BoundaryFace {
  readonly a: Point;
  readonly b: Point;
  readonly kind: DrawnEdge['kind'];
  readonly of: string;
}

/** A slab, a solid, a wall or a patch out of scope. Its edges are drawn with the floor on their left. */
export interface HardItem {
  readonly id: string;
  readonly number: number;
  readonly outlines: readonly Outline[];
  readonly drawn: readonly DrawnEdge[];
  readonly box: Box;
}

export function isSlab(item: HardItem): boolean {
  return item.outlines[0]?.layer === SLAB;
}

export interface ClusterTrace {
  readonly tile: TileEdges;
  readonly net: readonly TracedLoop[];
  readonly grossMm2: number;
  /** Length of the outer outlines of the slabs. */
  readonly outerMm: number;
  /** What each item, by number, takes from the gross floor; where two overlap, the first takes it. */
  readonly takenMm2: ReadonlyMap<number, number>;
}

/** Edges nearer than this on average, in mm, lie on each other. */
const SAME_EDGE_MM = 1e-6;

/** Sweeps the items of a cluster. `onSlab`: they stand on a slab that is not among them. */
export function traceCluster(items: readonly HardItem[], onSlab: boolean): ClusterTrace {
  const box = grownBox(boxAroundAll(items.map((item) => item.box)), 1);
  const outlines = items.flatMap((item) => item.outlines);
  const tile = tileEdges(box, onSlab ? [slabAround(box), ...outlines] : outlines);
  const place = placeIn(tile, HARD_LAYERS);
  const [net, gross] = [tracer(box), tracer(box)];
  const takenMm2 = new Map<number, number>();
  let grossMm2 = 0;

  sweep(tile.edges, box, (bottom, top, edges, areas) => {
    const netSides: EdgePart[] = [];
    const grossSides: EdgePart[] = [];
    let first = 0;
    let wasBody = false;
    for (let i = 0; i < edges.length; i += 1) {
      const edge = edges[i] as EdgePart;
      crossEdge(place, edge);
      const isLast = i + 1 === edges.length;
      const width = isLast ? 0 : (areas[i + 1] as number) - (areas[i] as number);
      if (!isLast && width <= SAME_EDGE_MM * (top - bottom)) continue;
      const isOnSlab = (place.inside[SLAB] as number) > 0;
      const body = place.bodies[0];
      const isFloor = isOnSlab && body === undefined;
      if (isOnSlab) grossMm2 += width;
      if (isOnSlab && body !== undefined) takenMm2.set(body, (takenMm2.get(body) ?? 0) + width);
      const isBodyBeyond = isFloor ? wasBody : body !== undefined;
      if (isFloor !== (netSides.length % 2 === 1))
        netSides.push(hardest(tile, edges.slice(first, i + 1), isFloor, isBodyBeyond));
      if (isOnSlab !== (grossSides.length % 2 === 1)) grossSides.push(edge);
      first = i + 1;
      wasBody = body !== undefined;
    }
    net.slab(bottom, top, netSides);
    gross.slab(bottom, top, grossSides);
  });
  return {
    tile,
    net: net.loops(),
    grossMm2: onSlab ? 0 : grossMm2,
    outerMm: onSlab ? 0 : outerLength(gross.loops()),
    takenMm2,
  };
}

/** Holes run the other way round and do not count. */
function outerLength(loops: readonly TracedLoop[]): number {
  let total = 0;
  for (const loop of loops) {
    let [area, length] = [0, 0];
    for (const { fromX, fromY, toX, toY } of loop) {
      area += fromX * toY - toX * fromY;
      length += Math.hypot(toX - fromX, toY - fromY);
    }
    if (area > 0) total += length;
  }
  return total;
}

/** Floor all round things that stand on it; its sides were drawn by nobody and are no faces. */
function slabAround(box: Box): Outline {
  return ringOutline(boxRing(grownBox(box, -0.5)), SLAB, -1);
}

/**
 * What the slab says of its own edge stands, but for `run`: a column drawn against the outside of that is a face. No two
 * are alike, or where two slabs share an edge rounding would choose: of drop and stop the drop, which keeps machines off
 * further.
 */
export const HARDNESS: Readonly<Record<DrawnEdge['kind'], number>> = {
  wall: 6,
  drop: 5,
  stop: 4,
  obstruction: 3,
  run: 2,
  soft: 1,
};

/**
 * Of edges that lie on each other, the one that says most about the floor beside them: hard before soft, and hard ones
 * that have their floor on this side first. Where nothing stands beyond them, only the slab's own edges say anything: a
 * wall may be drawn there and not stand in its gap.
 */
function hardest(tile: TileEdges, edges: readonly EdgePart[], floorIsRight: boolean, isBodyBeyond: boolean): EdgePart {
  let best = edges.at(-1) as EdgePart;
  let most = -1;
  for (const part of edges) {
    if (!isBodyBeyond && tile.rings[part.ring]?.layer !== SLAB) continue;
    const rank = rankOf(part.edge.source as DrawnEdge | null, part.edge.up === (floorIsRight ? -1 : 1));
    if (rank > most) [best, most] = [part, rank];
  }
  return best;
}

export function rankOf(source: DrawnEdge | null, isOwnSide: boolean): number {
  if (!source) return 0;
  const rank = HARDNESS[source.kind];
  return rank + (isOwnSide && rank > HARDNESS.run ? 10 : 0);
}
