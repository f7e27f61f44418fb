import type { EdgePart } from './edge.ts';
import { FINDING, SCOPE, SOLID, WALL_BODY, WALL_GAP, ZONE } from './layers.ts';
import type { Outline } from './outline.ts';
import type { TileEdges } from './tileEdges.ts';

/*
 * Where the walk along a slab is now: how many outlines of each layer it is inside of.
 *
 *      |  slab     | column | slab   |          `cross` an edge, and the counts are those right of it.
 *   0  |  1        | 1, 1   | 1      |  0       After the last edge all are back where they were.
 */
export interface Place {
  /** Outlines that the place is inside of, by layer. */
  readonly inside: Int32Array;
  /** What is taken off the floor here, by item number, lowest first; a wall is not there in its own gaps. */
  readonly bodies: number[];
  /** How many of them a machine cannot cross: all but floor that is out of scope. */
  solid: number;
  /** The topmost zone, -1 for none. */
  zone: number;
  /** Which findings lie here, as a number into `findingSets`. */
  findings: number;
  readonly findingSets: (readonly number[])[];
  /** Goes over an edge; `back`: the other way, to undo it. */
  cross(part: EdgePart, back?: boolean): void;
}

/** A place at the left side of a tile. `layers` is how many there are. */
export function placeIn(tile: TileEdges, layers: number): Place {
  const winding = new Int32Array(tile.rings.length);
  const inside = new Int32Array(layers);
  const wallBodies = new Map<number, number>();
  const wallGaps = new Map<number, number>();
  const zones: number[] = [];
  const findings: number[] = [];
  const setNumbers = new Map<string, number>([['', 0]]);
  const place: Place = { inside, bodies: [], solid: 0, zone: -1, findings: 0, findingSets: [[]], cross };

  for (const outline of tile.covers) toggle(outline, 1);
  return place;

  function cross({ edge, ring }: EdgePart, back = false): void {
    if (ring < 0) return;
    const before = winding[ring] as number;
    const after = back ? before - edge.up : before + edge.up;
    winding[ring] = after;
    if (before === 0) toggle(tile.rings[ring] as Outline, 1);
    else if (after === 0) toggle(tile.rings[ring] as Outline, -1);
  }

  function toggle({ layer, item }: Outline, by: 1 | -1): void {
    inside[layer] = (inside[layer] as number) + by;
    if (layer === WALL_BODY) toggleWall(wallBodies, item, by);
    else if (layer === WALL_GAP) toggleWall(wallGaps, item, by);
    else if (layer === SOLID) toggleBody(item, by, true);
    else if (layer === SCOPE) toggleBody(item, by, false);
    else if (layer === ZONE) {
      toggleItem(zones, item, by);
      place.zone = zones.at(-1) ?? -1;
    } else if (layer === FINDING) {
      toggleItem(findings, item, by);
      place.findings = setNumber();
    }
  }

  function toggleBody(item: number, by: number, isSolid: boolean): void {
    toggleItem(place.bodies, item, by);
    if (isSolid) place.solid += by;
  }

  function toggleWall(counts: Map<number, number>, item: number, by: number): void {
    const stood = stands(item);
    counts.set(item, (counts.get(item) ?? 0) + by);
    const change = stands(item) - stood;
    if (change !== 0) toggleBody(item, change, true);
  }

  function stands(item: number): number {
    return (wallBodies.get(item) ?? 0) > 0 && (wallGaps.get(item) ?? 0) === 0 ? 1 : 0;
  }

  function setNumber(): number {
    const key = findings.join();
    let number = setNumbers.get(key);
    if (number === undefined) {
      number = place.findingSets.length;
      place.findingSets.push([...findings]);
      setNumbers.set(key, number);
    }
    return number;
  }
}

/** Items in order, each as often as it is there. */
function toggleItem(items: number[], item: number, by: number): void {
  if (by < 0) {
    items.splice(items.lastIndexOf(item), 1);
    return;
  }
  let at = items.length;
  while (at > 0 && (items[at - 1] as number) > item) at -= 1;
  items.splice(at, 0, item);
}
