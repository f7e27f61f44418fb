import { cracksIn, jointsIn } from './crackLines.ts';
import { isChased, isSawnOut } from './crackClass.ts';
import { divide, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { plainUse, type Use } from './orderLines.ts';
import { methodOf } from './rates/methods.ts';
import { carriedRuns } from './sealantLines.ts';
import type { Site, ZoneWork } from './site.ts';
import { lineTerm, measured, rateTerm } from './terms.ts';
import { methodIn, workedFields } from './workedFields.ts';

interface Metres {
  readonly id: Line['records'][number];
  readonly name: string;
  readonly metres: number;
}

/**
 * Chase blades by the metre, of cracks that are chased, old filler that is sawn out, reservoirs and termination grooves;
 * nothing while nothing may be cut.
 */
export function bladeWear(site: Site, zone: ZoneWork): Use[] {
  if (site.noCutting) return [];
  const chased = cracksIn(site, zone).filter(({ crack }) => isChased(crack));
  const runs = [
    ...chased.map(({ crack, metres }) => ({ id: crack.id, name: crack.tag, metres })),
    ...jointsIn(site, zone)
      .filter(({ joint }) => isSawnOut(joint))
      .map(({ joint, metres }) => ({ id: joint.id, name: joint.tag, metres })),
    ...carriedRuns(site, zone).filter(({ sawn }) => sawn),
    ...groovesOf(site, zone),
  ];
  return metreUse(zone, 'bladeWear', 'blades', runs, site);
}

/** Termination grooves along stop lines; held while what lies in the slab is not known. */
function groovesOf(site: Site, { prep }: ZoneWork): Metres[] {
  const groove = site.quantities.get(`groove|${prep.zone}`);
  if (!groove || groove.held !== null || prep.record === null) return [];
  return [{ id: prep.record.id, name: 'groove', metres: groove.quantity.likely }];
}

/**
 * Tape, rod or sand over open joints where a blaster goes, by the metre: shot left in a joint rusts through the coating
 * (common practice, no source). A joint that holds old filler is closed already.
 */
export function jointTape(site: Site, zone: ZoneWork): Use[] {
  const blasts = workedFields(zone).some((field) =>
    zone.prep.passes.some((pass) => methodOf(methodIn(pass, field))?.group === 'shot' && field.areaM2 > 0),
  );
  if (!blasts) return [];
  const runs = jointsIn(site, zone)
    .filter(({ joint }) => joint.oldFiller !== true)
    .map(({ joint, metres }) => {
      const inField = zone.measure.lineParts?.[joint.id]?.fieldM ?? metres;
      return { id: joint.id, name: joint.tag, metres: inField };
    })
    .filter(({ metres }) => metres > 0);
  return metreUse(zone, 'jointTape', 'm', runs, null);
}

/** Cup wheels along lines that are ground flush, by the metre: trimmed fills and steel angle, as their hours have them. */
export function cupsAlongLines(site: Site, zone: ZoneWork, hours: readonly Line[]): Use[] {
  const own = hours.filter((line) => line.zone === zone.prep.zone && TRIMMED.includes(line.code));
  const runs = own.flatMap(({ working }) => working.terms.filter(({ unit }) => unit === 'm'));
  if (runs.length === 0) return [];
  const names = uniqueNames(runs.map(({ name }) => name));
  const line = makeLine({
    code: 'cupWear',
    of: 'lines',
    unit: 'wheels',
    trade: 'material',
    zone: zone.prep.zone,
    records: own.flatMap(({ records }) => records),
    formula: divide(sumOf(names), term('life')),
    terms: [
      ...runs.map((run, i) => ({ ...run, name: names[i] ?? run.name })),
      rateTerm('life', site.book.rate('consumables/cup_edge')),
    ],
  });
  return [{ line, kind: 'hand_grinder', machine: null }];
}

const TRIMMED: readonly string[] = ['hours.crackTrim', 'hours.jointTrim', 'hours.steelAngle'];

/** Masking film with its tape, by the metre of wall and opening that a zone asks to be masked. */
export function maskFilm(site: Site, { prep }: ZoneWork): Use[] {
  const masked = site.quantities.get(`masked|${prep.zone}`);
  if (!masked || masked.quantity.high <= 0) return [];
  const base = { code: 'maskFilm', unit: 'm', trade: 'material', zone: prep.zone, records: masked.records } as const;
  return [plainUse(makeLine({ ...base, formula: term('masked'), terms: [lineTerm('masked', masked)] }))];
}

/** One line over metres; with a site it is divided by the life of a chase blade. */
function metreUse(zone: ZoneWork, code: string, unit: string, runs: readonly Metres[], site: Site | null): Use[] {
  if (runs.length === 0) return [];
  const names = uniqueNames(runs.map(({ name }) => name));
  const metres = sumOf(names);
  return [
    plainUse(
      makeLine({
        code,
        unit,
        trade: 'material',
        zone: zone.prep.zone,
        records: runs.map(({ id }) => id),
        formula: site ? divide(metres, term('life')) : metres,
        terms: [
          ...runs.map((run, i) => measured(names[i] ?? run.name, run.metres, 'm', run.id)),
          ...(site ? [rateTerm('life', site.book.rate('consumables/chase_blade'))] : []),
        ],
      }),
    ),
  ];
}
