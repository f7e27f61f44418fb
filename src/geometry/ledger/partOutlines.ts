import type { Region } from '../floorShape.ts';
import { type Cascades, LAP, NET, STRIP, TIGHT, cascadeAt, isNet, layersOf, partAt } from './cells.ts';
import type { EdgePart } from './edge.ts';
import type { LedgerState } from './ledgerState.ts';
import { placeIn, crossEdge } from './place.ts';
import { joinedRegion } from './stitch.ts';
import { sweep } from './sweep.ts';
import type { TileEdges } from './tileEdges.ts';
import type { Tile } from './tiles.ts';
import { type TracedLoop, type Tracer, tracer } from './trace.ts';

/*
 * Outlines of every part of every zone, for the eye and for paper: traced tile by tile when somebody asks, kept while
 * the tile stays as it is, and joined over the sides of the tiles.
 *
 *     | strip | field  :  field |       Of neighbours in one slab that are one part the edge between is left out (:):
 *     |       |        :        |       it was drawn for something else.
 */

/** Names a part of a zone: field of machine 0, 1 ..., strip, tight or net. */
export function partKey(zone: number, part: number): string {
  return `${zone} ${part}`;
}

/** Hand floor of all machines' zones together, across the borders of zones: what hangs together has one reason. */
export const ALL_TIGHT = 'tight';

/** Regions in mm by `partKey`, and ALL_TIGHT. Their areas are those of the cells, to rounding. */
export function partOutlines(state: LedgerState): ReadonlyMap<string, Region> {
  const loops = new Map<string, { readonly tile: Tile; readonly loops: readonly TracedLoop[] }[]>();
  for (const tile of state.grid.tiles) {
    if (!tile.edges || tile.cells.length === 0) continue;
    tile.traces ??= traceTile(tile.edges, tile.isEdged, state.cascades);
    for (const [key, traced] of tile.traces) {
      const list = loops.get(key);
      if (list) list.push({ tile, loops: traced });
      else loops.set(key, [{ tile, loops: traced }]);
    }
  }
  return new Map([...loops].map(([key, traced]) => [key, joinedRegion(traced, state.origin)]));
}

interface Traced {
  readonly trace: Tracer;
  sides: EdgePart[];
  /** Area to the left of the last side: a part that goes on from there is one with it. */
  endArea: number;
}

function traceTile(
  tile: TileEdges,
  isEdged: Tile['isEdged'],
  cascades: Cascades,
): ReadonlyMap<string, readonly TracedLoop[]> {
  const place = placeIn(tile, layersOf(cascades));
  const parts = new Map<string, Traced>();
  const add = (key: string, left: EdgePart, leftArea: number, right: EdgePart, rightArea: number): void => {
    let traced = parts.get(key);
    if (!traced) parts.set(key, (traced = { trace: tracer(tile.box), sides: [], endArea: Number.NaN }));
    if (traced.sides.length > 0 && traced.endArea === leftArea) traced.sides.pop();
    else traced.sides.push(left);
    traced.sides.push(right);
    traced.endArea = rightArea;
  };
  sweep(tile.edges, tile.box, (bottom, top, edges, areas) => {
    for (let i = 0; i + 1 < edges.length; i += 1) {
      const left = edges[i] as EdgePart;
      const right = edges[i + 1] as EdgePart;
      const leftArea = areas[i] as number;
      const rightArea = areas[i + 1] as number;
      crossEdge(place, left);
      if (rightArea <= leftArea || !isNet(place)) continue;
      const cascade = cascadeAt(place, cascades);
      const part = partAt(place, cascade, cascades, isEdged);
      add(partKey(place.zone, NET), left, leftArea, right, rightArea);
      add(partKey(place.zone, part === LAP ? STRIP : part), left, leftArea, right, rightArea);
      if (part === TIGHT && cascade >= 0) add(ALL_TIGHT, left, leftArea, right, rightArea);
    }
    const last = edges.at(-1);
    if (last) crossEdge(place, last);
    for (const traced of parts.values()) {
      traced.trace.slab(bottom, top, traced.sides);
      traced.sides = [];
    }
  });
  return new Map([...parts].map(([key, { trace }]) => [key, trace.loops()]));
}
