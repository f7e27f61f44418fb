import { type Box, boxAroundAll, boxOf } from '../box.ts';
import type { Edge } from './edge.ts';
import type { Outline } from './outline.ts';
import { tileEdges } from './tileEdges.ts';

/*
 * Where two drawings of a thing differ.
 *
 *     +-----------+ .       A corner that moves takes two edges with it. Nothing changes but between the old edges and
 *     |           |  .      the new ones, so tiles away from both are left as they are, and in those nearby what is
 *     +-----------+---.     left of both drawings is compared.
 */

/** Boxes outside which two lists of outlines make no difference. */
export function changedBoxes(before: readonly Outline[], after: readonly Outline[]): Box[] {
  if (before.length === 0) return after.map((outline) => outline.box);
  const [old, now] = [before[0], after[0]];
  if (before.length === 1 && after.length === 1 && old && now && old.item === now.item && old.layer === now.layer)
    return changedEdgeBoxes(old, now);
  const known = new Map(before.map((outline) => [keyOf(outline), outline]));
  const fresh = after.filter((outline) => !known.delete(keyOf(outline)));
  return [...known.values(), ...fresh].map((outline) => outline.box);
}

/** Of one outline redrawn: a box for each edge that came or went, and one around the ends that moved. */
function changedEdgeBoxes(before: Outline, after: Outline): Box[] {
  const known = new Map(before.edges.map((edge) => [edgeKey(edge), edge]));
  const fresh = after.edges.filter((edge) => !known.delete(edgeKey(edge)));
  const gone = [...known.values()];
  const levels = levelBoxes(before, after);
  const changed = [...gone, ...fresh];
  if (changed.length === 0) return levels;
  // With more than a corner moved, floor in between may change that no edge touches.
  if (gone.length > 2 || fresh.length > 2) return [boxAroundAll([...changed.map(boxOfEdge), ...levels])];
  return [...changed.map(boxOfEdge), ...levels, boxAroundAll(movedEnds(gone, fresh))].filter(
    (box) => box.minX <= box.maxX,
  );
}

/** Ends of edges that only one of the drawings has. */
function movedEnds(gone: readonly Edge[], fresh: readonly Edge[]): Box[] {
  const ends = (edges: readonly Edge[]) =>
    edges.flatMap(({ x0, y0, x1, y1 }) => [[x0, y0] as const, [x1, y1] as const]);
  const keys = (edges: readonly Edge[]): Set<string> => new Set(ends(edges).map(([x, y]) => `${x} ${y}`));
  const [old, now] = [keys(gone), keys(fresh)];
  return [
    ...ends(gone).filter(([x, y]) => !now.has(`${x} ${y}`)),
    ...ends(fresh).filter(([x, y]) => !old.has(`${x} ${y}`)),
  ].map((end) => boxOf([end]));
}

/** A level edge has no place in the sweep, but it is an edge that may move. */
function levelBoxes(before: Outline, after: Outline): Box[] {
  const key = ({ y, fromX, toX }: Outline['levels'][number]): string => `${y} ${fromX} ${toX}`;
  const known = new Map(before.levels.map((level) => [key(level), level]));
  const fresh = after.levels.filter((level) => !known.delete(key(level)));
  return [...known.values(), ...fresh].map(({ y, fromX, toX }) => ({ minX: fromX, maxX: toX, minY: y, maxY: y }));
}

function edgeKey({ x0, y0, x1, y1, arc, up }: Edge): string {
  return `${x0} ${y0} ${x1} ${y1} ${arc ? arc.radius : 0} ${up}`;
}

function keyOf(outline: Outline): string {
  return `${outline.layer} ${outline.item} ${outline.edges.map(edgeKey).join('|')}`;
}

function boxOfEdge({ x0, y0, x1, y1 }: Edge): Box {
  return { minX: Math.min(x0, x1), minY: y0, maxX: Math.max(x0, x1), maxY: y1 };
}

/** True when two lists of outlines leave the very same edges in a box. */
export function looksSame(box: Box, before: readonly Outline[], after: readonly Outline[]): boolean {
  if (before.length !== after.length) return false;
  const [a, b] = [tileEdges(box, before), tileEdges(box, after)];
  if (a.edges.length !== b.edges.length || a.levels.length !== b.levels.length || a.covers.length !== b.covers.length)
    return false;
  const isSameEdges = a.edges.every((part, i) => {
    const other = b.edges[i];
    return (
      other !== undefined &&
      part.lo === other.lo &&
      part.hi === other.hi &&
      part.ring === other.ring &&
      edgeKey(part.edge) === edgeKey(other.edge)
    );
  });
  const isSameKind = (x: Outline, y: Outline | undefined): boolean => x.layer === y?.layer && x.item === y.item;
  return (
    isSameEdges &&
    a.rings.every((ring, i) => isSameKind(ring, b.rings[i])) &&
    a.covers.every((cover, i) => isSameKind(cover, b.covers[i])) &&
    a.levels.every(
      (level, i) => level.y === b.levels[i]?.y && level.fromX === b.levels[i]?.fromX && level.toX === b.levels[i]?.toX,
    )
  );
}
