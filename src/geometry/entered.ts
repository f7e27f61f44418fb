import type { FloorShape, MachineShape, Point, Region } from './floorShape.ts';
import { boxOf, grownBox } from './box.ts';
import { type NetFloor, type Way, tooTight } from './netFloor.ts';
import { distance } from './point.ts';
import { type RegionIndex, insideShares, regionIndex } from './regionIndex.ts';
import { ringContains } from './ring.ts';
import { crossing, nearestOnSegment } from './segment.ts';

type Entrance = FloorShape['entrances'][number];

/** An entrance this near to an edge, in mm, leads in through it. */
const ON_EDGE_MM = 5;

/**
 * Numbers of the pieces a machine can enter. With no entrance on the floor every piece counts. An
 * entrance too narrow or too low enters none; one on an edge where the floor runs on enters what can be
 * stood on along that edge; any other the nearest piece in sight.
 */
export function enteredPieces(
  pieces: Region,
  machine: MachineShape,
  floor: NetFloor,
  entrances: readonly Entrance[],
  reachMm: number,
): ReadonlySet<number> {
  const usable = entrances.filter((entrance) => isOnFloor(entrance.at, floor.index));
  if (usable.length === 0) return new Set(pieces.keys());
  const indexes = pieces.map((polygon) => regionIndex([polygon]));
  const entered = new Set<number>();
  for (const entrance of usable) {
    if (blockedEntrance(entrance, machine, floor.ways)) continue;
    for (const i of piecesAt(entrance.at, indexes, floor, reachMm)) entered.add(i);
  }
  return entered;
}

/** True for a place on the floor or on its outline. */
export function isOnFloor(at: Point, floor: RegionIndex): boolean {
  return floor.contains(at) || floor.nearest(at, ON_EDGE_MM) !== null;
}

/** The passage that makes an entrance useless for a machine: its own size, or the doorway it stands in. */
export function blockedEntrance(
  entrance: Entrance,
  machine: MachineShape,
  ways: readonly Way[],
): ReturnType<typeof blockOf> {
  const own = { id: entrance.id, widthMm: entrance.widthMm ?? Infinity, heightMm: entrance.heightMm };
  return blockOf([{ passage: own }, ...ways.filter((way) => standsIn(entrance.at, way))], machine);
}

function blockOf(ways: readonly Pick<Way, 'passage'>[], machine: MachineShape) {
  for (const { passage } of ways) {
    const why = tooTight(passage, machine);
    if (why) return { passage, ...why };
  }
  return null;
}

function standsIn(at: Point, way: Way): boolean {
  const box = grownBox(boxOf(way.ring), ON_EDGE_MM);
  return (
    at[0] >= box.minX &&
    at[0] <= box.maxX &&
    at[1] >= box.minY &&
    at[1] <= box.maxY &&
    (ringContains(way.ring, at) || isNearRing(at, way))
  );
}

function isNearRing(at: Point, way: Way): boolean {
  return way.ring.some(
    (a, i) => nearestOnSegment(at, a, way.ring[(i + 1) % way.ring.length] ?? a).distance <= ON_EDGE_MM,
  );
}

function piecesAt(at: Point, pieces: readonly RegionIndex[], floor: NetFloor, reachMm: number): readonly number[] {
  const holding = pieces.findIndex((piece) => piece.contains(at));
  if (holding >= 0) return [holding];
  const edge = floor.runEdges.find(({ a, b }) => nearestOnSegment(at, a, b).distance <= ON_EDGE_MM);
  if (edge) return [...pieces.keys()].filter((i) => insideShares(pieces[i] as RegionIndex, edge.a, edge.b).length > 0);
  return nearestInSight(at, pieces, floor, reachMm * 1.5 + ON_EDGE_MM);
}

function nearestInSight(
  at: Point,
  pieces: readonly RegionIndex[],
  floor: NetFloor,
  withinMm: number,
): readonly number[] {
  const found = pieces.flatMap((piece, i) => {
    const near = piece.nearest(at, withinMm);
    return near && isInSight(at, near.at, floor) ? [{ i, distance: near.distance }] : [];
  });
  const [first] = found.toSorted((a, b) => a.distance - b.distance);
  return first ? [first.i] : [];
}

/** No face between the two places; the face the entrance stands in does not hide anything. */
function isInSight(at: Point, to: Point, floor: NetFloor): boolean {
  return floor.chains.every((chain) =>
    chain.faces.every((face) => {
      const meet = crossing(at, to, face.a, face.b);
      return !meet || distance(meet.at, at) <= ON_EDGE_MM;
    }),
  );
}
