import type { TightPiece, ZoneMeasure } from '../geometry/floorShape.ts';
import { onFloor } from '../model/doc.ts';
import { sumOf } from './formula.ts';
import type { Line } from './line.ts';
import { namedOf } from './lyingIn.ts';
import { makeLine, plainLine, sumLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured } from './terms.ts';

/**
 * A piece smaller than this, m2, is what a round head leaves in a corner: it is ground with the corner and gets no
 * number of its own. (1 - pi/4) r^2 of a 500 mm head is 0.013 m2; the limit is common practice, no source.
 */
const CORNER_REST_M2 = 0.05;

export interface TightSpot {
  /** T1, T2 ... by size, biggest first, over the whole floor. */
  readonly tag: string;
  readonly zone: string;
  readonly piece: TightPiece;
}

/** Tight spots of a floor that have a number: gaps by size, in zones that a machine works. Cut-off floor is counted apart and has none. */
export function tightSpots(zones: readonly ZoneMeasure[]): TightSpot[] {
  return zones
    .filter((zone) => zone.machine !== null)
    .flatMap((zone) => zone.tight.filter(isNumbered).map((piece) => ({ zone: zone.id, piece })))
    .toSorted((a, b) => b.piece.areaM2 - a.piece.areaM2)
    .map((spot, i) => ({ ...spot, tag: `T${i + 1}` }));
}

function isNumbered(piece: TightPiece): boolean {
  return piece.kind === 'gap' && piece.areaM2 >= CORNER_REST_M2;
}

/** Tight spots one by one and summed, corner rests, cut-off floor, and floor under things that stay but is done by hand. */
export function spotLines(site: Site): Line[] {
  const spots = tightSpots(site.measure.zones);
  return site.zones.flatMap((zone) => zoneSpots(site, zone, spots));
}

function zoneSpots(site: Site, { measure, prep, held }: ZoneWork, spots: readonly TightSpot[]): Line[] {
  const zone = prep.zone;
  const base = { trade: 'floor', unit: 'm2', zone, records: zone === 'rest' ? [] : [zone], held } as const;
  if (measure.machine === null) return [...handFloorLines(measure, base), ...underLines(site, measure, base)];
  const own = spots.filter((spot) => spot.zone === measure.id);
  const each = own.map(({ tag, piece }) =>
    plainLine({ ...base, code: 'tightSpot', of: tag, term: measured(tag, piece.areaM2, 'm2', `tight:${tag}`) }),
  );
  const numbered = own.reduce((sum, { piece }) => sum + piece.areaM2, 0);
  const terms = own.map(({ tag, piece }, i) => measured(tag, piece.areaM2, 'm2', each[i]?.key ?? null));
  const total = makeLine({
    ...base,
    code: 'tight',
    formula: sumOf(terms.map(({ name }) => name)),
    terms,
  });
  const rests = plainLine({
    ...base,
    code: 'cornerRests',
    term: measured(
      'left in corners by a round head',
      Math.max(0, measure.tightM2 - measure.cutOffM2 - numbered),
      'm2',
      zone,
    ),
  });
  const cutOff = plainLine({
    ...base,
    code: 'cutOff',
    term: measured('floor that no machine gets to', measure.cutOffM2, 'm2', zone),
  });
  const handTerms = [
    measured('tight spots', total.quantity.likely, 'm2', total.key),
    measured('corner rests', rests.quantity.likely, 'm2', rests.key),
    measured('cut off', measure.cutOffM2, 'm2', cutOff.key),
  ];
  const hand = makeLine({
    ...base,
    code: 'handArea',
    formula: sumOf(handTerms.map(({ name }) => name)),
    terms: handTerms,
  });
  return [...each, total, rests, cutOff, hand, ...underLines(site, measure, base)];
}

type Base = Omit<Parameters<typeof plainLine>[0], 'code' | 'term'>;

/** A zone without a machine: all of it is hand area, and no spot of it is tight. */
function handFloorLines(measure: ZoneMeasure, base: Base): Line[] {
  const all = plainLine({
    ...base,
    code: 'handFloor',
    term: measured('floor worked by hand', measure.tightM2, 'm2', base.zone),
  });
  const hand = plainLine({
    ...base,
    code: 'handArea',
    term: measured('floor worked by hand', measure.tightM2, 'm2', all.key),
  });
  return [all, hand];
}

/** Floor under obstructions that is done by hand: it is off the net floor, so it is counted apart. */
function underLines(site: Site, measure: ZoneMeasure, base: Base): Line[] {
  const under = namedOf(onFloor(site.doc, 'obstruction', site.floor), measure.solids).filter(
    (item) => item.under === 'byHand',
  );
  if (under.length === 0) return [];
  return [
    sumLine(
      { ...base, code: 'handUnder', records: under.map(({ id }) => id) },
      under.map(({ id, tag }) => ({ name: tag, value: site.measure.deductedM2[id] ?? 0, from: id })),
    ),
  ];
}
