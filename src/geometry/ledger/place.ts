import type { EdgePart } from './edge.ts';
import { FINDING, SCOPE, SOLID, WALL_BODY, WALL_GAP, ZONE } from './layers.ts';
import type { Outline } from './outline.ts';
import type { TileEdges } from './tileEdges.ts';

/*
 * Where the walk along a slab is now: how many outlines of each layer it is inside of.
 *
 *      |  slab     | column | slab   |          `crossEdge`, and the counts are those right of the edge.
 *   0  |  1        | 1, 1   | 1      |  0       After the last edge all are back where they were.
 */
export interface Place {
  readonly tile: TileEdges;
  /** Outlines that the place is inside of, by layer. */
  readonly inside: Int32Array;
  /** What is taken off the floor here, by item number, lowest first; a wall is not there in its own gaps. */
  readonly bodies: number[];
  /** How many of them a machine cannot cross: all but floor that is out of scope. */
  solid: number;
  /** The topmost zone, NO_ZONE for none. */
  zone: number;
  /** Item numbers of the zones and findings that lie here, lowest first. */
  readonly zones: number[];
  readonly findings: number[];
  /** Winding number of each outline of the tile. */
  readonly winding: Int32Array;
  /** Bodies and gaps of walls here, by item number. */
  readonly walls: Map<number, WallHere> | null;
}

interface WallHere {
  bodies: number;
  gaps: number;
}

export const NO_ZONE = -1;

/** A place at the left side of a tile. `layers` is how many there are. */
export function placeIn(tile: TileEdges, layers: number): Place {
  const hasWalls = tile.rings.some(isWall) || tile.covers.some(isWall);
  const place: Place = {
    tile,
    inside: new Int32Array(layers),
    bodies: [],
    solid: 0,
    zone: NO_ZONE,
    zones: [],
    findings: [],
    winding: new Int32Array(tile.rings.length),
    walls: hasWalls ? new Map() : null,
  };
  for (const outline of tile.covers) toggle(place, outline, 1);
  return place;
}

const homes = new WeakMap<TileEdges, { readonly home: Place; readonly covers: number }>();

/** The place at the left side of a tile that is kept with it: whoever uses it must come back to where it was. */
export function homeOf(tile: TileEdges, layers: number): Place {
  const known = homes.get(tile);
  const isOfNow = known?.home.winding.length === tile.rings.length && known.covers === tile.covers.length;
  if (known && isOfNow) return known.home;
  const home = placeIn(tile, layers);
  homes.set(tile, { home, covers: tile.covers.length });
  return home;
}

function isWall({ layer }: Outline): boolean {
  return layer === WALL_BODY || layer === WALL_GAP;
}

/** Goes over an edge from left to right; `back`: the other way, to undo it. */
export function crossEdge(place: Place, { edge, ring }: EdgePart, back = false): void {
  if (ring < 0) return;
  const { winding } = place;
  const before = winding[ring] as number;
  const after = back ? before - edge.up : before + edge.up;
  winding[ring] = after;
  if (before === 0) toggle(place, place.tile.rings[ring] as Outline, 1);
  else if (after === 0) toggle(place, place.tile.rings[ring] as Outline, -1);
}

function toggle(place: Place, { layer, item }: Outline, by: 1 | -1): void {
  place.inside[layer] = (place.inside[layer] as number) + by;
  switch (layer) {
    case SOLID:
      toggleBody(place, item, by, true);
      break;
    case SCOPE:
      toggleBody(place, item, by, false);
      break;
    case WALL_BODY:
    case WALL_GAP:
      toggleWall(place, layer, item, by);
      break;
    case ZONE:
      toggleItem(place.zones, item, by);
      place.zone = place.zones.at(-1) ?? NO_ZONE;
      break;
    case FINDING:
      toggleItem(place.findings, item, by);
      break;
  }
}

function toggleBody(place: Place, item: number, by: number, isSolid: boolean): void {
  toggleItem(place.bodies, item, by);
  if (isSolid) place.solid += by;
}

function toggleWall(place: Place, layer: number, item: number, by: 1 | -1): void {
  const walls = place.walls as Map<number, WallHere>;
  const wall = walls.get(item) ?? { bodies: 0, gaps: 0 };
  walls.set(item, wall);
  const stood = stands(wall);
  if (layer === WALL_BODY) wall.bodies += by;
  else wall.gaps += by;
  if (stands(wall) !== stood) toggleBody(place, item, stood ? -1 : 1, true);
}

function stands({ bodies, gaps }: WallHere): boolean {
  return bodies > 0 && gaps === 0;
}

/** Items in order, each as often as it is there. */
function toggleItem(items: number[], item: number, by: number): void {
  if (by < 0) {
    const at = items.lastIndexOf(item);
    if (at === items.length - 1) items.pop();
    else items.splice(at, 1);
    return;
  }
  let at = items.length;
  while (at > 0 && (items[at - 1] as number) > item) at -= 1;
  if (at === items.length) items.push(item);
  else items.splice(at, 0, item);
}
