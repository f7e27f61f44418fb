import { type FloorMeasure, type FloorShape } from '../../src/geometry/floorShape.ts';
import type { Dice } from './dice.ts';
import { apart, slackOf } from './laws.ts';
import { sampledFaults } from './sampler.ts';
import { type SlowAreas, slowAreas } from './slowAreas.ts';
import { LENGTH_SHARE, NOTHING_M, ORACLE_SHARE } from './tolerances.ts';

/** What others say of an answer: a slow sum of trapezoids, and points with direct distances. */
export interface Votes {
  readonly faults: readonly string[];
  readonly disagreements: number;
}

const POINTS = 40;

export function outsideFaults(shape: FloorShape, measure: FloorMeasure, dice: Dice): Votes {
  const slow = slowAreas(shape, measure.faults);
  return {
    faults: [...slowFaults(slow, measure), ...sampledFaults(shape, measure, dice, POINTS)],
    disagreements: 0,
  };
}

function slowFaults(slow: SlowAreas, measure: FloorMeasure): string[] {
  const slackM2 = slackOf(measure, ORACLE_SHARE);
  const faults = [apart('net, trapezoids', measure.netM2, slow.netM2, slackM2)];
  for (const zone of measure.zones) {
    faults.push(apart(`${zone.id} net, trapezoids`, zone.netM2, slow.zonesM2[zone.id] ?? 0, slackM2));
    const findings = slow.findingsM2[zone.id] ?? {};
    for (const id of Object.keys({ ...findings, ...zone.findingM2 })) {
      faults.push(apart(`${zone.id} finding ${id}, trapezoids`, zone.findingM2[id] ?? 0, findings[id] ?? 0, slackM2));
    }
  }
  for (const [id, [least, most]] of Object.entries(slow.linesM)) {
    const length = measure.zones.reduce((sum, zone) => sum + (zone.lengthM[id] ?? 0), 0);
    const slack = LENGTH_SHARE * most + NOTHING_M;
    if (length < least - slack || length > most + slack)
      faults.push(`line ${id}: ${length} m, not ${least} to ${most}`);
  }
  return faults.filter((fault) => fault !== null);
}
