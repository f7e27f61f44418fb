import type { Point, Region } from '../floorShape.ts';
import { orderRuns } from './runOrder.ts';
import { type PieceCut, cutPiece } from './cutLanes.ts';
import { fieldPieces } from './fieldPieces.ts';
import type { FieldPiece } from './fieldPieces.ts';
import { laneRuns } from './laneRuns.ts';
import type { DirectionCost, LaneRun, LaneJob, LanePlan } from './lane.ts';
import { laneDirections } from './laneDirections.ts';
import { holdsCircle } from './turningRoom.ts';

/** Narrower lanes than this are a mistake: they would be without number. */
const NARROWEST_MM = 10;
/** A piece with more lines than this is a mistake, too. */
const MOST_LINES = 1e6;

/**
 * The lanes of a machine field: the direction of least time, its lanes, runs, turns and travel, and what every other
 * direction would come to. seconds = travel / speed + (turns + backing turns) x turn time + runs x move time; equal
 * times go to the direction tried first. Null where there is nothing to drive: no field, or a job that is no job
 * (useful width under 10 mm or a millionth of the field, no speed, a number that is none).
 */
export function lanePlan(field: Region, job: LaneJob): LanePlan | null {
  return lanePlanOf(fieldPieces(field), job);
}

/** The same for a field in pieces: a few long rows of numbers, which reach a worker in a hundredth of the time. */
export function lanePlanOf(pieces: readonly FieldPiece[], job: LaneJob): LanePlan | null {
  if (!isJob(job)) return null;
  if (pieces.some((piece) => piece.spanMm > MOST_LINES * job.usefulWidthMm)) return null;
  const directions = (job.directions ?? laneDirections(pieces)).map(halfTurn);
  const tight = pieces.map((piece) => !holdsCircle(piece, job.turningRadiusMm ?? 0));
  const tried = directions.map((directionRad) => costOf(pieces, tight, directionRad, job));
  const best = tried.reduce<DirectionCost | null>(
    (least, cost) => (least === null || cost.seconds < least.seconds * (1 - 1e-12) ? cost : least),
    null,
  );
  if (!best || best.lanes === 0) return null;
  const runs = pieces.flatMap((piece, i) => drivenRuns(piece, best.directionRad, job, tight[i] ?? false));
  return { ...best, ...orderRuns(runs, job.startAt ?? null), tried };
}

function isJob({ usefulWidthMm, speedMmPerS, turnS, moveS, turningRadiusMm = 0, directions = [] }: LaneJob): boolean {
  return (
    [usefulWidthMm, speedMmPerS, turnS, moveS, turningRadiusMm, ...directions].every(Number.isFinite) &&
    usefulWidthMm >= NARROWEST_MM &&
    speedMmPerS > 0
  );
}

/** A direction and its opposite are one: 0 up to pi. */
function halfTurn(directionRad: number): number {
  const turned = directionRad % Math.PI;
  return turned < 0 ? turned + Math.PI : turned;
}

function costOf(
  pieces: readonly FieldPiece[],
  tight: readonly boolean[],
  directionRad: number,
  job: LaneJob,
): DirectionCost {
  let [lanes, runs, backingTurns, travelMm] = [0, 0, 0, 0];
  for (const [i, piece] of pieces.entries()) {
    const cut = cutPiece(piece, directionRad, job.usefulWidthMm);
    const found = laneRuns(cut).count;
    lanes += cut.count;
    runs += found;
    travelMm += travelOf(cut);
    if (tight[i]) backingTurns += cut.count - found;
  }
  const turns = lanes - runs;
  const seconds = travelMm / job.speedMmPerS + (turns + backingTurns) * job.turnS + runs * job.moveS;
  return { directionRad, lanes, runs, turns, backingTurns, travelM: travelMm / 1000, seconds };
}

function travelOf({ count, left, right }: PieceCut): number {
  let sum = 0;
  for (let i = 0; i < count; i += 1) sum += (right[i] as number) - (left[i] as number);
  return sum;
}

/** The runs of a piece as floor points: lane after lane, each the way round that the machine first meets it. */
function drivenRuns(piece: FieldPiece, directionRad: number, job: LaneJob, backsOut: boolean): LaneRun[] {
  const cut = cutPiece(piece, directionRad, job.usefulWidthMm);
  const { count, runOf } = laneRuns(cut);
  const runs = Array.from({ length: count }, (): [Point, Point][] => []);
  for (let lane = 0; lane < cut.count; lane += 1) {
    const lanes = runs[runOf[lane] as number] as [Point, Point][];
    const [from, to] = cut.ends(lane);
    lanes.push(lanes.length % 2 === 0 ? [from, to] : [to, from]);
  }
  return runs.map((lanes) => ({ lanes, backsOut }));
}
