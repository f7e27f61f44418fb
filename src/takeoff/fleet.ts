import type { Machine } from '../model/records/machine.ts';
import { machineBodies } from './rates/machineBodies.ts';
import { methodOf } from './rates/methods.ts';

/** Ride-on and walk-behind machines keep so far from a drop, mm: 0.5 to 1 m; common practice, no source. */
const DROP_CLEARANCE_MM = 600;
/** Least overlap between machine and hand work, mm; common practice, no source. */
const LAP_MM = 50;

/** Methods that the first fleet of a garage holds. */
export const FIRST_FLEET: readonly string[] = ['grinder_small', 'hand_grinder'];
export const FIRST_MACHINE = 'grinder_small';
export const FIRST_EDGE_METHOD = 'hand_grinder';
/** Passes and edge passes of a job that nobody has planned yet. */
export const FIRST_TIMES = { passes: 2, edge: 1 } as const;

/** Edge clearance of a method, mm: the middle of its low and high. */
export function middleClearanceMm(method: string): number {
  const row = methodOf(method);
  return row ? (row.edgeClearanceMm[0] + row.edgeClearanceMm[1]) / 2 : 0;
}

/**
 * A machine as the book has it, in mm and kg; null for a method without a machine (etch, strip). What the book leaves
 * open is filled so that reach stays honest: a body as wide and long as the cut, 1 m high.
 */
export function defaultMachine(method: string): Machine | null {
  const row = methodOf(method);
  if (!row || row.cutWidthMm === null) return null;
  const body = machineBodies.find((each) => each.method === method);
  const clearanceMm = middleClearanceMm(method);
  return {
    method,
    name: row.term,
    cutWidthMm: row.cutWidthMm,
    bodyWidthMm: body?.widthMm ?? row.cutWidthMm,
    bodyLengthMm: body?.lengthMm ?? row.cutWidthMm,
    heightMm: body?.heightMm ?? 1000,
    turningMm: body?.turningMm ?? 0,
    smallestOpeningMm: row.smallestOpeningMm ?? row.cutWidthMm,
    clearanceMm: { wall: clearanceMm, obstruction: clearanceMm, drop: DROP_CLEARANCE_MM, stop: clearanceMm },
    lapMm: LAP_MM,
    ...(row.massKg ? { massKg: row.massKg[1] } : {}),
    powerKw: row.power.kW[1],
    volts: row.power.volts,
    amps: row.power.amps,
    vacuumM3h: row.dust.vacuumM3h,
  };
}
