import { type Box, boxOf, boxesMeet, grownBox } from '../box.ts';
import type { FloorShape, Point, SlabShape, WallShape } from '../floorShape.ts';
import { type Chain, type Face, faceBetween, turnedFace } from '../hardFace.ts';
import { type Way, tooTight, waysOfSlab, waysOfWall } from '../ways.ts';
import { type HardItem, isSlab } from './cluster.ts';
import { apronsAlong, seesApron } from './aprons.ts';
import { changedBoxes } from './changed.ts';
import { type Cluster, clustersOf, touch } from './clusters.ts';
import { newEdging } from './edging.ts';
import { type WidthByKind, bandOutlines, wholeStretch, BEHIND_MM } from './faceBands.ts';
import { type FloorItems, exchanges, present } from './floorItems.ts';
import { movedRing } from './hardItems.ts';
import { BACK, BAND, WAY, edgedLayer } from './layers.ts';
import { type ClusterBands, type LedgerState, type Stale, putIn, setTally } from './ledgerState.ts';
import { type Outline, ringOutline } from './outline.ts';
import type { MachineAt } from './reach.ts';
import { type Tile, replaceGroup } from './tiles.ts';

/*
 * First step: slabs, solids, walls and what is out of scope, the clusters they make, and the bands along their faces.
 *
 *     old item -> old cluster -> old bands       What was and what is change places in the tiles. Those in which the
 *     new item -> new cluster -> new bands       two look different are stale, and no others.
 */

/** Brings hard items and clusters up to date; what it changes makes tiles stale. */
export function hardStep(state: LedgerState, items: FloorItems, shape: FloorShape, stale: Stale): void {
  const lists = [items.slabs, items.solids, items.walls, items.scope];
  const gone = lists.flatMap((list) => list.gone);
  const fresh = lists.flatMap((list) => list.fresh);
  if (gone.length === 0 && fresh.length === 0) return;
  placeItems(state, gone, fresh, stale);
  const asked = touchedBy(state, gone, fresh, present(items.slabs)).filter(
    (item) => state.itemsByNumber.get(item.number) === item,
  );
  const near = (box: Box): readonly HardItem[] => itemsNear(state, box);
  const clusters = clustersOf(asked, near, present(items.slabs), state.clusterOf);
  replaceClusters(state, gone, clusters, stale);
  if (items.slabs.fresh.length + items.slabs.gone.length + items.walls.fresh.length + items.walls.gone.length > 0)
    placeWays(state, shape, stale);
}

/** Items into the tiles that they reach into, in place of those with their numbers. */
function placeItems(state: LedgerState, gone: readonly HardItem[], fresh: readonly HardItem[], stale: Stale): void {
  for (const { number, old, next } of exchanges(gone, fresh)) {
    markRooms(
      replaceGroup(state.grid, 'hard', number, old?.outlines ?? [], next?.outlines ?? [], state.marginMm),
      stale,
    );
    if (next) state.itemsByNumber.set(number, next);
    else state.itemsByNumber.delete(number);
  }
}

function markRooms(tiles: readonly Tile[], stale: Stale): void {
  for (const tile of tiles) {
    stale.rooms.add(tile);
    stale.pieces.add(tile);
  }
}

function itemsNear(state: LedgerState, box: Box): readonly HardItem[] {
  const found = new Set<HardItem>();
  for (const tile of state.grid.meeting(box))
    for (const { owner } of tile.slots.get('hard') ?? []) {
      const item = state.itemsByNumber.get(owner);
      if (item && boxesMeet(item.box, box)) found.add(item);
    }
  return [...found];
}

/** Items whose cluster may be another now: those of the clusters of what went, and of what the new ones may touch. */
function touchedBy(
  state: LedgerState,
  gone: readonly HardItem[],
  fresh: readonly HardItem[],
  slabs: readonly HardItem[],
): HardItem[] {
  const items = new Set<HardItem>(fresh);
  const addCluster = (item: HardItem): void => {
    for (const other of state.clusterOf.get(item)?.items ?? []) items.add(other);
    items.add(item);
  };
  const oldOf = new Map(gone.map((item) => [item.number, item]));
  const isBack = new Set(fresh.map((item) => item.number));
  for (const item of gone) {
    addCluster(item);
    // What stood on a slab that is taken away stands on another one, or on none.
    if (isSlab(item) && !isBack.has(item.number)) for (const other of itemsNear(state, item.box)) addCluster(other);
  }
  for (const item of fresh) {
    const old = oldOf.get(item.number);
    // Away from where a slab changed nothing but another slab comes to touch it, and nothing comes to stand on it.
    const boxes = old && isSlab(item) ? changedBoxes(old.outlines, item.outlines) : [item.box];
    for (const box of boxes)
      for (const other of itemsNear(state, grownBox(box, 1))) if (isSlab(item) || touch(item, other)) addCluster(other);
    if (isSlab(item)) for (const other of slabs) if (touch(item, other)) addCluster(other);
  }
  return [...items];
}

function replaceClusters(
  state: LedgerState,
  gone: readonly HardItem[],
  clusters: readonly Cluster[],
  stale: Stale,
): void {
  const kept = new Set(clusters);
  const old = new Set<Cluster>();
  for (const item of [...gone, ...clusters.flatMap((cluster) => cluster.items)]) {
    const cluster = state.clusterOf.get(item);
    if (!cluster || kept.has(cluster)) continue;
    old.add(cluster);
    state.clusterOf.delete(item);
  }
  const oldByOwner = new Map([...old].map((cluster) => [cluster.owner, cluster]));
  const fresh = clusters.filter((cluster) => !state.bands.has(cluster));
  for (const cluster of fresh) {
    const before = oldByOwner.get(cluster.owner);
    oldByOwner.delete(cluster.owner);
    exchange(state, before ?? null, cluster, stale);
  }
  for (const cluster of oldByOwner.values()) exchange(state, cluster, null, stale);
}

/** One cluster in place of another. */
function exchange(state: LedgerState, before: Cluster | null, after: Cluster | null, stale: Stale): void {
  const oldBands = (before && state.bands.get(before)) ?? new Map<string, readonly Outline[]>();
  const newBands = after ? clusterBands(state, after) : new Map<string, readonly Outline[]>();
  const owner = (after ?? before)?.owner ?? 0;
  for (const slot of new Set([...oldBands.keys(), ...newBands.keys()])) {
    const tiles = replaceGroup(
      state.grid,
      slot,
      owner,
      oldBands.get(slot) ?? [],
      newBands.get(slot) ?? [],
      slot.startsWith('edged') ? 0 : state.marginMm,
    );
    if (slot.startsWith('edged')) for (const tile of tiles) stale.pieces.add(tile);
    else markRooms(tiles, stale);
  }
  if (before) dropCluster(state, before, stale);
  if (!after) return;
  for (const item of after.items) state.clusterOf.set(item, after);
  putInOrder(state.clusters, after);
  state.bands.set(after, newBands);
  const edging = newEdging(after, state.grid, state.plan.edges);
  state.edgingOf.set(after, edging);
  stale.clusters.add(after);
  for (const tile of edging.inTile.keys()) {
    putIn(state.edgingsIn, tile, edging);
    stale.faces.add(tile);
  }
}

function putInOrder(clusters: Cluster[], cluster: Cluster): void {
  let at = clusters.length;
  while (at > 0 && (clusters[at - 1] as Cluster).owner > cluster.owner) at -= 1;
  clusters.splice(at, 0, cluster);
}

function dropCluster(state: LedgerState, cluster: Cluster, stale: Stale): void {
  const edging = state.edgingOf.get(cluster);
  if (edging) for (const tile of edging.inTile.keys()) state.edgingsIn.get(tile)?.delete(edging);
  for (const [cascade, strips] of (state.strips.get(cluster) ?? []).entries()) {
    for (const tile of replaceGroup(state.grid, `strip ${cascade}`, cluster.owner, strips ?? [], [], 0))
      stale.pieces.add(tile);
    state.ownStrips.delete(`${cascade} ${cluster.owner}`);
  }
  stale.clusters.add(cluster);
  setTally(state, cluster, null, stale);
  state.clusters.splice(state.clusters.indexOf(cluster), 1);
  for (const map of [state.bands, state.edgingOf, state.strips]) map.delete(cluster);
}

/** Every band of a cluster's faces: for each machine where its body and its head stay off, for each cascade its strip. */
function clusterBands(state: LedgerState, cluster: Cluster): ClusterBands {
  const bands = new Map<string, readonly Outline[]>();
  const { chains, runEdges } = cluster.standing;
  const isFilled = cluster.onSlab && chains.length === 1;
  const bandsOf = (faces: readonly Chain[], widths: WidthByKind, layer: number, behindMm: number): Outline[] =>
    faces.flatMap((chain) => bandOutlines({ ...wholeStretch(chain), isFilled }, widths, layer, behindMm));
  const kept = [...chains, ...cluster.beyond];
  const skins = (widths: WidthByKind): Outline[] =>
    cluster.standing.skins.flatMap(({ a, b }) =>
      bandOutlines(
        { faces: [faceBetween(a, b, 'wall', '')], closed: false, roundStart: false, roundEnd: false },
        widths,
        BAND,
      ),
    );
  for (const machine of state.plan.machines) {
    const { bodyMm, standMm } = machine.sizes;
    const aprons = apronsAlong(runEdges, machine);
    const backs = facesBeside(cluster, aprons.outlines, machine.sizes.mostMm);
    const backsOf = (widths: WidthByKind): Outline[] =>
      backs.flatMap((face) => backOutlines(face, widths, seesApron(face, aprons) ? BAND : BACK));
    bands.set(`room ${machine.number}`, aprons.outlines);
    bands.set(`body ${machine.number}`, [
      ...bandsOf(kept, bodyMm, BAND, BEHIND_MM),
      ...skins(bodyMm),
      ...backsOf(bodyMm),
    ]);
    bands.set(`head ${machine.number}`, [
      ...bandsOf(kept, standMm, BAND, BEHIND_MM),
      ...skins(standMm),
      ...backsOf(standMm),
    ]);
  }
  for (const [cascade, { widths }] of state.plan.edges.entries())
    bands.set(`edged ${cascade}`, bandsOf(chains, widths, edgedLayer(cascade), 0));
  return bands;
}

/** Faces near an apron: they are hard from behind too, for a machine that stands there. */
function facesBeside(cluster: Cluster, aprons: readonly Outline[], reachMm: number): Face[] {
  if (aprons.length === 0) return [];
  const faces = cluster.standing.chains.flatMap((chain) => chain.faces);
  return faces.filter(({ a, b }) => {
    const box = grownBox(boxOf([a, b]), reachMm);
    return aprons.some((each) => boxesMeet(each.box, box));
  });
}

/** As a band, it keeps machines off the slab as well, across the open edge from which the face is seen. */
function backOutlines(face: Face, widths: WidthByKind, layer: number): Outline[] {
  const behind = { faces: [turnedFace(face)], closed: false, roundStart: true, roundEnd: true };
  return bandOutlines(behind, widths, layer);
}

/** Passages that are closed to a machine. */
function placeWays(state: LedgerState, shape: FloorShape, stale: Stale): void {
  const records: readonly (SlabShape | WallShape)[] = [...shape.slabs, ...shape.walls];
  for (const machine of state.plan.machines) {
    const slot = `way ${machine.number}`;
    const after = records.flatMap((record) => closedWays(record, machine).map((way) => wayOutline(way, state.origin)));
    const before = state.waysOf.get(slot) ?? [];
    markRooms(replaceGroup(state.grid, slot, 0, before, after, state.marginMm), stale);
    state.waysOf.set(slot, after);
  }
}

const waysOfRecord = new WeakMap<object, readonly Way[]>();

function closedWays(record: SlabShape | WallShape, machine: MachineAt): readonly Way[] {
  const ways = waysOfRecord.get(record) ?? ('body' in record ? waysOfWall(record) : waysOfSlab(record));
  waysOfRecord.set(record, ways);
  return ways.filter((way) => tooTight(way.passage, machine.shape) !== null);
}

function wayOutline(way: Way, origin: Point): Outline {
  return ringOutline(movedRing(way.ring, origin), WAY, 0);
}
