import { pathLength } from '../../geometry/polyline.ts';
import { EDGE_KINDS, type EdgeKind } from '../../takeoff/edgeLines.ts';
import { sumOf } from '../../takeoff/formula.ts';
import type { Line } from '../../takeoff/line.ts';
import { makeLine } from '../../takeoff/makeLine.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { measured } from '../../takeoff/terms.ts';

/** The key under which all edge of a floor answers why. */
export const ALL_EDGE = 'allEdge';

/**
 * Every metre of hard edge on a floor, by kind: what Survey counts. Which part of it a hand tool follows beside machine
 * field depends on a machine and its way in, and is said in Prep and Takeoff. Null while there are no quantities.
 */
export function allEdgeLine(takeoff: Takeoff): Line | null {
  if (takeoff.blocked !== null) return null;
  const terms = EDGE_KINDS.map((kind) => measured(kind, metresOf(takeoff, kind), 'm'));
  const formula = sumOf(EDGE_KINDS);
  const line = makeLine({ code: ALL_EDGE, trade: 'edge', unit: 'm', zone: null, records: [], formula, terms });
  return { ...line, key: ALL_EDGE };
}

function metresOf({ measure }: Takeoff, kind: EdgeKind): number {
  const lines = measure.zones.flatMap((zone) => zone.faceLines).filter((line) => line.kind === kind);
  return lines.reduce((sum, { path }) => sum + pathLength(path) / 1000, 0);
}
