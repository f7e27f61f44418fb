import type { FaceMetres, Point, ZoneMeasure } from '../floorShape.ts';
import { type ChainParts, type FacePart, isEdgeStrip } from '../faces.ts';
import { type Face, type HardKind, turnBetween } from '../hardFace.ts';
import { between, isSame, plus } from '../point.ts';
import { type Cascades, cascadeOfZone } from './cells.ts';
import { type CascadeEdge, type Edging, type FaceBit, zoneBits } from './edging.ts';

/*
 * What the faces of a cluster add up to, by zone: metres by kind, hidden ones apart, and corners.
 *
 *     zone 1 | zone 2           each stretch of a face belongs to the zone just inside it, and is worked or hidden
 *   ==================          by what that zone's machines reach
 */
export interface FaceTally {
  readonly metres: { -readonly [K in keyof FaceMetres]: number };
  /** The hidden metres by kind. */
  readonly hidden: { -readonly [K in HardKind]: number };
  innerCorners: number;
  outerCorners: number;
}

/** A piece of a zone's faces for drawing; its path grows while the faces are gone along. */
export interface FaceLine extends Omit<ZoneMeasure['faceLines'][number], 'path'> {
  readonly path: Point[];
}

/** Turns of less than 30 degrees are a curve drawn as a polygon, not a corner. */
const CORNER = Math.PI / 6;

/** Tallies by zone number. `zoneAt` answers the zone of a place. */
export function tallyFaces(
  edging: Edging,
  cascades: Cascades,
  edges: readonly CascadeEdge[],
  zoneAt: (at: Point) => number,
): Map<number, FaceTally> {
  const tallies = new Map<number, FaceTally>();
  forEachStretch(edging, cascades, edges, (face, zone, from, to, worked) => {
    const tally = tallyOf(tallies, zone);
    const metres = ((to - from) * face.lengthMm) / 1000;
    tally.metres[worked ? face.kind : 'hidden'] += metres;
    if (!worked) tally.hidden[face.kind] += metres;
  });
  for (const [cascade, chains] of edging.parts.entries()) {
    const { widths } = edges[cascade] as CascadeEdge;
    for (const chain of chains)
      addCorners(chain, widths, (corner, isInner) => {
        const zone = zoneAt(corner);
        if (cascadeOfZone(zone, cascades) !== cascade) return;
        tallyOf(tallies, zone)[isInner ? 'innerCorners' : 'outerCorners'] += 1;
      });
  }
  return tallies;
}

/** The faces as polylines by zone number, for drawing. */
export function faceLines(
  edging: Edging,
  cascades: Cascades,
  edges: readonly CascadeEdge[],
  origin: Point,
  into: Map<number, FaceLine[]>,
): void {
  let before: Face | null = null;
  forEachStretch(edging, cascades, edges, (face, zone, from, to, worked) => {
    const lines = into.get(zone) ?? [];
    into.set(zone, lines);
    const start = plus(between(face.a, face.b, from), origin);
    const end = plus(to === 1 ? face.b : between(face.a, face.b, to), origin);
    addLine(lines, { kind: face.kind, of: face.of, path: [start, end], hidden: !worked }, before === face);
    before = face;
  });
}

export function emptyTally(): FaceTally {
  return {
    metres: { wall: 0, obstruction: 0, drop: 0, stop: 0, hidden: 0 },
    hidden: { wall: 0, obstruction: 0, drop: 0, stop: 0 },
    innerCorners: 0,
    outerCorners: 0,
  };
}

function tallyOf(tallies: Map<number, FaceTally>, zone: number): FaceTally {
  const known = tallies.get(zone);
  if (known) return known;
  const fresh = emptyTally();
  tallies.set(zone, fresh);
  return fresh;
}

type OnStretch = (face: Face, zone: number, from: number, to: number, worked: boolean) => void;

function forEachStretch(edging: Edging, cascades: Cascades, edges: readonly CascadeEdge[], on: OnStretch): void {
  const partsOf = edging.parts.map((chains) => partsByFace(chains));
  for (const bit of zoneBits(edging)) {
    const face = edging.faces[bit.face] as Face;
    const cascade = cascadeOfZone(bit.what, cascades);
    if (cascade < 0) on(face, bit.what, bit.from, bit.to, false);
    else
      stretchesIn(
        bit,
        partsOf[cascade]?.get(face) ?? [],
        isEdgeStrip((edges[cascade] as CascadeEdge).widths[face.kind]),
        face,
        on,
      );
  }
}

function stretchesIn(bit: FaceBit, parts: readonly FacePart[], isEdged: boolean, face: Face, on: OnStretch): void {
  for (const part of parts) {
    const [from, to] = [Math.max(bit.from, part.from), Math.min(bit.to, part.to)];
    if (from < to) on(face, bit.what, from, to, part.worked && isEdged);
  }
}

function partsByFace(chains: readonly ChainParts[]): Map<Face, FacePart[]> {
  const byFace = new Map<Face, FacePart[]>();
  for (const { parts } of chains)
    for (const part of parts) {
      const list = byFace.get(part.face);
      if (list) list.push(part);
      else byFace.set(part.face, [part]);
    }
  return byFace;
}

/** Corners between two faces that are both worked up to it. */
function addCorners(
  { chain, parts }: ChainParts,
  widths: CascadeEdge['widths'],
  on: (at: Point, isInner: boolean) => void,
): void {
  const worked = parts.filter((part) => part.worked && isEdgeStrip(widths[part.face.kind]));
  const starts = new Set(worked.filter((part) => part.from === 0).map((part) => part.face));
  const ends = new Set(worked.filter((part) => part.to === 1).map((part) => part.face));
  const { faces, closed } = chain;
  for (const [i, after] of faces.entries()) {
    const before = i > 0 ? faces[i - 1] : closed ? faces.at(-1) : undefined;
    if (!before || before === after || !ends.has(before) || !starts.has(after)) continue;
    const turn = turnBetween(before, after);
    if (Math.abs(turn) >= CORNER) on(plus(after.a, plus(before.inward, after.inward)), turn > 0);
  }
}

/** Pieces that follow each other with one look become one path; on one face its last point moves on. */
function addLine(lines: FaceLine[], piece: FaceLine, isOnSameFace: boolean): void {
  const last = lines.at(-1);
  if (!last || !goesOnIn(last, piece)) {
    lines.push(piece);
    return;
  }
  if (isOnSameFace) last.path.pop();
  last.path.push(...piece.path.slice(1));
}

function goesOnIn(line: FaceLine, piece: FaceLine): boolean {
  const [tail, start] = [line.path.at(-1), piece.path[0]];
  const isOneLook = line.kind === piece.kind && line.of === piece.of && line.hidden === piece.hidden;
  return isOneLook && tail !== undefined && start !== undefined && isSame(tail, start);
}
