import type { FaceMetres, Point, ZoneMeasure } from './floorShape.ts';
import { besideFace } from './boundary.ts';
import type { ChainParts, FacePart } from './faces.ts';
import { type Chain, type Face, type HardKind, turnBetween } from './hardFace.ts';
import { type Partition, zonesAlong } from './partition.ts';
import { between, isSame, plus } from './point.ts';

type FaceLine = ZoneMeasure['faceLines'][number];

/** What the faces of one zone add up to. Metres; `lines` are for drawing. */
export interface ZoneFaces {
  readonly metres: FaceMetres;
  readonly innerCorners: number;
  readonly outerCorners: number;
  readonly lines: readonly FaceLine[];
}

/** How far inside the floor, in mm, the zone of a face is asked for. */
const INSIDE_MM = 1;
/** Turns of less than 30 degrees are a curve drawn as a polygon, not a corner. */
const CORNER = Math.PI / 6;

interface Tally {
  metres: { wall: number; obstruction: number; drop: number; stop: number; hidden: number };
  innerCorners: number;
  outerCorners: number;
  lines: { kind: FaceLine['kind']; of: string; path: Point[]; hidden: boolean }[];
}

/** Face metres, corners and lines by zone id; zones without a face are not in the map. Kinds of face that are not `edged` have hand area along them and count as hidden. */
export function facesByZone(
  chains: readonly ChainParts[],
  partition: Partition,
  isOurs: (zone: string) => boolean,
  isEdged: (kind: HardKind) => boolean,
): ReadonlyMap<string, ZoneFaces> {
  const tallies = new Map<string, Tally>();
  const tallyOf = (zone: string): Tally => {
    const known = tallies.get(zone);
    if (known) return known;
    const fresh: Tally = {
      metres: { wall: 0, obstruction: 0, drop: 0, stop: 0, hidden: 0 },
      innerCorners: 0,
      outerCorners: 0,
      lines: [],
    };
    tallies.set(zone, fresh);
    return fresh;
  };
  for (const { chain, parts } of chains) {
    for (const part of parts) addPart(part, part.worked && isEdged(part.face.kind), partition, isOurs, tallyOf);
    addCorners(
      chain,
      parts.filter((part) => part.worked && isEdged(part.face.kind)),
      partition,
      isOurs,
      tallyOf,
    );
  }
  return tallies;
}

function addPart(
  part: FacePart,
  worked: boolean,
  partition: Partition,
  isOurs: (zone: string) => boolean,
  tallyOf: (zone: string) => Tally,
): void {
  const { face } = part;
  const [a, b] = [besideFace(face, part.from, INSIDE_MM), besideFace(face, part.to, INSIDE_MM)];
  for (const piece of zonesAlong(partition, a, b)) {
    if (!isOurs(piece.zone)) continue;
    const tally = tallyOf(piece.zone);
    const share = (s: number): number => part.from + s * (part.to - part.from);
    const metres = ((piece.to - piece.from) * (part.to - part.from) * face.lengthMm) / 1000;
    tally.metres[worked ? face.kind : 'hidden'] += metres;
    addLine(tally, face, share(piece.from), share(piece.to), !worked);
  }
}

/** Lines that follow each other with one look become one path. */
function addLine(tally: Tally, face: Face, from: number, to: number, hidden: boolean): void {
  const start = between(face.a, face.b, from);
  const end = to === 1 ? face.b : between(face.a, face.b, to);
  const last = tally.lines.at(-1);
  const tail = last?.path.at(-1);
  if (last && tail && last.kind === face.kind && last.of === face.of && last.hidden === hidden && isSame(tail, start))
    last.path.push(end);
  else tally.lines.push({ kind: face.kind, of: face.of, path: [start, end], hidden });
}

function addCorners(
  { faces, closed }: Chain,
  worked: readonly FacePart[],
  partition: Partition,
  isOurs: (zone: string) => boolean,
  tallyOf: (zone: string) => Tally,
): void {
  const starts = new Set(worked.filter((part) => part.from === 0).map((part) => part.face));
  const ends = new Set(worked.filter((part) => part.to === 1).map((part) => part.face));
  for (const [i, after] of faces.entries()) {
    const before = i > 0 ? faces[i - 1] : closed ? faces.at(-1) : undefined;
    if (!before || before === after || !ends.has(before) || !starts.has(after)) continue;
    const turn = turnBetween(before, after);
    if (Math.abs(turn) < CORNER) continue;
    const zone = partition.zoneAt(plus(after.a, plus(before.inward, after.inward)));
    if (!isOurs(zone)) continue;
    const tally = tallyOf(zone);
    if (turn > 0) tally.innerCorners += 1;
    else tally.outerCorners += 1;
  }
}
