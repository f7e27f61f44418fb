import type { MachineShape, NarrowGap, Point, Region } from './floorShape.ts';
import { boxOf, grownBox } from './box.ts';
import { type FreeWidth, freeWidths } from './freeWidths.ts';
import type { Face, HardKind } from './hardFace.ts';
import { labelSpot } from './labelSpot.ts';
import { between, distance } from './point.ts';
import { type RegionIndex, regionIndex } from './regionIndex.ts';
import { corner } from './ring.ts';
import { nearestOnSegment } from './segment.ts';
import { boxIndex } from './spatial.ts';

/*
 * The place that keeps a machine out of a piece of hand floor.
 *
 *      reached floor             A piece too small for the machine (niche, slot): the narrowest width
 *   ~~~~~~~ open edge ~~~~~~~    across it, by its open edge if there is one there.
 *   |  640  |                    A piece that would hold the machine (a room): the narrowest width by
 *   |<----->| piece              its open edge; what is narrow deeper inside is not what bars the way.
 */

/** Less than half a millimetre short still passes, as for passages. */
const STILL_PASSES_MM = 0.5;
/** An edge of a piece this near to a face, in mm, lies along it; more is open to other floor. */
const ALONG_MM = 0.5;
/** Widths that differ by less than this, in mm, are the same, and the middle of a slot is shown rather than its end. */
const SAME_MM = 0.5;

/**
 * The narrowest free width, in mm, that explains a tight or cut-off piece of floor, with what the machine needs there;
 * null where nothing narrow does (the cusp of a plain corner, a band along a drop). `piece` is best the whole piece,
 * not yet cut by zones; `faces` are the hard faces on and about it, floor on their left. The needed width is what the
 * middle of the machine keeps from the two faces: on each side head and clearance of that kind of face, or half the
 * passage of its body. Source: the model of reach, ours.
 */
export function narrowGap(piece: Region, faces: readonly Face[], machine: MachineShape): NarrowGap | null {
  const needsMm = (a: Face, b: Face): number => keptFrom(machine, a.kind) + keptFrom(machine, b.kind);
  const widths = freeWidths(faces, (a, b) => needsMm(a, b) - STILL_PASSES_MM);
  if (widths.length === 0) return null;
  const index = regionIndex(piece);
  const open = openEdges(piece, faces);
  const isByOpening = ({ from, to }: FreeWidth): boolean => isNearEdge(between(from, to, 0.5), open, machine.passageMm);
  if (holdsMachine(piece, index, machine)) return described(narrowest(widths.filter(isByOpening)), machine, needsMm);
  const inPiece = widths.filter((width) => liesAcross(width, index));
  const found = narrowest(inPiece.filter(isByOpening)) ?? narrowest(inPiece);
  return described(found && narrowest([found, ...inPiece.filter(isAsWideAs(found))]), machine, needsMm);
}

function keptFrom(machine: MachineShape, kind: HardKind): number {
  return Math.max(machine.headRadiusMm + machine.clearanceMm[kind], machine.passageMm / 2);
}

function described(
  width: FreeWidth | null,
  machine: MachineShape,
  needsMm: (a: Face, b: Face) => number,
): NarrowGap | null {
  if (!width) return null;
  const { widthMm, from, to, faces } = width;
  const [a, b] = faces;
  const sides = [
    { kind: a.kind, of: a.of },
    { kind: b.kind, of: b.of },
  ] as const;
  return { machine: machine.id, widthMm, needsMm: needsMm(a, b), from, to, sides };
}

/** The narrowest of the least widths; where faces only close in, the widest of what is still too narrow: there the machine stops. */
function narrowest(widths: readonly FreeWidth[]): FreeWidth | null {
  const least = widths.filter((width) => width.isLeast);
  const aim =
    least.length > 0
      ? Math.min(...least.map((width) => width.widthMm))
      : Math.max(...widths.map((width) => width.widthMm));
  const same = (least.length > 0 ? least : widths).filter((width) => Math.abs(width.widthMm - aim) < SAME_MM);
  return same.toSorted((x, y) => y.alongMm - x.alongMm)[0] ?? null;
}

/** In a long slot the middle says as much as its mouth, and is easier to see. */
function isAsWideAs(found: FreeWidth): (width: FreeWidth) => boolean {
  return (width) => width.isLeast === found.isLeast && Math.abs(width.widthMm - found.widthMm) < SAME_MM;
}

function liesAcross({ from, to }: FreeWidth, piece: RegionIndex): boolean {
  return piece.contains(between(from, to, 0.5)) || piece.cuts(from, to).length > 2;
}

/** True when the machine could stand somewhere in the piece: nearly half its passage from the outline (the place is found on a grid). */
function holdsMachine(piece: Region, index: RegionIndex, machine: MachineShape): boolean {
  const spot = labelSpot(piece);
  return spot !== null && index.nearest(spot, 0.48 * machine.passageMm) === null;
}

type Edge = readonly [Point, Point];

/** Stretches of the piece's outline with floor of another part beyond them: all that lies along no face. */
function openEdges(piece: Region, faces: readonly Face[]): Edge[] {
  const index = boxIndex(faces.map((face) => boxOf([face.a, face.b])));
  return piece.flat().flatMap((ring) =>
    ring.flatMap((a, i) => {
      const b = corner(ring, i + 1);
      const near = index.meeting(grownBox(boxOf([a, b]), ALONG_MM)).flatMap((j) => faces[j] ?? []);
      return openParts(a, b, near);
    }),
  );
}

function openParts(a: Point, b: Point, faces: readonly Face[]): Edge[] {
  const isAlong = (at: Point, face: Face): boolean => nearestOnSegment(at, face.a, face.b).distance <= ALONG_MM;
  const ends = faces.flatMap((face) => [face.a, face.b].map((end) => nearestOnSegment(end, a, b)));
  const cuts = ends.filter((end) => end.distance <= ALONG_MM).map((end) => end.share);
  const shares = [0, ...cuts.toSorted((x, y) => x - y), 1];
  return shares.flatMap((share, i): Edge[] => {
    const [from, to] = [between(a, b, share), between(a, b, shares[i + 1] ?? 1)];
    if (distance(from, to) <= ALONG_MM) return [];
    const middle = between(from, to, 0.5);
    return faces.some((face) => isAlong(middle, face)) ? [] : [[from, to]];
  });
}

function isNearEdge(at: Point, edges: readonly Edge[], withinMm: number): boolean {
  return edges.some(([a, b]) => nearestOnSegment(at, a, b).distance <= withinMm);
}
