import type { Point } from '../floorShape.ts';
import { layersOf, tileCells } from './cells.ts';
import type { Cluster } from './clusters.ts';
import { type Edging, lookAlong, settleEdging } from './edging.ts';
import { tallyFaces } from './faceTally.ts';
import { type CoverItem, type FloorItems, exchanges, present } from './floorItems.ts';
import { ZONE, stripLayer } from './layers.ts';
import { type LedgerState, type Stale, putIn, setTally } from './ledgerState.ts';
import { newLineRun, settleLine } from './lineRuns.ts';
import type { Outline } from './outline.ts';
import { homeOf, NO_ZONE } from './place.ts';
import { type TileEdges, addOutline, tileEdges } from './tileEdges.ts';
import { type Tile, outlinesIn, replaceGroup } from './tiles.ts';
import { askAt } from './walks.ts';

/*
 * Third step, in the tiles that changed:
 *
 *     hard, bands, reach, zones -> edges of the tile -> faces looked along -> strips added -> cells swept
 *                                                                                               |
 *                                                              lines through the tile walked <--+
 */

/** Zones and findings: what is laid over the floor. `isMoved`: a zone that other machines work than before. */
export function coverStep(
  state: LedgerState,
  { zones, findings }: Pick<FloorItems, 'zones' | 'findings'>,
  isMoved: (zone: CoverItem) => boolean,
  stale: Stale,
): void {
  const mark = (tiles: readonly Tile[]): void => tiles.forEach((tile) => stale.pieces.add(tile));
  for (const list of [zones, findings]) {
    for (const { number, old, next } of exchanges(list.gone, list.fresh))
      mark(replaceGroup(state.grid, 'cover', number, old?.outlines ?? [], next?.outlines ?? [], 0));
  }
  for (const zone of present(zones))
    if (isMoved(zone)) for (const outline of zone.outlines) mark(state.grid.meeting(outline.box));
}

export function pieceStep(state: LedgerState, stale: Stale): void {
  for (const tile of stale.pieces) putTogether(state, tile);
  faceStep(state, stale);
  for (const tile of stale.pieces) {
    const edges = edgesOf(state, tile);
    tile.isEdged = addStrips(state, tile, edges);
    tile.cells = tileCells(edges, state.cascades, tile.isEdged);
    tile.traces = null;
  }
}

/** What the ledger sweeps in a tile. */
function edgesOf(state: LedgerState, tile: Tile): TileEdges {
  return tile.edges ?? putTogether(state, tile);
}

/** All but the strips, which follow from it. */
function putTogether(state: LedgerState, tile: Tile): TileEdges {
  const edged = state.plan.sequences.flatMap((_, cascade) => outlinesIn(tile, `edged ${cascade}`));
  const reach = tile.reach.flatMap((outline) => outline ?? []);
  tile.edges = tileEdges(tile.box, [...outlinesIn(tile, 'hard'), ...edged, ...reach, ...outlinesIn(tile, 'cover')]);
  return tile.edges;
}

function faceStep(state: LedgerState, stale: Stale): void {
  const looked = new Set<Edging>();
  const look = new Set([...stale.pieces, ...stale.faces]);
  for (const tile of look) {
    const edges = edgesOf(state, tile);
    for (const edging of state.edgingsIn.get(tile) ?? []) {
      lookAlong(edging, tile, edges, state.cascades, state.plan.edges);
      looked.add(edging);
    }
  }
  for (const edging of looked) {
    const { cluster } = edging;
    settleEdging(edging, state.plan.edges);
    const tally = tallyFaces(edging, state.cascades, state.plan.edges, (at) => zoneAt(state, at));
    setTally(state, cluster, tally, stale);
    placeStrips(state, cluster, edging, stale);
  }
}

/** Strips that changed, or a band that was strip all along and is not any more: their tiles are put together again. */
function placeStrips(state: LedgerState, cluster: Cluster, edging: Edging, stale: Stale): void {
  const before = state.strips.get(cluster);
  for (const [cascade, strips] of edging.strips.entries()) {
    const old = before?.[cascade];
    const changed = replaceGroup(state.grid, `strip ${cascade}`, cluster.owner, old ?? [], strips ?? [], 0);
    const isOther = (old === null || old === undefined) !== (strips === null);
    const edged = isOther ? (state.bands.get(cluster)?.get(`edged ${cascade}`) ?? []) : [];
    for (const tile of [...changed, ...edged.flatMap((outline) => state.grid.meeting(outline.box))]) {
      if (stale.pieces.has(tile)) continue;
      stale.pieces.add(tile);
      putTogether(state, tile);
    }
    if (strips === null) state.ownStrips.delete(`${cascade} ${cluster.owner}`);
    else state.ownStrips.add(`${cascade} ${cluster.owner}`);
  }
  state.strips.set(cluster, edging.strips);
}

/**
 * Where some face near a tile has no strip, the strips of all are put in as outlines of their own. Answers, by cascade,
 * where that is not so and the whole band is strip.
 */
function addStrips(state: LedgerState, tile: Tile, edges: TileEdges): boolean[] {
  return state.plan.sequences.map((_, cascade) => {
    const groups = tile.slots.get(`edged ${cascade}`) ?? [];
    const hasOwn = (owner: number): boolean => state.ownStrips.has(`${cascade} ${owner}`);
    if (!groups.some(({ owner }) => hasOwn(owner))) return true;
    const layer = stripLayer(cascade);
    const own = new Map((tile.slots.get(`strip ${cascade}`) ?? []).map((group) => [group.owner, group.outlines]));
    for (const { owner, outlines } of groups) {
      const strips = hasOwn(owner)
        ? (own.get(owner) ?? [])
        : outlines.map((outline): Outline => ({ ...outline, layer }));
      for (const strip of strips) addOutline(edges, strip);
    }
    return false;
  });
}

function zoneAt(state: LedgerState, [x, y]: Point): number {
  const edges = state.grid.tileAt(x, y)?.edges;
  if (!edges) return NO_ZONE;
  const home = homeOf(edges, layersOf(state.cascades));
  return edges.rings.some(({ layer }) => layer === ZONE) ? askAt(edges, home, x, y, (place) => place.zone) : home.zone;
}

/** Lines that changed, and those through tiles that did. */
export function lineStep(state: LedgerState, { gone, fresh }: FloorItems['lines'], stale: Stale): void {
  for (const line of gone) {
    const run = state.runOf.get(line);
    if (!run) continue;
    for (const tile of run.tiles) state.linesIn.get(tile)?.delete(run);
    state.runOf.delete(line);
    stale.goneRuns.add(run);
  }
  for (const line of fresh) {
    const run = newLineRun(line, state.grid);
    state.runOf.set(line, run);
    for (const tile of run.tiles) putIn(state.linesIn, tile, run);
    stale.runs.add(run);
  }
  for (const tile of stale.pieces) for (const run of state.linesIn.get(tile) ?? []) stale.runs.add(run);
  for (const run of stale.runs) {
    for (const tile of run.tiles) edgesOf(state, tile);
    settleLine(run, state.cascades);
  }
}
