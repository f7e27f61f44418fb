import { jointsIn } from './crackLines.ts';
import { isSawnOut } from './crackClass.ts';
import { add, divide, multiply, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { plainUse, type Use } from './orderLines.ts';
import { methodOf } from './rates/methods.ts';
import type { CarriedRun } from './sealantLines.ts';
import type { Site, ZoneWork } from './site.ts';
import { kindOf } from './toolWear.ts';
import { lineTerm, measured, rateTerm } from './terms.ts';
import { methodIn, workedFields } from './workedFields.ts';

/** Classes of crack that are chased, by the codes of their metres. */
const CHASED: readonly string[] = ['static', 'notJudged'].flatMap((behaviour) =>
  ['ordinary', 'wide', 'notMeasured'].map((width) => `crack.${behaviour}.${width}`),
);

/**
 * Chase blades by the metre, of cracks that are chased, old filler that is sawn out, reservoirs and termination grooves;
 * nothing while nothing may be cut.
 */
export function bladeWear(site: Site, zone: ZoneWork, carried: readonly CarriedRun[]): Use[] {
  if (site.noCutting) return [];
  const lines = [...CHASED, 'groove'].flatMap((code) => {
    const line = site.quantities.get(`${code}|${zone.prep.zone}`);
    return line && line.held === null && line.quantity.high > 0 ? [line] : [];
  });
  const sawn = [
    ...jointsIn(site, zone)
      .filter(({ joint }) => isSawnOut(joint))
      .map(({ joint, metres }) => ({ id: joint.id, name: joint.tag, metres })),
    ...carried.filter((run) => run.sawn),
  ];
  const names = uniqueNames(sawn.map(({ name }) => name));
  const terms = [
    ...lines.map((line) => lineTerm(line.key, line)),
    ...sawn.map((run, i) => measured(names[i] ?? run.name, run.metres, 'm', run.id)),
  ];
  if (terms.length === 0) return [];
  const line = makeLine({
    code: 'bladeWear',
    unit: 'blades',
    trade: 'material',
    zone: zone.prep.zone,
    records: [...lines.flatMap(({ records }) => records), ...sawn.map(({ id }) => id)],
    formula: divide(sumOf(terms.map(({ name }) => name)), term('life')),
    terms: [...terms, rateTerm('life', site.book.rate('consumables/chase_blade'))],
  });
  return [plainUse(line)];
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
  if (runs.length === 0) return [];
  const names = uniqueNames(runs.map(({ name }) => name));
  const line = makeLine({
    code: 'jointTape',
    unit: 'm',
    trade: 'material',
    zone: zone.prep.zone,
    records: runs.map(({ id }) => id),
    formula: sumOf(names),
    terms: runs.map((run, i) => measured(names[i] ?? run.name, run.metres, 'm', run.id)),
  });
  return [plainUse(line)];
}

/**
 * Cup wheels along lines that are ground flush, by the metre: trimmed fills and steel angle, as the hours of the zone
 * have them.
 */
export function cupsAlongLines(site: Site, zone: ZoneWork, hours: readonly Line[]): Use[] {
  const own = hours.filter(({ code }) => TRIMMED.includes(code));
  if (own.length === 0) return [];
  const terms = own.map((line) => {
    const metres = line.working.terms.reduce((sum, { unit, value }) => sum + (unit === 'm' ? value.likely : 0), 0);
    return measured(METRES_OF[line.code] ?? line.code, metres, 'm', line.key);
  });
  // Steel is ground as often as the edge is.
  const times = own.map(({ working }) => working.terms.find(({ name }) => name === 'edge passes'));
  const line = makeLine({
    code: 'cupWear',
    of: 'lines',
    unit: 'wheels',
    trade: 'material',
    zone: zone.prep.zone,
    records: zone.prep.record ? [zone.prep.record.id] : [],
    formula: divide(
      add(...terms.map(({ name }, i) => (times[i] ? multiply(term(name), term(times[i].name)) : term(name)))),
      term('life'),
    ),
    terms: [
      ...terms,
      ...times.filter((each) => each !== undefined),
      rateTerm('life', site.book.rate('consumables/cup_edge')),
    ],
  });
  const edge = zone.prep.passes.findLast((pass) => methodOf(pass.edgeMethod ?? '')?.group === 'handGrind');
  return [{ line, kind: kindOf('hand_grinder', edge?.edgeAbrasive ?? null), machine: null }];
}

const METRES_OF: Readonly<Record<string, string>> = {
  'hours.crackTrim': 'cracks ground flush',
  'hours.jointTrim': 'joints trimmed flush',
  'hours.steelAngle': 'steel angle',
};
const TRIMMED: readonly string[] = Object.keys(METRES_OF);

/** Masking film with its tape, by the metre of wall and opening that a zone asks to be masked. */
export function maskFilm(site: Site, { prep }: ZoneWork): Use[] {
  const masked = site.quantities.get(`masked|${prep.zone}`);
  if (!masked || masked.quantity.high <= 0) return [];
  const base = { code: 'maskFilm', unit: 'm', trade: 'material', zone: prep.zone, records: masked.records } as const;
  return [plainUse(makeLine({ ...base, formula: term('masked'), terms: [lineTerm('masked', masked)] }))];
}
