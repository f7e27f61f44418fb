import type { FloorShape, GeometryFault, Point } from '../floorShape.ts';
import { type Box, boxOf, boxesMeet, grownBox } from '../box.ts';
import { isFinitePoint, minus } from '../point.ts';
import { blockedEntrance, waysOf } from '../ways.ts';
import { isNet } from './cells.ts';
import type { Cluster } from './clusters.ts';
import { HARD_LAYERS } from './layers.ts';
import type { LedgerState, Stale } from './ledgerState.ts';
import { placeIn } from './place.ts';
import { type EnteredAt, type MachineAt, enteredRooms, findRooms, reachIn, roomLinks } from './reach.ts';
import { ON_EDGE_MM, facesIn, roomsAt } from './wayIn.ts';
import { tileEdges } from './tileEdges.ts';
import { type RoomLink, type Tile, outlinesIn } from './tiles.ts';
import { askAt } from './walks.ts';

/*
 * Second step: for each machine the rooms of the tiles that changed, which of all rooms it gets to, and what its head
 * covers there.
 *
 *     tile 1 | tile 2 | tile 3      A column closes tile 2. Tile 3 did not change, but its room is cut off now, so it
 *     in --> |   #    |             is done again as well.
 */
export function reachStep(state: LedgerState, shape: FloorShape, stale: Stale): GeometryFault[] {
  const { entrances, faults } = usableEntrances(state, shape);
  const isSame = stale.rooms.size === 0 && state.entrances === shape.entrances;
  state.entrances = shape.entrances;
  if (isSame) return faults;
  const around = withNeighbours(state, stale.rooms);
  for (const machine of state.plan.machines) {
    const { number } = machine;
    const was = around.map((tile) => ({ count: tile.rooms[number]?.count, links: tile.links[number] }));
    for (const tile of stale.rooms) tile.rooms[number] = findRooms(tile, machine);
    for (const tile of around) tile.links[number] = roomLinks(state.grid, tile, machine);
    const entered = entrances && enteredAt(state, shape, machine, entrances);
    const hangsTheSame = around.every(
      (tile, i) => was[i]?.count === tile.rooms[number]?.count && sameLinks(was[i]?.links, tile.links[number]),
    );
    const changed = new Set(stale.rooms);
    // When all rooms hang together as before and are entered as before, so are those far away.
    if (!hangsTheSame || !sameEntered(state.entered[number], entered))
      enteredRooms(state.grid, machine, entered, (tile, reached) => {
        tile.reached[number] = reached;
        changed.add(tile);
      });
    state.entered[number] = entered;
    for (const tile of changed) {
      tile.reach[number] = reachIn(tile, machine);
      stale.pieces.add(tile);
    }
  }
  return faults;
}

/** Tiles and those around them: their links lead into each other. */
function withNeighbours({ grid }: LedgerState, tiles: ReadonlySet<Tile>): readonly Tile[] {
  if (tiles.size === grid.tiles.length) return grid.tiles;
  return [...new Set([...tiles].flatMap((tile) => grid.meeting(grownBox(tile.box, 1))))];
}

function sameLinks(a: readonly RoomLink[] | undefined, b: readonly RoomLink[] | undefined): boolean {
  if (!a || !b || a.length !== b.length) return false;
  return a.every((link, i) => link.room === b[i]?.room && link.tile === b[i]?.tile && link.there === b[i]?.there);
}

function sameEntered(a: readonly EnteredAt[] | null | undefined, b: readonly EnteredAt[] | null): boolean {
  if (!a || !b) return a === b;
  return a.length === b.length && a.every(({ tile, room }, i) => tile === b[i]?.tile && room === b[i]?.room);
}

type Entrance = FloorShape['entrances'][number];

/** Entrances on the floor; null when there is none, so that every room counts. */
function usableEntrances(
  state: LedgerState,
  shape: FloorShape,
): { entrances: readonly Entrance[] | null; faults: GeometryFault[] } {
  const faults: GeometryFault[] = [];
  const entrances = shape.entrances.filter((entrance) => {
    if (!isFinitePoint(entrance.at)) faults.push({ record: entrance.id, code: 'notANumber', at: null });
    else if (!isOnFloor(state, minus(entrance.at, state.origin)))
      faults.push({ record: entrance.id, code: 'entranceOutsideSlab', at: entrance.at });
    else return true;
    return false;
  });
  return { entrances: entrances.length > 0 ? entrances : null, faults };
}

/** On net floor, or as near to it as an entrance drawn on the outline is. */
function isOnFloor(state: LedgerState, [x, y]: Point): boolean {
  const near = [0, ON_EDGE_MM, -ON_EDGE_MM].flatMap((dx) =>
    [0, ON_EDGE_MM, -ON_EDGE_MM].map((dy): Point => [x + dx * 0.7, y + dy * 0.7]),
  );
  return near.some((at) => isNetAt(state.grid.tileAt(at[0], at[1]), at));
}

function isNetAt(tile: Tile | null, [x, y]: Point): boolean {
  if (!tile) return false;
  const edges = tileEdges(tile.box, outlinesIn(tile, 'hard'));
  return askAt(edges, placeIn(edges, HARD_LAYERS), x, y, isNet);
}

function enteredAt(
  state: LedgerState,
  shape: FloorShape,
  machine: MachineAt,
  entrances: readonly Entrance[],
): EnteredAt[] {
  const ways = waysOf(shape);
  return entrances.flatMap((entrance) => {
    if (blockedEntrance(entrance, machine.shape, ways)) return [];
    const at = minus(entrance.at, state.origin);
    const here = grownBox(boxOf([at]), ON_EDGE_MM);
    const runEdges = clustersNear(state, here).flatMap((cluster) => cluster.faces.runEdges);
    return roomsAt(at, machine, state.grid, runEdges, (box) =>
      facesIn(
        clustersNear(state, box).flatMap((cluster) => cluster.faces.chains.flatMap((chain) => chain.faces)),
        box,
      ),
    );
  });
}

function clustersNear(state: LedgerState, box: Box): Cluster[] {
  const items = state.grid.meeting(box).flatMap((tile) => tile.slots.get('hard') ?? []);
  const near = items
    .flatMap(({ owner }) => state.itemsByNumber.get(owner) ?? [])
    .filter((item) => boxesMeet(item.box, box));
  return [...new Set(near.flatMap((item) => state.clusterOf.get(item) ?? []))];
}
