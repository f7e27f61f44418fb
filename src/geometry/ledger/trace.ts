import type { Box } from '../box.ts';
import { type EdgePart, xAt } from './edge.ts';

/*
 * The outline of a part of the floor, put together while the sweep goes by.
 *
 *        _____          In each slab the part lies between a side where it begins and one where it ends. A side that
 *       |     |__       goes on is one piece; where sides stop or start at a height, what is left over there are the
 *       |        |      ends of level pieces: sorted by x they pair off, because a level piece is where the part
 *       |________|      is on one side of the height and not on the other.
 *
 * Pieces are told in the direction that has the part on the left (from x towards y it turns to the left).
 */
export interface TracedPiece {
  readonly fromX: number;
  readonly fromY: number;
  readonly toX: number;
  readonly toY: number;
  /** The edge it lies on; null for a level piece. */
  readonly part: EdgePart | null;
}

export type TracedLoop = readonly TracedPiece[];

export interface Tracer {
  /** Sides of the part in one slab, from left to right: begins, ends, begins, ends ... */
  slab(bottom: number, top: number, sides: readonly EdgePart[]): void;
  loops(): TracedLoop[];
}

/** One side from where it starts to where it stops; a side where the part begins is walked downwards. */
interface Run {
  readonly part: EdgePart;
  readonly begins: boolean;
  readonly lo: number;
  readonly loX: number;
  hi: number;
  hiX: number;
  /** The run that the walk goes on with. */
  next: Run | null;
}

/** An end of a run at the height between two slabs. */
interface LooseEnd {
  readonly run: Run;
  readonly x: number;
  /** The walk comes out of the run here; else it goes into it. */
  readonly out: boolean;
}

/** Places nearer than this, in mm, are one. */
const SAME_PLACE_MM = 1e-7;

export function tracer(box: Box): Tracer {
  const runs: Run[] = [];
  let open: Run[] = [];
  let height = Number.NaN;

  function slab(bottom: number, top: number, sides: readonly EdgePart[]): void {
    if (bottom !== height) close();
    if (!goesOnAsBefore(open, sides)) change(bottom, sides);
    height = top;
  }

  function change(bottom: number, sides: readonly EdgePart[]): void {
    const going: Run[] = [];
    const loose: LooseEnd[] = [];
    const stopping = new Map(open.map((run) => [run.part, run]));
    for (const [i, part] of sides.entries()) {
      const begins = i % 2 === 0;
      const before = stopping.get(part);
      const known = before?.begins === begins ? before : null;
      if (known) stopping.delete(part);
      const run = known ?? startRun(part, begins, bottom);
      if (!known) loose.push({ run, x: run.loX, out: begins });
      going.push(run);
    }
    for (const run of stopping.values()) loose.push(stopRun(run, bottom));
    pairOff(loose);
    open = going;
  }

  function startRun(part: EdgePart, begins: boolean, y: number): Run {
    const run: Run = { part, begins, lo: y, loX: xIn(part, y), hi: y, hiX: 0, next: null };
    runs.push(run);
    return run;
  }

  function stopRun(run: Run, y: number): LooseEnd {
    run.hi = y;
    run.hiX = xIn(run.part, y);
    return { run, x: run.hiX, out: !run.begins };
  }

  function xIn({ edge }: EdgePart, y: number): number {
    return Math.min(box.maxX, Math.max(box.minX, xAt(edge, y)));
  }

  function close(): void {
    pairOff(open.map((run) => stopRun(run, height)));
    open = [];
  }

  return {
    slab,
    loops() {
      close();
      return loopsOf(runs);
    },
  };
}

function goesOnAsBefore(open: readonly Run[], sides: readonly EdgePart[]): boolean {
  return open.length === sides.length && open.every((run, i) => run.part === sides[i]);
}

/** Each way out goes on into the nearest way in; where several meet in one point any pairing closes, so the last open one is taken. */
function pairOff(loose: LooseEnd[]): void {
  loose.sort((a, b) => a.x - b.x);
  const waiting: LooseEnd[] = [];
  for (const end of loose) {
    const last = waiting.at(-1);
    if (!last || last.out === end.out) {
      waiting.push(end);
      continue;
    }
    waiting.pop();
    if (last.out) last.run.next = end.run;
    else end.run.next = last.run;
  }
}

function loopsOf(runs: readonly Run[]): TracedLoop[] {
  const done = new Set<Run>();
  const loops: TracedLoop[] = [];
  for (const first of runs) {
    if (done.has(first)) continue;
    const pieces: TracedPiece[] = [];
    for (let run: Run | null = first; run && !done.has(run); run = run.next) {
      done.add(run);
      const piece = pieceOf(run);
      addLevel(pieces, piece);
      pieces.push(piece);
    }
    const start = pieces[0] as TracedPiece;
    addLevel(pieces, start);
    const kept = withoutSpikes(pieces);
    if (kept.length > 1) loops.push(kept);
  }
  return loops;
}

function pieceOf({ part, begins, lo, loX, hi, hiX }: Run): TracedPiece {
  return begins
    ? { fromX: hiX, fromY: hi, toX: loX, toY: lo, part }
    : { fromX: loX, fromY: lo, toX: hiX, toY: hi, part };
}

/** The level piece from where the walk is to where the next piece starts, if there is any way to go. */
function addLevel(pieces: TracedPiece[], next: TracedPiece): void {
  const last = pieces.at(-1);
  if (!last) return;
  // A way as short as that is rounding, and its direction says nothing.
  const isSame = Math.abs(last.toX - next.fromX) < SAME_PLACE_MM && Math.abs(last.toY - next.fromY) < SAME_PLACE_MM;
  if (!isSame) {
    pieces.push({ fromX: last.toX, fromY: last.toY, toX: next.fromX, toY: next.fromY, part: null });
  }
}

/**
 * Straight pieces that turn back on each other and end no farther apart than this, in mm, are a spike of no width. Heights
 * that differ by rounding are one height, and an edge that is all but level gets far beyond its corner between the two.
 */
const SPIKE_MM = 1e-6;

function withoutSpikes(pieces: TracedPiece[]): TracedPiece[] {
  const kept = [...pieces];
  for (let i = 0; i < kept.length && kept.length > 1;) {
    const [at, after] = [i % kept.length, (i + 1) % kept.length];
    const joined = unfolded(kept[at] as TracedPiece, kept[after] as TracedPiece);
    if (joined === undefined) {
      i += 1;
      continue;
    }
    kept[at] = joined ?? (kept[at] as TracedPiece);
    kept.splice(after, 1);
    if (joined === null) kept.splice(after < at ? at - 1 : at, 1);
    i = Math.max(0, i - 2);
  }
  return kept;
}

/** What is left of two pieces of a spike, null for nothing; undefined where there is no spike. */
function unfolded(p: TracedPiece, q: TracedPiece): TracedPiece | null | undefined {
  if (p.part?.edge.arc || q.part?.edge.arc) return undefined;
  const [px, py] = [p.toX - p.fromX, p.toY - p.fromY];
  const [qx, qy] = [q.toX - q.fromX, q.toY - q.fromY];
  if (px * qx + py * qy >= 0) return undefined;
  const [pSize, qSize] = [Math.hypot(px, py), Math.hypot(qx, qy)];
  if (Math.abs(px * qy - py * qx) > SPIKE_MM * Math.max(pSize, qSize)) return undefined;
  if (Math.abs(pSize - qSize) < SAME_PLACE_MM) return null;
  return pSize > qSize ? { ...p, toX: q.toX, toY: q.toY } : { ...q, fromX: p.fromX, fromY: p.fromY };
}
