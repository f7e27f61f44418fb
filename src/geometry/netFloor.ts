import type { FloorShape, GeometryFault, MachineShape, Passage, Point, Region, Ring } from './floorShape.ts';
import { type BoundaryEdge, type SourceEdge, chainsOf, tagBoundary } from './boundary.ts';
import { boxOf, boxesMeet } from './box.ts';
import { type NotedClips, notedClips } from './clipNotes.ts';
import { type Chain, faceBetween } from './hardFace.ts';
import { type RegionIndex, regionIndex } from './regionIndex.ts';
import { corner, perimeter, regionArea, signedArea } from './ring.ts';
import { skinsBetweenSlabs } from './slabJoints.ts';

/** The floor before any machine: what is net, and the faces around it. Regions in mm, `deductedM2` in m2 by id. */
export interface NetFloor {
  readonly gross: Region;
  readonly net: Region;
  readonly index: RegionIndex;
  readonly chains: readonly Chain[];
  /** Edges beyond which the same floor runs on. */
  readonly runEdges: readonly BoundaryEdge[];
  /** Floor a machine may cross though it is not in the sum. */
  readonly beside: Region;
  readonly ways: readonly Way[];
  readonly deductedM2: Readonly<Record<string, number>>;
  readonly perimeterM: number;
}

/** A passage with the floor it lies on: the gap of a wall, or a thin strip along a doorway in the perimeter. */
export interface Way {
  readonly passage: Passage;
  readonly ring: Ring;
}

/** Half the thickness, in mm, that stands for a doorway drawn as a line. */
const DOORWAY_HALF_MM = 2;

/** Net floor of a sound shape: slabs less solids, walls (their gaps stay floor) and what is out of scope. */
export function netFloor(shape: FloorShape, faults: GeometryFault[]): NetFloor {
  const clips = notedClips(faults);
  const gross = clips.union(
    shape.slabs[0]?.id ?? 'slab',
    shape.slabs.map((slab) => [[slab.ring]]),
  );
  const bodies = bodiesOf(shape, clips);
  const skins = skinsBetweenSlabs(shape, regionIndex(gross)).map((ring) => [ring]);
  const net = clips.subtract(shape.slabs[0]?.id ?? 'slab', gross, [...skins, ...bodies.flatMap((body) => body.region)]);
  const index = regionIndex(net);
  const edges = tagBoundary(net, sourceEdges(shape));
  return {
    gross,
    net,
    index,
    chains: edges.flatMap(chainsOf),
    runEdges: edges.flat().filter((edge) => edge.kind === 'run'),
    beside: shape.outOfScope.map((patch) => [patch.ring]),
    ways: waysOf(shape),
    deductedM2: deductions(gross, bodies, clips),
    perimeterM: gross.reduce((sum, [outer]) => sum + (outer ? perimeter(outer) : 0), 0) / 1000,
  };
}

interface Body {
  readonly id: string;
  readonly region: Region;
}

function bodiesOf(shape: FloorShape, clips: NotedClips): readonly Body[] {
  const solids = shape.solids.filter((solid) => solid.solid).map((solid) => ({ id: solid.id, region: [[solid.ring]] }));
  const walls = shape.walls.map((wall) => ({
    id: wall.id,
    region: clips.subtract(
      wall.id,
      [[wall.body]],
      wall.gaps.map((gap) => [gap.ring]),
    ),
  }));
  const scope = shape.outOfScope.map((patch) => ({ id: patch.id, region: [[patch.ring]] }));
  return [...solids, ...walls, ...scope];
}

/** What each body takes from the gross floor; where two overlap, the earlier one takes it. */
function deductions(gross: Region, bodies: readonly Body[], clips: NotedClips): Readonly<Record<string, number>> {
  const index = regionIndex(gross);
  const boxes = bodies.map((body) => boxOf(body.region.flat(2)));
  const taken: Record<string, number> = {};
  for (const [i, { id, region }] of bodies.entries()) {
    const box = boxes[i];
    if (!box) continue;
    const met = bodies.slice(0, i).filter((_, j) => boxesMeet(box, boxes[j] ?? box));
    const first = region[0]?.[0]?.[0];
    const isInside = first !== undefined && !index.outlineMeets(box) && index.contains(first);
    const onFloor = isInside ? region : clips.intersect(id, gross, region);
    const own =
      met.length === 0
        ? onFloor
        : clips.subtract(
            id,
            onFloor,
            met.flatMap((body) => body.region),
          );
    taken[id] = (taken[id] ?? 0) + regionArea(own) / 1e6;
  }
  return taken;
}

/** All edges, each in the direction that has the floor on its left. */
function sourceEdges(shape: FloorShape): SourceEdge[] {
  const sources: SourceEdge[] = [];
  const add = (
    ring: Ring,
    floor: 'inside' | 'outside',
    kindOf: (i: number) => SourceEdge['kind'],
    of: string,
  ): void => {
    const isAsDrawn = signedArea(ring) > 0 === (floor === 'inside');
    for (const [i, at] of ring.entries()) {
      const [a, b] = isAsDrawn ? [at, corner(ring, i + 1)] : [corner(ring, i + 1), at];
      sources.push({ a, b, kind: kindOf(i), of });
    }
  };
  for (const slab of shape.slabs) add(slab.ring, 'inside', (i) => slab.faces[i] ?? 'wall', slab.id);
  for (const solid of shape.solids) if (solid.solid) add(solid.ring, 'outside', () => 'obstruction', solid.id);
  for (const wall of shape.walls) {
    add(wall.body, 'outside', () => 'wall', wall.id);
    for (const gap of wall.gaps) add(gap.ring, 'inside', () => 'wall', wall.id);
  }
  for (const patch of shape.outOfScope) add(patch.ring, 'outside', () => 'soft', patch.id);
  return sources;
}

function waysOf(shape: FloorShape): Way[] {
  const gaps = shape.walls.flatMap((wall) => wall.gaps.map(({ passage, ring }) => ({ passage, ring })));
  const doors = shape.slabs.flatMap((slab) =>
    slab.passages.flatMap((passage, i) =>
      passage ? [{ passage, ring: thinRing(corner(slab.ring, i), corner(slab.ring, i + 1)) }] : [],
    ),
  );
  return [...gaps, ...doors];
}

/** A line made a ring a few mm thick. */
function thinRing(a: Point, b: Point): Ring {
  const { inward } = faceBetween(a, b, 'wall', '');
  const off = (p: Point, by: number): Point => [p[0] + inward[0] * by, p[1] + inward[1] * by];
  return [off(a, -DOORWAY_HALF_MM), off(b, -DOORWAY_HALF_MM), off(b, DOORWAY_HALF_MM), off(a, DOORWAY_HALF_MM)];
}

/** Why a machine does not fit through a passage; null when it does. Half a millimetre short still fits. */
export function tooTight(
  passage: Pick<Passage, 'widthMm' | 'heightMm'>,
  machine: MachineShape,
): { readonly needsMm: number; readonly what: 'width' | 'height' } | null {
  if (passage.widthMm < machine.passageMm - 0.5) return { needsMm: machine.passageMm, what: 'width' };
  if (passage.heightMm !== null && passage.heightMm < machine.heightMm)
    return { needsMm: machine.heightMm, what: 'height' };
  return null;
}
