import { type Box, boxesMeet, grownBox } from '../box.ts';
import type { FloorShape, Point, SlabShape, WallShape } from '../floorShape.ts';
import { type Face, faceBetween, turnedFace } from '../hardFace.ts';
import { along, minus, quarterTurn, unit } from '../point.ts';
import { type Way, tooTight, waysOfSlab, waysOfWall } from '../ways.ts';
import type { HardItem } from './cluster.ts';
import { type Cluster, clustersOf, isSlab } from './clusters.ts';
import { newEdging } from './edging.ts';
import { type WidthByKind, bandOutlines, wholeStretch } from './faceBands.ts';
import type { BoundaryFace } from './hardFaces.ts';
import { movedRing } from './hardItems.ts';
import { APRON, BACK, BAND, WAY, edgedLayer } from './layers.ts';
import { type ClusterBands, type LedgerState, type Stale, tilesNear } from './ledgerState.ts';
import { type Outline, ringOutline } from './outline.ts';
import type { MachineAt } from './reach.ts';
import { replaceGroup } from './tiles.ts';

/*
 * First step: slabs, solids, walls and what is out of scope, the clusters they make, and the bands along their faces.
 */

/** Brings hard items and clusters up to date; what it changes makes tiles stale. */
export function hardStep(state: LedgerState, shape: FloorShape, before: readonly HardItem[], stale: Stale): void {
  const now = new Set(state.items.hard);
  const was = new Set(before);
  const gone = before.filter((item) => !now.has(item));
  const fresh = state.items.hard.filter((item) => !was.has(item));
  if (gone.length === 0 && fresh.length === 0) return;
  placeItems(state, gone, fresh, stale);
  const slabs = state.items.hard.filter(isSlab);
  const mustRegroup = touchedBy(state, gone, fresh);
  const isSlabChanged = [...gone, ...fresh].some(isSlab);
  const asked = isSlabChanged ? state.items.hard : mustRegroup.filter((item) => now.has(item));
  const near = (box: Box): readonly HardItem[] => itemsNear(state, box);
  const clusters = clustersOf(asked, near, slabs, state.clusterOf);
  replaceClusters(state, gone, clusters, stale);
  placeWays(state, shape, stale);
}

/** What items stood in the tiles for, by their number. */
function placeItems(state: LedgerState, gone: readonly HardItem[], fresh: readonly HardItem[], stale: Stale): void {
  const numbers = new Set([...gone, ...fresh].map((item) => item.number));
  const oldOf = new Map(gone.map((item) => [item.number, item]));
  const newOf = new Map(fresh.map((item) => [item.number, item]));
  for (const number of numbers) {
    const [old, next] = [oldOf.get(number), newOf.get(number)];
    const boxes = replaceGroup(state.grid, 'hard', number, old?.outlines ?? [], next?.outlines ?? [], state.marginMm);
    markRooms(state, boxes, stale);
    if (old) state.itemsByNumber.delete(number);
    if (next) state.itemsByNumber.set(number, next);
  }
}

export function markRooms(state: LedgerState, boxes: readonly Box[], stale: Stale): void {
  for (const tile of tilesNear(state, boxes, state.marginMm)) {
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
function touchedBy(state: LedgerState, gone: readonly HardItem[], fresh: readonly HardItem[]): HardItem[] {
  const items = new Set<HardItem>(fresh);
  const addCluster = (item: HardItem): void => {
    for (const other of state.clusterOf.get(item)?.items ?? []) items.add(other);
  };
  for (const item of gone) addCluster(item);
  for (const item of fresh) for (const other of itemsNear(state, grownBox(item.box, 1))) addCluster(other);
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
    if (cluster && !kept.has(cluster)) old.add(cluster);
    if (cluster && !kept.has(cluster)) state.clusterOf.delete(item);
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
    const boxes = replaceGroup(
      state.grid,
      slot,
      owner,
      oldBands.get(slot) ?? [],
      newBands.get(slot) ?? [],
      state.marginMm,
    );
    if (slot.startsWith('edged')) for (const tile of tilesNear(state, boxes, 0)) stale.pieces.add(tile);
    else markRooms(state, boxes, stale);
  }
  if (before) dropCluster(state, before, stale);
  if (!after) return;
  for (const item of after.items) state.clusterOf.set(item, after);
  state.bands.set(after, newBands);
  const edging = newEdging(after, state.grid, state.plan.edges);
  state.edgingOf.set(after, edging);
  for (const tile of edging.inTile.keys()) {
    tile.edgings.add(edging);
    stale.faces.add(tile);
  }
}

function dropCluster(state: LedgerState, cluster: Cluster, stale: Stale): void {
  const edging = state.edgingOf.get(cluster);
  for (const tile of edging?.inTile.keys() ?? []) tile.edgings.delete(edging as NonNullable<typeof edging>);
  for (const [cascade, strips] of (state.strips.get(cluster) ?? []).entries()) {
    const boxes = replaceGroup(state.grid, `strip ${cascade}`, cluster.owner, strips ?? [], [], 0);
    for (const tile of tilesNear(state, boxes, 0)) stale.pieces.add(tile);
  }
  for (const cascade of state.plan.edges.keys()) state.ownStrips.delete(`${cascade} ${cluster.owner}`);
  for (const map of [state.bands, state.edgingOf, state.tallyOf, state.strips]) map.delete(cluster);
}

/** Every band of a cluster's faces: for each machine where its body and its head stay off, for each cascade its strip. */
function clusterBands(state: LedgerState, cluster: Cluster): ClusterBands {
  const bands = new Map<string, readonly Outline[]>();
  const { chains, runEdges } = cluster.faces;
  const isFilled = cluster.onSlab && chains.length === 1;
  const along = (widths: WidthByKind, layer: number): Outline[] =>
    chains.flatMap((chain) => bandOutlines({ ...wholeStretch(chain), isFilled }, widths, layer));
  const skins = (widths: WidthByKind): Outline[] =>
    cluster.faces.skins.flatMap(({ a, b }) =>
      bandOutlines(
        { faces: [faceBetween(a, b, 'wall', '')], closed: false, roundStart: false, roundEnd: false },
        widths,
        BAND,
      ),
    );
  for (const machine of state.plan.machines) {
    const { bodyMm, standMm } = machine.sizes;
    const aprons = runEdges.map((edge) => apron(edge, machine));
    const backs = facesBeside(cluster, aprons, machine.sizes.mostMm);
    bands.set(`room ${machine.number}`, aprons);
    bands.set(`body ${machine.number}`, [
      ...along(bodyMm, BAND),
      ...skins(bodyMm),
      ...backs.flatMap((face) => backOutlines(face, bodyMm)),
    ]);
    bands.set(`head ${machine.number}`, [
      ...along(standMm, BAND),
      ...skins(standMm),
      ...backs.flatMap((face) => backOutlines(face, standMm)),
    ]);
  }
  for (const [cascade, { widths }] of state.plan.edges.entries())
    bands.set(`edged ${cascade}`, along(widths, edgedLayer(cascade)));
  return bands;
}

/** Floor beyond an edge where it runs on, deep enough for the machine to stand outside. */
function apron({ a, b }: BoundaryFace, { shape, sizes }: MachineAt): Outline {
  const depth = 2 * Math.max(shape.headRadiusMm + shape.clearanceMm.wall, shape.passageMm / 2, sizes.leadMm) + 200;
  const outward = quarterTurn(unit(minus(a, b)));
  const ring: Point[] = [a, b, along(b, outward, depth), along(a, outward, depth)];
  return ringOutline(ring, APRON, 0);
}

/** Faces near an apron: they are hard from behind too, for a machine that stands there. */
function facesBeside(cluster: Cluster, aprons: readonly Outline[], reachMm: number): Face[] {
  if (aprons.length === 0) return [];
  const faces = cluster.faces.chains.flatMap((chain) => chain.faces);
  return faces.filter(({ a, b }) => {
    const box = grownBox(
      {
        minX: Math.min(a[0], b[0]),
        minY: Math.min(a[1], b[1]),
        maxX: Math.max(a[0], b[0]),
        maxY: Math.max(a[1], b[1]),
      },
      reachMm,
    );
    return aprons.some((each) => boxesMeet(each.box, box));
  });
}

function backOutlines(face: Face, widths: WidthByKind): Outline[] {
  const behind = { faces: [turnedFace(face)], closed: false, roundStart: true, roundEnd: true };
  return bandOutlines(behind, widths, BACK);
}

/** Passages that are closed to a machine. */
function placeWays(state: LedgerState, shape: FloorShape, stale: Stale): void {
  const records: readonly (SlabShape | WallShape)[] = [...shape.slabs, ...shape.walls];
  for (const machine of state.plan.machines) {
    const slot = `way ${machine.number}`;
    const after = records.flatMap((record) =>
      closedWays(record, machine).map((way) => wayOutline(way, state.memory.origin)),
    );
    const before = state.waysOf.get(slot) ?? [];
    markRooms(state, replaceGroup(state.grid, slot, 0, before, after, state.marginMm), stale);
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
