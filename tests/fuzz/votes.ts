import type { FloorMeasure, FloorShape } from '../../src/geometry/floorShape.ts';
import { regionArea } from '../../src/geometry/ring.ts';
import { SMALLEST_MM2 } from '../../src/geometry/tight.ts';
import type { Dice } from './dice.ts';
import { type Numbers, outlined } from './engine.ts';
import { apart, slackOf, sum } from './laws.ts';
import { type Jury, oracleVerdict } from './oracleVotes.ts';
import { sampledFaults } from './sampler.ts';
import { type SlowAreas, slowAreas } from './slowAreas.ts';
import { LENGTH_SHARE, ORACLE_SHARE, OUTLINE_SHARE } from './tolerances.ts';

const POINTS = 40;
/** What is near enough to the edge of the floor to lie on it is told by a rounding, m. */
const ROUNDING_M = 1e-6;

export interface Votes {
  readonly broken: readonly { readonly law: string; readonly what: string }[];
  readonly disagreements: number;
}

/** What others say of an answer: a slow sum of trapezoids, other engines, points with direct distances, and its own outlines. */
export function outsideFaults(shape: FloorShape, numbers: Numbers, dice: Dice, jury: Jury): Votes {
  const measure = outlined(shape);
  const { faults, disagreements } = oracleVerdict(shape, numbers.faults, jury);
  const by = (law: string, found: readonly string[]) => found.map((what) => ({ law, what }));
  return {
    broken: [
      ...by('trapezoids', slowFaults(slowAreas(shape, numbers.faults), numbers)),
      ...by('oracles', faults),
      ...by('outlines', outlineFaults(measure, numbers)),
      ...by('points', sampledFaults(shape, measure, dice, POINTS)),
    ],
    disagreements,
  };
}

export function slowFaults(slow: SlowAreas, measure: Numbers): string[] {
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
    const length = sum(measure.zones, (zone) => zone.lengthM[id] ?? 0);
    const slack = LENGTH_SHARE * most + ROUNDING_M;
    if (length < least - slack || length > most + slack)
      faults.push(`line ${id}: ${length} m, not ${least} to ${most}`);
  }
  return faults.filter((fault) => fault !== null);
}

/** Outlines have the area that the numbers say, up to the chords of their arcs. */
export function outlineFaults(measure: FloorMeasure, numbers: Numbers): string[] {
  const slackM2 = slackOf(numbers, OUTLINE_SHARE);
  return measure.zones.flatMap((zone) => {
    const told = numbers.zones.find((one) => one.id === zone.id);
    if (!told) return [`zone ${zone.id} has outlines and no numbers`];
    const outlinedM2 = sum(zone.tight, (piece) => regionArea(piece.region)) / 1e6;
    // Of hand floor no piece under a square millimetre has an outline; on a floor of a few that is all of a zone.
    const isLeftOut = told.tightM2 > outlinedM2 && told.tightM2 - outlinedM2 <= SMALLEST_MM2 / 1e6;
    const tightM2 = isLeftOut ? told.tightM2 : outlinedM2;
    return [
      apart(`outline of ${zone.id} net`, regionArea(zone.net) / 1e6, told.netM2, slackM2),
      apart(`outline of ${zone.id} field`, regionArea(zone.field) / 1e6, told.fieldM2, slackM2),
      apart(`outline of ${zone.id} strip`, regionArea(zone.strip) / 1e6, told.stripM2, slackM2),
      apart(`outline of ${zone.id} tight`, tightM2, told.tightM2, slackM2),
    ].filter((fault) => fault !== null);
  });
}
