import { Clipper, ClipType, FillRule, PolyTree64, type Paths64, type PolyPath64 } from 'clipper2-ts';
import polygonClipping, { type MultiPolygon } from 'polygon-clipping';
import type { Point, Region, Ring } from './floorShape.ts';
import { type Box, boxesMeet, boxOf, boxOfRegion } from './box.ts';
import { STEPS_PER_MM, toGrid } from './grid.ts';
import { corner, perimeter, regionArea, ringArea, wound } from './ring.ts';
import { boxIndex } from './spatial.ts';

/*
 * The one door to the polygon libraries.
 *
 *   rings in mm --> whole numbers of 1/320 mm --> polygon-clipping --> area checked --> rings in mm
 *                   0.1 mm, two odd grids     <-- when it fails
 *                   clipper2-ts               <-- when all of them fail, and for what it is known to be slow at
 *
 * polygon-clipping on raw floats throws on 3 % of degenerate input and is silently wrong on some; on whole
 * numbers it is sound (tests/reference/libraryFailures.test.ts). A failure is a value, never a throw.
 */
export type ClipResult =
  | { readonly ok: true; readonly region: Region }
  | { readonly ok: false; readonly code: 'clipFailed' };

type Operation = 'union' | 'intersection' | 'difference';

/** Steps a millimetre: the plan grid, 0.1 mm, and two grids that share no line with them. */
const GRIDS = [STEPS_PER_MM, 10, 317, 97];

/** Polygons that share one corner, or lie one in the other, beyond which polygon-clipping takes seconds. */
const CROWD = 48;

/** One region of all; polygons may overlap. Areas agree to the grid of 1/320 mm. */
export function union(regions: readonly Region[]): ClipResult {
  const all = regions.flat();
  if (all.length === 0) return { ok: true, region: [] };
  return clip('union', all, []);
}

/** What lies in both; polygons of `b` may overlap each other, those of `a` may not. */
export function intersect(a: Region, b: Region): ClipResult {
  const met = meeting(a, b);
  const others = meeting(b, met);
  if (met.length === 0 || others.length === 0) return { ok: true, region: [] };
  return clip('intersection', withoutFarHoles(met, others), others);
}

/** Holes that cannot meet the other region change nothing in what the two share. */
function withoutFarHoles(region: Region, other: Region): Region {
  const box = boxOfRegion(other);
  return region.map(([outer = [], ...holes]) => [outer, ...holes.filter((hole) => boxesMeet(boxOf(hole), box))]);
}

/** What lies in `a` and in none of `b`; polygons of `b` may overlap each other, those of `a` may not. */
export function subtract(a: Region, b: Region): ClipResult {
  const met = meeting(a, b);
  const others = meeting(b, met);
  if (met.length === 0 || others.length === 0) return { ok: true, region: a };
  const cut = clip('difference', met, others);
  const untouched = a.filter((polygon) => !met.includes(polygon));
  return cut.ok ? { ok: true, region: [...untouched, ...cut.region] } : cut;
}

/** Polygons of `a` whose boxes meet one of `b`. */
function meeting(a: Region, b: Region): Region {
  const index = boxIndex(b.map((polygon) => boxOfRegion([polygon])));
  return a.filter((polygon) => index.meeting(boxOfRegion([polygon])).length > 0);
}

function clip(operation: Operation, subject: Region, clips: Region): ClipResult {
  const box = boxOfRegion([...subject, ...clips]);
  const origin: Point = [toGrid((box.minX + box.maxX) / 2), toGrid((box.minY + box.maxY) / 2)];
  if (!Number.isFinite(origin[0]) || !Number.isFinite(origin[1])) return { ok: false, code: 'clipFailed' };
  if (!isCrowded([...subject, ...clips])) {
    for (const steps of GRIDS) {
      const region = byPolygonClipping(operation, subject, clips, origin, steps);
      if (region && isPlausible(operation, subject, clips, region)) return { ok: true, region };
    }
  }
  const region = byClipper(operation, subject, clips, origin);
  return region && isPlausible(operation, subject, clips, region)
    ? { ok: true, region }
    : { ok: false, code: 'clipFailed' };
}

function byPolygonClipping(
  operation: Operation,
  subject: Region,
  clips: Region,
  origin: Point,
  steps: number,
): Region | null {
  try {
    const a = toSteps(subject, origin, steps);
    const b = toSteps(clips, origin, steps);
    if (a.length === 0) return [];
    if (b.length === 0 && operation !== 'union') return operation === 'intersection' ? [] : fromSteps(a, origin, steps);
    const out = b.length === 0 ? polygonClipping.union(a) : polygonClipping[operation](a, b);
    return fromSteps(out, origin, steps);
  } catch {
    return null;
  }
}

/** Regions as whole numbers about an origin; what has no area on that grid is left out. */
function toSteps(region: Region, origin: Point, steps: number): MultiPolygon {
  const out: MultiPolygon = [];
  for (const polygon of region) {
    const rings = polygon.map((ring) => ringToSteps(ring, origin, steps));
    const [outer, ...holes] = rings;
    if (outer && hasArea(outer)) out.push([outer, ...holes.filter(hasArea)]);
  }
  return out;
}

function ringToSteps(ring: Ring, origin: Point, steps: number): [number, number][] {
  const out: [number, number][] = [];
  let before: [number, number] | undefined;
  for (const [x, y] of ring) {
    const at: [number, number] = [Math.round((x - origin[0]) * steps), Math.round((y - origin[1]) * steps)];
    if (!before || before[0] !== at[0] || before[1] !== at[1]) out.push(at);
    before = at;
  }
  return out;
}

function hasArea(ring: Ring): boolean {
  return ring.length >= 3 && ringArea(ring) > 0;
}

/** Back to mm on the plan grid; outer rings positive, holes negative, slivers of no area dropped. */
function fromSteps(polygons: MultiPolygon, origin: Point, steps: number): Region {
  const out: Ring[][] = [];
  for (const polygon of polygons) {
    const rings = polygon.map((ring) => ringFromSteps(ring, origin, steps));
    const [outer, ...holes] = rings;
    if (!outer || !hasArea(outer)) continue;
    out.push([wound(outer, true), ...holes.filter(hasArea).map((hole) => wound(hole, false))]);
  }
  return out;
}

function ringFromSteps(ring: readonly (readonly [number, number])[], origin: Point, steps: number): Ring {
  const out: Point[] = [];
  for (const [x, y] of ring) {
    const at: Point = [toGrid(x / steps + origin[0]), toGrid(y / steps + origin[1])];
    const before = out.at(-1);
    if (!before || before[0] !== at[0] || before[1] !== at[1]) out.push(at);
  }
  const [first, last] = [out[0], out.at(-1)];
  if (out.length > 1 && first && last && first[0] === last[0] && first[1] === last[1]) out.pop();
  return out;
}

const CLIP_TYPES = { union: ClipType.Union, intersection: ClipType.Intersection, difference: ClipType.Difference };

function byClipper(operation: Operation, subject: Region, clips: Region, origin: Point): Region | null {
  try {
    const tree = new PolyTree64();
    Clipper.booleanOpWithPolyTree(
      CLIP_TYPES[operation],
      toPaths(subject, origin),
      toPaths(clips, origin),
      tree,
      FillRule.NonZero,
    );
    const out: [number, number][][][] = [];
    collect(tree, out);
    return fromSteps(out, origin, STEPS_PER_MM);
  } catch {
    return null;
  }
}

/** Outer rings wound one way and holes the other, so that non-zero filling reads them as they are meant. */
function toPaths(region: Region, origin: Point): Paths64 {
  return toSteps(region, origin, STEPS_PER_MM).flatMap((polygon) =>
    polygon.map((ring, i) => wound(ring, i === 0).map(([x, y]) => ({ x, y }))),
  );
}

function collect(node: PolyPath64, out: [number, number][][][]): void {
  for (let i = 0; i < node.count; i += 1) {
    const outer = node.child(i);
    const holes = Array.from({ length: outer.count }, (_, j) => outer.child(j));
    out.push([outer, ...holes].map((part) => (part.poly ?? []).map(({ x, y }): [number, number] => [x, y])));
    for (const hole of holes) collect(hole, out);
  }
}

/** Bounds that the area of any right answer keeps; wide of them, an answer is wrong. */
function isPlausible(operation: Operation, subject: Region, clips: Region, answer: Region): boolean {
  const area = regionArea(answer);
  const [most, least] = [regionArea(subject), regionArea(clips)];
  const slack = 1 + 0.02 * edgeLength([...subject, ...clips]);
  if (!Number.isFinite(area) || area < -slack) return false;
  if (operation === 'intersection') return area <= Math.min(most, least) + slack;
  if (operation === 'difference') return area <= most + slack && area >= most - least - slack;
  const largest = Math.max(...subject.map((polygon) => regionArea([polygon])));
  return area <= most + slack && area >= largest - slack;
}

function edgeLength(region: Region): number {
  return region.reduce((sum, polygon) => sum + polygon.reduce((inner, ring) => inner + perimeter(ring), 0), 0);
}

/** True for what polygon-clipping is known to take seconds over: many polygons about one corner, or nested deeply. */
function isCrowded(region: Region): boolean {
  if (region.length <= CROWD) return false;
  const seen = new Map<number, number>();
  for (const [outer] of region) {
    for (const [x, y] of outer ?? []) {
      // Two corners with one key only send a union to the slower library.
      const key = x * 1e7 + y;
      const count = (seen.get(key) ?? 0) + 1;
      if (count > CROWD) return true;
      seen.set(key, count);
    }
  }
  const boxes = region.map((polygon) => boxOfRegion([polygon]));
  const index = boxIndex(boxes);
  return boxes.some((box, i) => i % 8 === 0 && index.meeting(cornerOf(region[i]?.[0], box)).length > CROWD);
}

function cornerOf(ring: Ring | undefined, box: Box): Box {
  if (!ring || ring.length === 0) return box;
  const [x, y] = corner(ring, 0);
  const at = { minX: x, minY: y, maxX: x, maxY: y };
  return boxesMeet(at, box) ? at : box;
}
