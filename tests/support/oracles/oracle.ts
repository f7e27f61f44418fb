import type { FloorShape } from '../../../src/geometry/floorShape.ts';

/*
 * The same answers by a library that others wrote. An oracle knows one machine, with one clearance c from
 * every kind of face and a passage of 2(r + c), that works every zone and the rest. It takes raw floats and
 * rings that cross themselves (non-zero filling).
 *
 *   N      slabs less solids, walls (their gaps stay) and what is out of scope
 *   band   floor of N nearer than c + lap to a hard face
 *   raw    what the head covers of N: where its middle can stand and get to, grown by r
 *   field  raw less band
 */
export interface PartAreas {
  readonly netM2: number;
  readonly rawFieldM2: number;
  readonly bandM2: number;
  readonly fieldM2: number;
}

export interface OracleAnswers extends PartAreas {
  /** By zone id, and REST for what no zone covers. Later zones lie on top. */
  readonly zones: Readonly<Record<string, PartAreas>>;
}

export interface Oracle {
  readonly name: string;
  /** Throws what its library throws; ask `beyondOracles` first. */
  answer(shape: FloorShape): OracleAnswers;
}

/** Why a shape asks more than the oracles model; null when they can answer it. */
export function beyondOracles(shape: FloorShape): string | null {
  const [machine, ...others] = shape.machines;
  if (!machine || others.length > 0) return 'not exactly one machine';
  const { wall, obstruction, drop, stop } = machine.clearanceMm;
  if (obstruction !== wall || drop !== wall || stop !== wall) return 'clearances differ by kind of face';
  if (machine.passageMm > 2 * (machine.headRadiusMm + wall)) return 'the body is wider than the head needs';
  const workers = [shape.restMachine, ...shape.zones.map((zone) => zone.machine)];
  if (workers.some((worker) => worker !== machine.id)) return 'a zone without the machine';
  return null;
}
