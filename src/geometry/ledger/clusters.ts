import { type Box, boxesMeet, grownBox } from '../box.ts';
import { type Chain, type Face, faceBetween, turnBetween } from '../hardFace.ts';
import { ringArea } from '../ring.ts';
import { type ClusterTrace, type HardItem, isSlab, traceCluster } from './cluster.ts';
import { xAt } from './edge.ts';
import { type ClusterFaces, clusterFaces } from './hardFaces.ts';
import { SCOPE, SOLID } from './layers.ts';

/*
 * Which things touch. A slab touches what reaches its outline, not what stands on it; anything else touches what its
 * box meets. So most columns are alone, and moving one traces it and nothing else.
 */
export interface Cluster {
  readonly items: readonly HardItem[];
  /** Place among the clusters: that of its first item. */
  readonly owner: number;
  readonly onSlab: boolean;
  readonly trace: Pick<ClusterTrace, 'grossMm2' | 'outerMm' | 'takenMm2'>;
  readonly faces: ClusterFaces;
  /** The faces that machines keep off: those of its floor, and those beside floor that is out of scope, where they may drive. */
  readonly standing: ClusterFaces;
  /** Faces of what stands beyond the slab, which machines keep off where the floor runs on there. */
  readonly beyond: readonly Chain[];
}

/** Things this near, in mm, may touch. */
const NEAR_MM = 0.2;
/** Of what is about this thin, in mm, the trace says which sides are faces, as of everything else. */
const THIN_MM = 0.2;
/** An edge that turns this far, in radians, turns back on the one before. */
const STRAIGHT_BACK = Math.PI - 1e-6;

/** The clusters of some items, each with its number-lowest item first. `near` finds items by box, `slabs` are all slabs of the floor, `known` the clusters so far: one of the same items stays as it is. */
export function clustersOf(
  items: readonly HardItem[],
  near: (box: Box) => readonly HardItem[],
  slabs: readonly HardItem[],
  known: ReadonlyMap<HardItem, Cluster>,
): Cluster[] {
  return groupsOf(items, near).map((group) => {
    const onSlab = !group.some(isSlab) && standsOn(group[0] as HardItem, slabs);
    const old = known.get(group[0] as HardItem);
    const isSame =
      old?.onSlab === onSlab && old.items.length === group.length && old.items.every((item, i) => item === group[i]);
    return old && isSame ? old : makeCluster(group, onSlab);
  });
}

function makeCluster(items: readonly HardItem[], onSlab: boolean): Cluster {
  const lone = items.length === 1 && onSlab ? loneSolid(items[0] as HardItem) : null;
  const owner = (items[0] as HardItem).number;
  if (lone) return { items, owner, onSlab, ...lone, standing: lone.faces, beyond: [] };
  const trace = traceCluster(items, onSlab);
  const faces = clusterFaces(trace, items);
  const solid = items.filter((item) => item.outlines[0]?.layer !== SCOPE);
  const bodies = solid.filter((item) => !isSlab(item));
  const standing = openBehind(solid.length === items.length ? faces : facesOf(solid, onSlab), solid, bodies);
  const isBeyond = !onSlab && (bodies.length === items.length || standing.runEdges.length > 0);
  const beyond = isBeyond ? facesOf(bodies, true).chains : [];
  return { items, owner, onSlab, trace, faces, standing, beyond };
}

/** Where the floor runs on beyond an edge of a slab it does so behind a column in that edge as well: its bands keep machines off, and they drive round it. */
function openBehind(faces: ClusterFaces, solid: readonly HardItem[], bodies: readonly HardItem[]): ClusterFaces {
  const slabs = solid.filter(isSlab);
  const isOpen = slabs.some(({ drawn }) => drawn.some(({ kind }) => kind === 'run'));
  return isOpen && bodies.length > 0 ? { ...faces, runEdges: facesOf(slabs, false).runEdges } : faces;
}

function facesOf(items: readonly HardItem[], onSlab: boolean): ClusterFaces {
  return items.length === 0
    ? { chains: [], runEdges: [], skins: [] }
    : clusterFaces(traceCluster(items, onSlab), items);
}

/** A column on its own, without inner corners, is its own boundary; null for anything else. Most things are such columns. */
function loneSolid({ outlines, drawn, number }: HardItem): Pick<Cluster, 'trace' | 'faces'> | null {
  if (outlines[0]?.layer !== SOLID || outlines.length > 1) return null;
  const faces = drawn
    .filter(({ ax, ay, bx, by }) => ax !== bx || ay !== by)
    .map(({ ax, ay, bx, by, of }) => faceBetween([ax, ay], [bx, by], 'obstruction', of));
  if (!isConvex(faces)) return null;
  const area = ringArea(drawn.map(({ ax, ay }) => [ax, ay]));
  const around = faces.reduce((sum, face) => sum + face.lengthMm, 0);
  if (area <= THIN_MM * around) return null;
  return {
    trace: { grossMm2: 0, outerMm: 0, takenMm2: new Map([[number, area]]) },
    faces: { chains: [{ faces, closed: true }], runEdges: [], skins: [] },
  };
}

/** Once round with the floor always on the outside: a star that winds twice turns twice as far. */
function isConvex(faces: readonly Face[]): boolean {
  const turns = faces.map((face, i) => turnBetween(faces.at(i - 1) as Face, face));
  const total = turns.reduce((sum, turn) => sum + turn, 0);
  const isOutside = turns.every((turn) => turn <= 0 && turn >= -STRAIGHT_BACK);
  return faces.length >= 3 && isOutside && Math.abs(total + 2 * Math.PI) <= 1e-6;
}

/** True when an item that touches no slab's outline stands on one. */
export function standsOn(item: HardItem, slabs: readonly HardItem[]): boolean {
  const first = item.drawn[0];
  if (!first) return false;
  return slabs.some(({ outlines, box }) => {
    if (!boxesMeet(box, item.box)) return false;
    let winding = 0;
    for (const { edges } of outlines)
      for (const edge of edges)
        if (edge.y0 <= first.ay && first.ay < edge.y1 && xAt(edge, first.ay) < first.ax) winding += edge.up;
    return winding !== 0;
  });
}

/** Items in groups that hang together through items that touch. */
function groupsOf(items: readonly HardItem[], near: (box: Box) => readonly HardItem[]): HardItem[][] {
  const asked = new Set(items);
  const groupOf = new Map<HardItem, HardItem[]>();
  const ordered = [...asked].toSorted((a, b) => a.number - b.number);
  for (const first of ordered) {
    if (groupOf.has(first)) continue;
    const group: HardItem[] = [];
    const waiting = [first];
    groupOf.set(first, group);
    for (let item = waiting.pop(); item; item = waiting.pop()) {
      group.push(item);
      for (const other of near(grownBox(item.box, NEAR_MM))) {
        if (groupOf.has(other) || !asked.has(other) || !touch(item, other)) continue;
        groupOf.set(other, group);
        waiting.push(other);
      }
    }
    group.sort((a, b) => a.number - b.number);
  }
  return [...new Set(groupOf.values())];
}

/** True when two items may have a common boundary. */
export function touch(a: HardItem, b: HardItem): boolean {
  if (isSlab(a) && isSlab(b)) return boxesMeet(grownBox(a.box, NEAR_MM), b.box);
  if (isSlab(a)) return outlineMeets(a, grownBox(b.box, NEAR_MM));
  if (isSlab(b)) return outlineMeets(b, grownBox(a.box, NEAR_MM));
  return boxesMeet(grownBox(a.box, NEAR_MM), b.box);
}

function outlineMeets(slab: HardItem, box: Box): boolean {
  return slab.drawn.some(
    ({ ax, ay, bx, by }) =>
      Math.min(ax, bx) <= box.maxX &&
      Math.max(ax, bx) >= box.minX &&
      Math.min(ay, by) <= box.maxY &&
      Math.max(ay, by) >= box.minY,
  );
}
