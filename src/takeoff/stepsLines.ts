import type { Point, Region } from '../geometry/floorShape.ts';
import { ringArea, ringContains } from '../geometry/ring.ts';
import { nearestOnSegment } from '../geometry/segment.ts';
import { onFloor, type Held } from '../model/doc.ts';
import { add, divide, multiply, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { keptOf } from './keptShapes.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured } from './terms.ts';

/**
 * Flights of steps that belong to a zone: those that stand in it, and those beside the slab that no zone comes nearer to.
 * A flight is off the net floor, as a column is: no machine works it.
 */
export function stepsIn(site: Site, zone: ZoneWork): readonly Held<'steps'>[] {
  return onFloor(site.doc, 'steps', site.floor).filter((flight) => zoneOf(site, flight) === zone);
}

function zoneOf(site: Site, flight: Held<'steps'>): ZoneWork | null {
  const onSlab = (site.measure.deductedM2[flight.id] ?? 0) > 0;
  const inside = onSlab ? site.zones.find(({ measure }) => measure.solids.includes(flight.id)) : undefined;
  if (inside) return inside;
  const middle = middleOf(flight.ring);
  const [nearest] = site.zones
    .map((zone) => ({ zone, apart: apartFrom(zone.measure.net, middle) }))
    .toSorted((a, b) => a.apart - b.apart);
  return nearest?.zone ?? null;
}

function middleOf(ring: readonly Point[]): Point {
  const sum = ring.reduce<Point>(([x, y], at) => [x + at[0], y + at[1]], [0, 0]);
  return [sum[0] / ring.length, sum[1] / ring.length];
}

/** Distance of a place from floor, mm; nothing inside it. */
function apartFrom(region: Region, at: Point): number {
  const rings = region.flat();
  if (rings.filter((ring) => ringContains(ring, at)).length % 2 === 1) return 0;
  const sides = rings.flatMap((ring) => ring.map((from, i) => [from, ring[(i + 1) % ring.length] ?? from] as const));
  return sides.reduce(
    (least, [a, b]) => Math.min(least, nearestOnSegment(at, a, b).distance),
    Number.POSITIVE_INFINITY,
  );
}

const planAreaM2 = keptOf((flight: Held<'steps'>) => ringArea(flight.ring) / 1e6);

/** Treads by number, and the area of treads and risers, m2, of the steps of each zone. */
export function stepsLines(site: Site): Line[] {
  return onFloor(site.doc, 'steps', site.floor).length === 0 ? [] : site.zones.flatMap((zone) => zoneSteps(site, zone));
}

function zoneSteps(site: Site, zone: ZoneWork): Line[] {
  const flights = stepsIn(site, zone);
  if (flights.length === 0) return [];
  const names = uniqueNames(flights.map(({ tag }) => tag));
  const of = (i: number, what: string): string => `${names[i] ?? ''} ${what}`;
  const base = {
    trade: 'spot',
    zone: zone.prep.zone,
    held: zone.held,
    records: flights.map(({ id }) => id),
  } as const;
  const plan = flights.map((flight, i) => measured(of(i, 'in plan'), planAreaM2(flight), 'm2', flight.id));
  return [
    makeLine({
      ...base,
      code: 'treads',
      unit: 'number',
      formula: sumOf(flights.map((_, i) => of(i, 'treads'))),
      terms: flights.map((flight, i) => measured(of(i, 'treads'), flight.count, 'number', flight.id)),
    }),
    makeLine({ ...base, code: 'treadArea', unit: 'm2', formula: sumOf(plan.map(({ name }) => name)), terms: plan }),
    makeLine({
      ...base,
      code: 'riserArea',
      unit: 'm2',
      // Each going of the plan has one riser above it, as wide as the flight.
      formula: add(
        ...plan.map(({ name }, i) => divide(multiply(term(name), term(of(i, 'rise'))), term(of(i, 'going')))),
      ),
      terms: flights.flatMap((flight, i) => [
        ...plan.slice(i, i + 1),
        measured(of(i, 'rise'), flight.riseMm, 'mm', flight.id),
        measured(of(i, 'going'), flight.goingMm, 'mm', flight.id),
      ]),
    }),
  ];
}
