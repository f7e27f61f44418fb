import { onFloor } from '../model/doc.ts';
import { EDGE_KINDS, edgeCode, type EdgeKind } from './edgeLines.ts';
import { metresOf } from './faceMetres.ts';
import { add, divide, largest, multiply, number, term, wholeUp } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { namedOf } from './lyingIn.ts';
import { makeLine } from './makeLine.ts';
import { edgeMachine, edgeTimesOver, type PlannedPass } from './prep.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { stopEdgesIn } from './stopEdges.ts';
import { allowanceTerm, chosen, exact, factorTerm, measured, rateTerm } from './terms.ts';

/**
 * Hand hours at the edge, by linear metre at the face: metres x passes across x edge passes / rate, then corners,
 * posts and drains by number and stop lines. A post or drain that is priced by number is not priced by metre as well.
 */
export function edgeHours(site: Site, zone: ZoneWork): Line[] {
  return [
    ...zone.prep.passes.map((pass, i) => edgeOfPass(site, zone, pass, i)),
    countedHours(site, zone, 'hours.corners', 'labour/corner', zone.measure.innerCorners, []),
    ...pieces(site, zone),
    stopHours(site, zone),
  ].filter((line): line is Line => line !== null && line.quantity.high > 0);
}

function edgeOfPass(site: Site, zone: ZoneWork, pass: PlannedPass, index: number): Line | null {
  const row = pass.edgeMethod === null ? null : methodOf(pass.edgeMethod);
  if (!row || pass.edgeTimes === 0) return null;
  const base = {
    code: 'hours.edge',
    trade: 'hours',
    unit: 'h',
    zone: zone.prep.zone,
    of: pass.record ?? `pass-${index + 1}`,
    records: zone.prep.zone === 'rest' ? [] : [zone.prep.zone],
  } as const;
  const times = chosen('edge passes', pass.edgeTimes, 'number', pass.record);
  if (row.group !== 'handGrind') {
    // Peening, needles and other tools have a rate by area: the strip is theirs.
    const terms = [
      measured('strip', zone.measure.stripM2, 'm2', `strip|${zone.prep.zone}`),
      times,
      rateTerm('rate', site.book.rate(`methods/${row.id}`)),
    ];
    return makeLine({ ...base, formula: divide(multiply(term('strip'), term('edge passes')), term('rate')), terms });
  }
  const cup = row.cutWidthMm ?? 125;
  const kinds = EDGE_KINDS.map((kind) => edgeOfKind(site, zone, kind, cup));
  return makeLine({
    ...base,
    formula: divide(multiply(add(...kinds.map((kind) => kind.formula)), term('edge passes')), term('rate')),
    terms: [
      ...kinds.flatMap((kind) => kind.terms),
      exact('cup', cup, 'mm'),
      factorTerm('useful width', site.book.rate('factors/overlap/grinder')),
      times,
      rateTerm('rate', site.book.rate('labour/edge_hand')),
    ],
  });
}

/** Metres of one kind of face, times the passes that lie side by side in its strip. */
function edgeOfKind(
  site: Site,
  zone: ZoneWork,
  kind: EdgeKind,
  cupMm: number,
): { readonly formula: Formula; readonly terms: readonly Term[] } {
  const machine = edgeMachine(zone.prep);
  const metres = zone.measure.faces[kind] - (kind === 'obstruction' ? metresByNumber(site, zone) : 0);
  const widthMm = machine ? machine.clearanceMm[kind] + machine.lapMm : cupMm;
  const width = `${kind} strip`;
  return {
    formula: multiply(term(kind), wholeUp(divide(term(width), multiply(term('cup'), term('useful width'))))),
    terms: [
      measured(kind, Math.max(0, metres), 'm', `${edgeCode(kind)}|${zone.prep.zone}`),
      chosen(width, widthMm, 'mm', machine?.id ?? null),
    ],
  };
}

const BY_NUMBER = { post: 'labour/post_base', drain: 'labour/drain' } as const;
type ByNumber = keyof typeof BY_NUMBER;

function countedPieces({ doc, floor }: Site, { measure }: ZoneWork, kind: ByNumber) {
  return namedOf(onFloor(doc, 'obstruction', floor), measure.solids).filter(
    (item) => item.kind === kind && item.under !== 'clearedBefore',
  );
}

/** Metres round posts and drains, which are priced by number. */
function metresByNumber(site: Site, zone: ZoneWork): number {
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
