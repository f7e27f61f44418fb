import type { EdgePart } from './edge.ts';
import { layerCount, edgedLayer, reachLayer, stripLayer, SLAB } from './layers.ts';
import { type Place, placeIn, crossEdge, NO_ZONE } from './place.ts';
import { sweep } from './sweep.ts';
import type { TileEdges } from './tileEdges.ts';

/*
 * The ledger itself: each trapezoid of net floor goes into exactly one cell.
 *
 *     zone x findings x part       part: field of machine 1, 2 ..., strip, strip that a head covers too, tight
 *
 * Tight floor is added up like the others and never as what remains, so that the sum of the parts is a real check.
 */
export interface Cell {
  /** Item number of the zone, NO_ZONE for the rest. */
  readonly zone: number;
  /** Item numbers of the findings that lie here, all of them. */
  readonly findings: readonly number[];
  readonly part: number;
  readonly areaMm2: number;
}

export const STRIP = 100;
/** Strip that a machine's head covers as well. */
export const LAP = 101;
export const TIGHT = 102;
/** All net floor of a zone, added up on its own beside its parts. */
export const NET = 103;

/** Which machines work which floor, by number; the cascade of each zone, -1: all by hand. */
export interface Cascades {
  readonly machinesOf: readonly (readonly number[])[];
  readonly ofZone: ReadonlyMap<number, number>;
  readonly ofRest: number;
  readonly machineCount: number;
}

export function layersOf(cascades: Cascades): number {
  return layerCount(cascades.machinesOf.length, cascades.machineCount);
}

export function isNet(place: Place): boolean {
  return (place.inside[SLAB] as number) > 0 && place.bodies.length === 0;
}

/** The cascade that works a zone, by item number; -1: all by hand. */
export function cascadeOfZone(zone: number, cascades: Cascades): number {
  return zone === NO_ZONE ? cascades.ofRest : (cascades.ofZone.get(zone) ?? -1);
}

export function cascadeAt(place: Place, cascades: Cascades): number {
  return cascadeOfZone(place.zone, cascades);
}

/** Part that a place of net floor belongs to. `isEdged`: by cascade, every face near the tile has its strip. */
export function partAt(place: Place, cascade: number, cascades: Cascades, isEdged: readonly boolean[]): number {
  if (cascade < 0) return TIGHT;
  const isNear = (place.inside[edgedLayer(cascade)] as number) > 0;
  const isStrip = isEdged[cascade] ? isNear : (place.inside[stripLayer(cascade)] as number) > 0;
  const field = fieldAt(place, cascade, cascades);
  if (isStrip) return field < 0 ? STRIP : LAP;
  return isNear || field < 0 ? TIGHT : field;
}

/** The first machine of a cascade whose head covers the place, as a number in the cascade, or -1. */
export function fieldAt(place: Place, cascade: number, cascades: Cascades): number {
  const machines = cascades.machinesOf[cascade] ?? [];
  for (let k = 0; k < machines.length; k += 1) {
    if ((place.inside[reachLayer(machines[k] as number)] as number) > 0) return k;
  }
  return -1;
}

interface OpenCell {
  readonly zone: number;
  readonly set: number;
  readonly part: number;
  areaMm2: number;
  /** What rounding took from the sum so far: with thousands of slabs in a tile it would show in the twelfth digit. */
  lostMm2: number;
}

/** More parts than there are, and more sets of findings than any tile has: a cell in one number. */
const MOST_PARTS = 128;
const MOST_SETS = 2 ** 22;

/** The cells of a tile, in the order in which the sweep meets them. */
export function tileCells(tile: TileEdges, cascades: Cascades, isEdged: readonly boolean[]): Cell[] {
  const place = placeIn(tile, layersOf(cascades));
  const cells: OpenCell[] = [];
  const sets: (readonly number[])[] = [[]];
  const byKey = new Map<number, OpenCell>();
  const add = (zone: number, set: number, part: number, areaMm2: number): void => {
    const key = ((zone + 1) * MOST_SETS + set) * MOST_PARTS + part;
    const cell = byKey.get(key);
    if (cell) {
      addExactly(cell, areaMm2);
      return;
    }
    const fresh = { zone, set, part, areaMm2, lostMm2: 0 };
    byKey.set(key, fresh);
    cells.push(fresh);
  };
  sweep(tile.edges, tile.box, (_bottom, _top, edges, areas) => {
    for (let i = 0; i + 1 < edges.length; i += 1) {
      crossEdge(place, edges[i] as EdgePart);
      const width = (areas[i + 1] as number) - (areas[i] as number);
      if (width <= 0 || !isNet(place)) continue;
      const part = partAt(place, cascadeAt(place, cascades), cascades, isEdged);
      add(place.zone, setNumber(sets, place.findings), part, width);
      add(place.zone, 0, NET, width);
    }
    const end = edges.at(-1);
    if (end) crossEdge(place, end);
  });
  return cells.map(({ zone, set, part, areaMm2, lostMm2 }) => ({
    zone,
    findings: sets[set] ?? [],
    part,
    areaMm2: areaMm2 + lostMm2,
  }));
}

/** Adds an area and keeps what rounding takes (Neumaier's sum); areas are never negative, and the sum is mostly the larger. */
function addExactly(cell: OpenCell, areaMm2: number): void {
  const sum = cell.areaMm2 + areaMm2;
  const [more, less] = cell.areaMm2 >= areaMm2 ? [cell.areaMm2, areaMm2] : [areaMm2, cell.areaMm2];
  cell.lostMm2 += more - sum + less;
  cell.areaMm2 = sum;
}

/** The number of a set of findings among those met so far. */
function setNumber(sets: (readonly number[])[], findings: readonly number[]): number {
  if (findings.length === 0) return 0;
  const known = sets.findIndex((set) => set.length === findings.length && set.every((item, i) => item === findings[i]));
  return known >= 0 ? known : sets.push([...findings]) - 1;
}
