import { formRing } from '../geometry/formRing.ts';
import { perimeter } from '../geometry/ring.ts';
import { onFloor } from '../model/doc.ts';
import { metresOf } from './faceMetres.ts';
import { divide, largest, multiply, number, term } from './formula.ts';
import type { Line } from './line.ts';
import { namedOf } from './lyingIn.ts';
import { makeLine } from './makeLine.ts';
import { edgeTimesOver } from './prep.ts';
import type { Site, ZoneWork } from './site.ts';
import { stopEdgesIn } from './stopEdges.ts';
import { allowanceTerm, chosen, measured, rateTerm } from './terms.ts';

/** Hours of what is priced by the piece at the edge, h: corners, posts, drains, stop lines, and the groove along them. */
export function edgePieceHours(site: Site, zone: ZoneWork): Line[] {
  return [
    countedHours(site, zone, 'hours.corners', 'labour/corner', zone.measure.innerCorners, []),
    ...pieces(site, zone),
    stopHours(site, zone),
    grooveHours(site, zone),
  ].filter((line): line is Line => line !== null);
}

const BY_NUMBER = { post: 'labour/post_base', drain: 'labour/drain' } as const;
type ByNumber = keyof typeof BY_NUMBER;

/** Posts or drains that take longer by the piece than by the metre of their faces. */
function countedPieces(site: Site, { measure }: ZoneWork, kind: ByNumber) {
  const mostM = (site.book.rate(BY_NUMBER[kind]).likely / 60) * site.book.rate('labour/edge_hand').likely;
  return namedOf(onFloor(site.doc, 'obstruction', site.floor), measure.solids).filter(
    (item) =>
      item.kind === kind && item.under !== 'clearedBefore' && perimeter(formRing(item.shape)) / 1000 <= mostM + HAIR_M,
  );
}

const HAIR_M = 1e-9;

/** Metres round posts and drains beside machine field, which are priced by number. */
export function metresByNumber(site: Site, zone: ZoneWork): number {
  const items = [...countedPieces(site, zone, 'post'), ...countedPieces(site, zone, 'drain')];
  return items.reduce((sum, item) => sum + metresOf(zone.measure, item.id, (line) => !line.hidden), 0);
}

function pieces(site: Site, zone: ZoneWork): (Line | null)[] {
  return (['post', 'drain'] as const).map((kind) => {
    const items = countedPieces(site, zone, kind);
    return countedHours(
      site,
      zone,
      `hours.${kind}s`,
      BY_NUMBER[kind],
      items.length,
      items.map(({ id }) => id),
    );
  });
}

function countedHours(
  site: Site,
  { prep }: ZoneWork,
  code: string,
  rate: string,
  count: number,
  records: Line['records'],
): Line | null {
  const times = edgeTimesOver(prep);
  if (count === 0 || times === 0) return null;
  return makeLine({
    code,
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    records,
    formula: divide(multiply(term('number'), term('edge passes'), term('minutes each')), number(60)),
    terms: [
      measured('number', count, 'number', prep.zone),
      chosen('edge passes', times, 'number'),
      allowanceTerm('minutes each', site.book.rate(rate)),
    ],
  });
}

/** A stop line takes so many minutes a doorway; a wide one takes its metres at the rate of an edge, if that is more. */
function stopHours(site: Site, zone: ZoneWork): Line | null {
  const { measure, prep } = zone;
  const times = edgeTimesOver(prep);
  if (measure.faces.stop === 0 || times === 0) return null;
  const edges = stopEdgesIn(site, zone);
  return makeLine({
    code: 'hours.stopLines',
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    records: edges.map(({ record }) => record),
    formula: multiply(
      term('edge passes'),
      largest(
        divide(multiply(term('doorways'), term('minutes each')), number(60)),
        divide(term('stop lines'), term('rate')),
      ),
    ),
    terms: [
      chosen('edge passes', times, 'number'),
      measured('doorways', edges.filter((edge) => edge.doorway).length, 'number', prep.zone),
      allowanceTerm('minutes each', site.book.rate('labour/doorway')),
      measured('stop lines', measure.faces.stop, 'm', `stopLine|${prep.zone}`),
      rateTerm('rate', site.book.rate('labour/edge_hand')),
    ],
  });
}

/** A groove along the stop lines, once. None while what lies in the slab has not been located. */
function grooveHours(site: Site, { prep }: ZoneWork): Line | null {
  const groove = site.quantities.get(`groove|${prep.zone}`);
  if (!groove || groove.held !== null) return null;
  return makeLine({
    code: 'hours.groove',
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    records: groove.records,
    formula: divide(term('groove'), term('rate')),
    terms: [
      measured('groove', groove.quantity.likely, 'm', groove.key),
      rateTerm('rate', site.book.rate('labour/terminate_groove')),
    ],
  });
}
