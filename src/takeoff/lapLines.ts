import type { Point, Region } from '../geometry/floorShape.ts';
import { cross, distance, dot, minus } from '../geometry/point.ts';
import type { RecordId } from '../model/cell.ts';
import { sumOf, term } from './formula.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { phaseOf, visitPlace } from './phases.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured } from './terms.ts';

/** Two sides that lie so near each other, mm, are one: zones that are cut from one floor share them to rounding. */
const NEAR_MM = 1;

/**
 * Metres at which a zone meets floor of an earlier phase: the lap line between two visits, counted once, with the zone
 * that is worked later. The finished floor beside it is protected.
 */
export function lapLines(site: Site): Line[] {
  const { doc, floor } = site;
  const placed = site.zones.map((zone) => {
    const phase = phaseOf(doc, floor, zone.prep);
    return { zone, phase, place: visitPlace(doc, floor, phase) };
  });
  if (placed.every(({ phase }) => phase === null)) return [];
  return placed.flatMap(({ zone, place, phase }): Line[] => {
    const laps = placed
      .filter((other) => other.place < place)
      .map((other) => ({ other: other.zone, metres: sharedMetres(zone.measure.net, other.zone.measure.net) }))
      .filter(({ metres }) => metres > 0);
    return laps.length === 0 ? [] : [lapLine(zone, phase, laps)];
  });
}

function lapLine(
  { prep, held }: ZoneWork,
  phase: RecordId | null,
  laps: readonly { readonly other: ZoneWork; readonly metres: number }[],
): Line {
  const terms = laps.map(({ other, metres }) => measured(`beside ${other.prep.zone}`, metres, 'm', other.prep.zone));
  return makeLine({
    code: 'lapLine',
    trade: 'edge',
    unit: 'm',
    zone: prep.zone,
    phase,
    held,
    records: [prep.zone, ...laps.map(({ other }) => other.prep.zone)].filter((id) => id !== 'rest'),
    formula: terms.length === 1 && terms[0] ? term(terms[0].name) : sumOf(terms.map(({ name }) => name)),
    terms,
  });
}

type Side = readonly [Point, Point];

/** Metres of outline that two regions of one floor share. */
export function sharedMetres(a: Region, b: Region): number {
  const [ofA, ofB] = [sidesOf(a), sidesOf(b)];
  return ofA.reduce((sum, side) => sum + ofB.reduce((part, other) => part + sharedMm(side, other), 0), 0) / 1000;
}

function sidesOf(region: Region): Side[] {
  return region.flat().flatMap((ring) => ring.map((from, i): Side => [from, ring[(i + 1) % ring.length] ?? from]));
}

/** Length that two sides have in common, mm: as far as both ends of the other lie along the first. */
function sharedMm([from, to]: Side, [start, end]: Side): number {
  const length = distance(from, to);
  if (length === 0) return 0;
  const run = minus(to, from);
  const [first, last] = [minus(start, from), minus(end, from)];
  if (Math.abs(cross(run, first)) > NEAR_MM * length || Math.abs(cross(run, last)) > NEAR_MM * length) return 0;
  const [s, e] = [dot(run, first) / length, dot(run, last) / length];
  return Math.max(0, Math.min(length, Math.max(s, e)) - Math.max(0, Math.min(s, e)));
}
