import { boxAroundAll } from '../box.ts';
import type { PatchShape, Point, Ring, SlabShape, SolidShape, WallShape } from '../floorShape.ts';
import { corner, signedArea } from '../ring.ts';
import type { DrawnEdge, HardItem } from './cluster.ts';
import { SCOPE, SLAB, SOLID, WALL_BODY, WALL_GAP } from './layers.ts';
import { type Outline, ringOutline } from './outline.ts';

/*
 * Slabs, solids, walls and floor out of scope as outlines, each edge with what it was drawn as and with the floor on
 * its left.
 *
 *     +---<---+        +--->---+
 *     | slab  |        | column|       A slab's edges run round it one way, those of what stands on it the other.
 *     +--->---+        +---<---+
 *
 * Coordinates are mm from the floor's own origin, so that a plan far out loses no digits.
 */

export function slabItem(slab: SlabShape, number: number, origin: Point): HardItem {
  const edges = ringEdges(slab.ring, origin, true, (i) => slab.faces[i] ?? 'wall', slab.id);
  return itemOf(slab.id, number, [outlineOf(edges, SLAB, number)], edges);
}

export function solidItem(solid: SolidShape, number: number, origin: Point): HardItem {
  const edges = ringEdges(solid.ring, origin, false, () => 'obstruction', solid.id);
  return itemOf(solid.id, number, [outlineOf(edges, SOLID, number)], edges);
}

export function scopeItem(patch: PatchShape, number: number, origin: Point): HardItem {
  const edges = ringEdges(patch.ring, origin, false, () => 'soft', patch.id);
  return itemOf(patch.id, number, [outlineOf(edges, SCOPE, number)], edges);
}

/** A wall with its gaps: floor inside a gap is net floor. */
export function wallItem(wall: WallShape, number: number, origin: Point): HardItem {
  const body = ringEdges(wall.body, origin, false, () => 'wall', wall.id);
  const gaps = wall.gaps.map((gap) => ringEdges(gap.ring, origin, true, () => 'wall', wall.id));
  const outlines = [outlineOf(body, WALL_BODY, number), ...gaps.map((edges) => outlineOf(edges, WALL_GAP, number))];
  return itemOf(wall.id, number, outlines, [...body, ...gaps.flat()]);
}

/** A ring about the floor's own origin. */
export function movedRing(ring: Ring, origin: Point): Ring {
  return origin[0] === 0 && origin[1] === 0 ? ring : ring.map(([x, y]) => [x - origin[0], y - origin[1]]);
}

function ringEdges(
  drawn: Ring,
  origin: Point,
  floorInside: boolean,
  kindOf: (i: number) => DrawnEdge['kind'],
  of: string,
): DrawnEdge[] {
  const ring = movedRing(drawn, origin);
  const edges = ring.map(([ax, ay], i): DrawnEdge => {
    const [bx, by] = corner(ring, i + 1);
    return { ax, ay, bx, by, kind: kindOf(i), of };
  });
  const isAsDrawn = signedArea(ring) > 0 === floorInside;
  return isAsDrawn
    ? edges
    : edges.toReversed().map(({ ax, ay, bx, by, kind }) => ({ ax: bx, ay: by, bx: ax, by: ay, kind, of }));
}

function outlineOf(edges: readonly DrawnEdge[], layer: number, item: number): Outline {
  const ring: Ring = edges.map(({ ax, ay }) => [ax, ay]);
  return ringOutline(ring, layer, item, edges);
}

function itemOf(id: string, number: number, outlines: readonly Outline[], drawn: readonly DrawnEdge[]): HardItem {
  return { id, number, outlines, drawn, box: boxAroundAll(outlines.map((outline) => outline.box)) };
}
