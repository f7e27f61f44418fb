import { add, divide, largest, multiply, number, sumOf, term } from './formula.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { edgeTimesOver, timesOver } from './prep.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { laidInto, slowFindings } from './slowFindings.ts';
import { allowanceTerm, chosen, factorTerm, measured, rateTerm } from './terms.ts';
import { upstandRuns } from './upstandLines.ts';

/** Hand hours on area: tight spots and cut-off floor, floor under things that stay, steps, upstands; vacuum between and after. */
export function handHours(site: Site, zone: ZoneWork): Line[] {
  return [
    ...handAreas(site, zone),
    stepsHours(site, zone),
    upstandHours(site, zone),
    coveHours(site, zone),
    betweenPasses(site, zone),
    finalVacuum(site, zone),
  ].filter((line): line is Line => line !== null && line.quantity.high > 0);
}

const TRADE = { trade: 'hours', unit: 'h' } as const;

function recordsOf({ prep }: ZoneWork): Line['records'] {
  return prep.zone === 'rest' ? [] : [prep.zone];
}

/** Tool and times over of floor that no machine works: the zone's own hand passes, or its edge tool. */
function handWork({ prep }: ZoneWork): { readonly method: string; readonly times: number } | null {
  const own = prep.passes.filter((pass) => {
    const row = methodOf(pass.method);
    return row !== null && isHandMethod(row) && row.rate.unit === 'm2/h';
  });
  const first = own[0];
  if (first) return { method: first.method, times: own.reduce((sum, pass) => sum + pass.times, 0) };
  const edge = prep.passes.findLast((pass) => pass.edgeMethod !== null)?.edgeMethod;
  return edge ? { method: edge, times: edgeTimesOver(prep) } : null;
}

/**
 * Corner rests are ground with the corners, which are priced by number: they stay out here. Hardness acts on the rate;
 * the size of the room and what stands about do not slow a tool that is carried.
 */
function handAreas(site: Site, zone: ZoneWork): (Line | null)[] {
  const { measure, prep } = zone;
  const work = handWork(zone);
  if (!work) return [];
  const areas = [
    { code: 'hours.tight', name: 'tight spots', from: 'tight' },
    { code: 'hours.cutOff', name: 'cut-off floor', from: 'cutOff' },
    { code: 'hours.handFloor', name: 'floor worked by hand', from: 'handFloor' },
    { code: 'hours.handUnder', name: 'floor under what stays', from: 'handUnder' },
  ] as const;
  const lines = areas.map(({ from }) => site.quantities.get(`${from}|${prep.zone}`));
  const slowIn = laidInto(
    site,
    slowFindings(site, zone),
    (finding) => finding.tightM2,
    // Floor under what stays is off the net floor: no finding is measured there.
    areas.map(({ from }, i) => (from === 'handUnder' ? 0 : (lines[i]?.quantity.likely ?? 0))),
  );
  return areas.map(({ code, name }, i) => {
    const line = lines[i];
    const slow = slowIn[i] ?? [];
    if (!line || line.quantity.likely <= 0) return null;
    const hardness = prep.record?.hardness ?? 'medium';
    return makeLine({
      ...TRADE,
      code,
      zone: measure.id as Line['zone'],
      records: line.records,
      formula: divide(
        multiply(add(term(name), ...slow.map((each) => each.extra)), term('times over')),
        multiply(term('rate'), term('hardness')),
      ),
      terms: [
        ...slow.flatMap((each) => each.terms),
        measured(name, line.quantity.likely, 'm2', line.key),
        chosen('times over', work.times, 'number'),
        rateTerm('rate', site.book.rate(`methods/${work.method}`)),
        factorTerm('hardness', site.book.rate(`factors/hardness/${hardness}`)),
      ],
    });
  });
}

/** Steps take so many minutes a tread; wide ones take their treads and risers at the rate of the hand tool, if that is more. */
function stepsHours(site: Site, zone: ZoneWork): Line | null {
  const of = (code: string): Line | undefined => site.quantities.get(`${code}|${zone.prep.zone}`);
  const [treads, treadArea, riserArea] = [of('treads'), of('treadArea'), of('riserArea')];
  const times = Math.max(1, edgeTimesOver(zone.prep));
  if (!treads || !treadArea || !riserArea) return null;
  return makeLine({
    ...TRADE,
    code: 'hours.steps',
    zone: zone.prep.zone,
    records: treads.records,
    formula: multiply(
      term('edge passes'),
      largest(
        divide(multiply(term('treads'), term('minutes each')), number(60)),
        divide(add(term('tread area'), term('riser area')), term('rate')),
      ),
    ),
    terms: [
      chosen('edge passes', times, 'number'),
      measured('treads', treads.quantity.likely, 'number', treads.key),
      allowanceTerm('minutes each', site.book.rate('labour/stair_tread')),
      measured('tread area', treadArea.quantity.likely, 'm2', treadArea.key),
      measured('riser area', riserArea.quantity.likely, 'm2', riserArea.key),
      rateTerm('rate', site.book.rate('methods/hand_grinder')),
    ],
  });
}

function upstandHours(site: Site, zone: ZoneWork): Line | null {
  const area = site.quantities.get(`upstandArea.prepare|${zone.prep.zone}`);
  if (!area) return null;
  return makeLine({
    ...TRADE,
    code: 'hours.upstands',
    zone: zone.prep.zone,
    records: area.records,
    formula: divide(term('upstands to prepare'), term('rate')),
    terms: [
      measured('upstands to prepare', area.quantity.likely, 'm2', area.key),
      rateTerm('rate', site.book.rate('labour/upstand_prep')),
    ],
  });
}

/** Cove base comes off by the metre. Other upstands that are taken away have no rate here and are a fault, not a guess. */
function coveHours(site: Site, zone: ZoneWork): Line | null {
  const runs = upstandRuns(site, zone).filter(
    ({ upstand }) => upstand.treat === 'remove' && upstand.kind === 'coveBase',
  );
  if (runs.length === 0) return null;
  return makeLine({
    ...TRADE,
    code: 'hours.coveRemove',
    zone: zone.prep.zone,
    records: runs.map((run) => run.record),
    formula: divide(sumOf(runs.map((run) => run.name)), term('rate')),
    terms: [
      ...runs.map((run) => measured(run.name, run.metres, 'm', run.record)),
      rateTerm('rate', site.book.rate('labour/cove_remove')),
    ],
  });
}

/** Vacuum between dry grinding passes indoors: 29 CFR 1926.1153 Table 1 entry xiii. */
function betweenPasses(site: Site, zone: ZoneWork): Line | null {
  const { prep, measure } = zone;
  const between = timesOver(prep) - 1;
  const grinds = prep.passes.some((pass) => ['grind', 'bush'].includes(methodOf(pass.method)?.group ?? ''));
  const indoor = (prep.record?.place ?? 'indoor') === 'indoor';
  if (between <= 0 || !grinds || !indoor) return null;
  return makeLine({
    ...TRADE,
    code: 'hours.hepa',
    zone: prep.zone,
    records: recordsOf(zone),
    formula: divide(multiply(term('net floor'), term('between passes')), term('rate')),
    terms: [
      measured('net floor', measure.netM2, 'm2', `netFloor|${prep.zone}`),
      chosen('between passes', between, 'number'),
      rateTerm('rate', site.book.rate('labour/hepa_between')),
    ],
  });
}

function finalVacuum(site: Site, zone: ZoneWork): Line {
  return makeLine({
    ...TRADE,
    code: 'hours.vacuum',
    zone: zone.prep.zone,
    records: recordsOf(zone),
    formula: divide(term('net floor'), term('rate')),
    terms: [
      measured('net floor', zone.measure.netM2, 'm2', `netFloor|${zone.prep.zone}`),
      rateTerm('rate', site.book.rate('labour/final_vac')),
    ],
  });
}
