import type { MachineShape } from './floorShape.ts';
import { type Stretch, type WidthByKind, byKind, wholeStretch } from './ledger/faceBands.ts';
import { type Chain, type Face, partOfFace, turnBetween } from './hardFace.ts';

/*
 * Which faces have machine field beside them.
 *
 *   seen from the face, one strip width in:
 *      |##########field##########|        a face is worked where field lies there, and in the short
 *   ===============================       runs around inner corners that the round head leaves
 *   ^corner                  corner^
 *
 * The rest is "faces inside hand areas": no edge metres, no strip.
 */
export interface FacePart {
  readonly face: Face;
  readonly from: number;
  readonly to: number;
  readonly worked: boolean;
}

export interface ChainParts {
  readonly chain: Chain;
  readonly parts: readonly FacePart[];
}

/** A strip wider than this, in mm, is hand area and not metres. */
const WIDEST_STRIP_MM = 400;
/** How far beyond the strip field is looked for, in mm. */
export const BEYOND_MM = 0.5;
/** A break in what is seen shorter than this, in mm, is the grazing of an arc and no break. */
const GRAZE_MM = 2;
/** A stretch seen that is shorter than this, in mm, is rounding: it must not part the run of a corner from the corner. */
const SPECK_MM = 1e-3;
/** Smallest turn, in radians, that counts as a corner here. */
const CORNER = 0.09;
/** An inner corner sharper than 30 degrees is not followed to its tip. */
const SHARPEST = Math.PI / 6;

/** Band the machine leaves beside each kind of face, in mm: clearance and lap. */
export function bandWidths(machine: MachineShape): WidthByKind {
  return byKind((kind) => machine.clearanceMm[kind] + machine.lapMm);
}

/** True for a band that is worked as edge strip; a wider one is hand area. */
export function isEdgeStrip(widthMm: number): boolean {
  return widthMm <= WIDEST_STRIP_MM;
}

/** The widths of bands that are edge strip; 0 for a kind whose band is so wide that it is hand area. */
export function edgedWidths(widths: WidthByKind): WidthByKind {
  return byKind((kind) => (isEdgeStrip(widths[kind]) ? widths[kind] : 0));
}

/** Shares of a face along which a machine works, from its start to its end. */
export type SeenShares = (face: Face) => readonly (readonly [number, number])[];

/** Chains cut into worked and other parts. `standMm` is how far the middle of the machine stays off, `widths` the band it leaves. */
export function chainParts(
  chains: readonly Chain[],
  seenOf: SeenShares,
  widths: WidthByKind,
  standMm: WidthByKind,
): readonly ChainParts[] {
  const rules = { standMm, widths };
  return chains.map((chain) => {
    const seen = chain.faces.flatMap((face) => seenParts(face, seenOf(face)));
    return { chain, parts: joinCorners(seen, chain.closed, rules) };
  });
}

function seenParts(face: Face, seen: readonly (readonly [number, number])[]): FacePart[] {
  const parts: FacePart[] = [];
  const least = GRAZE_MM / face.lengthMm;
  let done = 0;
  for (const [start, end] of seen) {
    if ((end - start) * face.lengthMm < SPECK_MM) continue;
    const from = start - done < least ? done : start;
    const to = 1 - end < least ? 1 : end;
    if (from > done) parts.push({ face, from: done, to: from, worked: false });
    parts.push({ face, from, to, worked: true });
    done = to;
  }
  if (done < 1) parts.push({ face, from: done, to: 1, worked: false });
  return parts;
}

interface Rules {
  readonly standMm: WidthByKind;
  readonly widths: WidthByKind;
}

/** Runs without field count as worked when they are only what a round head leaves in an inner corner; not beside a drop that leaves a hand area. */
function joinCorners(parts: readonly FacePart[], closed: boolean, rules: Rules): readonly FacePart[] {
  const start = closed
    ? Math.max(
        0,
        parts.findIndex((part) => part.worked),
      )
    : 0;
  const turned = [...parts.slice(start), ...parts.slice(0, start)];
  const out: FacePart[] = [];
  for (let i = 0; i < turned.length;) {
    const first = turned[i] as FacePart;
    let end = i + 1;
    while (end < turned.length && (turned[end] as FacePart).worked === first.worked) end += 1;
    const run = turned.slice(i, end);
    const before = turned[i - 1] ?? (closed ? turned.at(-1) : undefined);
    const after = turned[end] ?? (closed ? turned[0] : undefined);
    const isOpen = [before, ...run, after].every((part) => !part || isEdgeStrip(rules.widths[part.face.kind]));
    const joins = !first.worked && isOpen && isCornerRun(run, before, after, rules);
    out.push(...(joins ? run.map((part) => ({ ...part, worked: true })) : run));
    i = end;
  }
  return out;
}

function isCornerRun(
  run: readonly FacePart[],
  before: FacePart | undefined,
  after: FacePart | undefined,
  { standMm, widths }: Rules,
): boolean {
  const sides = [before, after].filter((part) => part?.worked === true);
  if (sides.length === 0) return false;
  const length = run.reduce((sum, { face, from, to }) => sum + (to - from) * face.lengthMm, 0);
  const inner = innerTurns([
    sides.includes(before) ? before : undefined,
    ...run,
    sides.includes(after) ? after : undefined,
  ]);
  if (inner.length === 0) {
    // Beside a face with a wider band: its round end covers the start of this one.
    const own = Math.min(...run.map((part) => widths[part.face.kind]));
    const cover = sides.reduce(
      (sum, part) => sum + (part && widths[part.face.kind] > own ? widths[part.face.kind] : 0),
      0,
    );
    return length <= cover + GRAZE_MM;
  }
  const stand = Math.max(...run.map((part) => standMm[part.face.kind]));
  const sharp = inner.length === 1 ? Math.max(SHARPEST, Math.PI - (inner[0] as number)) : Math.PI / 2;
  const side = stand * Math.max(1, 1 / Math.tan(sharp / 2));
  return length <= sides.length * side * 1.01 + GRAZE_MM;
}

/** Turns at the inner corners between parts that follow each other. */
function innerTurns(parts: readonly (FacePart | undefined)[]): number[] {
  return parts.flatMap((part, i) => {
    const next = parts[i + 1];
    if (!part || !next || part.face === next.face) return [];
    const turn = turnBetween(part.face, next.face);
    return turn > CORNER ? [turn] : [];
  });
}

/** The worked parts as stretches for bands: flat where a face is merely cut, round at the true end of a face. */
export function workedStretches({ chain, parts }: ChainParts): readonly Stretch[] {
  if (parts.every((part) => part.worked)) return [wholeStretch(chain)];
  const ordered = chain.closed ? startAfterGap(parts) : parts;
  const out: Stretch[] = [];
  let run: FacePart[] = [];
  const finish = (): void => {
    const [head, tail] = [run[0], run.at(-1)];
    if (head && tail) {
      out.push({
        faces: joinedFaces(run),
        closed: false,
        roundStart: head.from === 0,
        roundEnd: tail.to === 1,
      });
    }
    run = [];
  };
  for (const part of ordered) {
    if (part.worked) run.push(part);
    else finish();
  }
  finish();
  return out;
}

function startAfterGap(parts: readonly FacePart[]): readonly FacePart[] {
  const gap = parts.findIndex((part) => !part.worked);
  return [...parts.slice(gap), ...parts.slice(0, gap)];
}

/** Parts of one face that follow each other become one face again. */
function joinedFaces(run: readonly FacePart[]): Face[] {
  const joined: FacePart[] = [];
  for (const part of run) {
    const last = joined.at(-1);
    if (last && last.face === part.face && last.to === part.from) joined[joined.length - 1] = { ...last, to: part.to };
    else joined.push(part);
  }
  return joined.map(({ face, from, to }) => partOfFace(face, from, to));
}
