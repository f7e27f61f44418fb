import { onFloor, recordsOf } from '../model/doc.ts';
import { formRing } from '../geometry/formRing.ts';
import { ringArea } from '../geometry/ring.ts';
import type { Obstruction } from '../model/records/obstruction.ts';
import { add, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { ZonePrep } from './prep.ts';
import { requiredCsp } from './profile.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, measured } from './terms.ts';
import { testCount } from './testCount.ts';
import { workedFields } from './workedFields.ts';

type Test = 'csp' | 'rh' | 'pull';

/** Tests that we make in a zone. Nobody asked: the profile is compared where one is asked for. */
export function testsOf({ prep }: { readonly prep: Pick<ZonePrep, 'record'> }): readonly Test[] {
  const asked = prep.record?.tests;
  if (asked) return asked;
  return requiredCsp(prep.record) ? ['csp'] : [];
}

/** Goods to move, walls to mask, the mock-up, and tests by number: what is done before and after the floor itself. */
export function besidesLines(site: Site): Line[] {
  return [...site.zones.flatMap((zone) => zoneBesides(site, zone)), ...probeLine(site)];
}

function zoneBesides(site: Site, zone: ZoneWork): Line[] {
  return [goodsLine(site, zone), maskLine(zone), mockUpLine(zone), profileTests(zone), pullTests(site, zone)].filter(
    (line): line is Line => line !== null,
  );
}

function recordsOfZone({ prep }: ZoneWork): Line['records'] {
  return prep.record ? [prep.record.id] : [];
}

/** Floor under goods that we move: what is drawn as cleared before and stands in the zone, and what is typed. */
function goodsLine(site: Site, zone: ZoneWork): Line | null {
  const { prep, held, measure } = zone;
  if (prep.record?.goodsBy !== 'us') return null;
  const drawn = onFloor(site.doc, 'obstruction', site.floor).filter(
    (item) => item.under === 'clearedBefore' && measure.solids.includes(item.id),
  );
  const names = uniqueNames(drawn.map(({ tag }) => tag));
  const terms = [
    ...drawn.map((item, i) => measured(names[i] ?? item.tag, planAreaM2(item), 'm2', item.id)),
    ...(prep.record.goodsM2 ? [chosen('other light goods', prep.record.goodsM2, 'm2', prep.record.id)] : []),
  ];
  if (terms.length === 0) return null;
  return makeLine({
    code: 'goods',
    trade: 'floor',
    unit: 'm2',
    zone: prep.zone,
    held,
    records: [...recordsOfZone(zone), ...drawn.map(({ id }) => id)],
    formula: sumOf(terms.map(({ name }) => name)),
    terms,
  });
}

function planAreaM2({ shape }: Pick<Obstruction, 'shape'>): number {
  return ringArea(formRing(shape)) / 1e6;
}

/** Metres of wall and opening that are masked. */
function maskLine(zone: ZoneWork): Line | null {
  const { prep, held, measure } = zone;
  if (prep.record?.maskWalls !== true) return null;
  const metres = (kind: 'wall' | 'stop'): number =>
    measure.faceLines.reduce((sum, line) => sum + (line.kind === kind ? lengthM(line.path) : 0), 0);
  const terms = [
    measured('walls', metres('wall'), 'm', prep.record.id),
    measured('openings', metres('stop'), 'm', prep.record.id),
  ];
  return makeLine({
    code: 'masked',
    trade: 'edge',
    unit: 'm',
    zone: prep.zone,
    held,
    records: recordsOfZone(zone),
    formula: sumOf(['walls', 'openings']),
    terms,
  });
}

function lengthM(path: readonly (readonly [number, number])[]): number {
  return path
    .slice(1)
    .reduce(
      (sum, at, i) => sum + Math.hypot(at[0] - (path[i]?.[0] ?? at[0]), at[1] - (path[i]?.[1] ?? at[1])) / 1000,
      0,
    );
}

function mockUpLine(zone: ZoneWork): Line | null {
  const { prep, held } = zone;
  if (!prep.record?.mockUpM2) return null;
  return makeLine({
    code: 'mockUp',
    trade: 'floor',
    unit: 'm2',
    zone: prep.zone,
    held,
    records: recordsOfZone(zone),
    formula: term('mock-up'),
    terms: [chosen('mock-up', prep.record.mockUpM2, 'm2', prep.record.id)],
  });
}

/** Comparisons of the profile: by area, one more for each run of edge, and for each change from machine to machine. */
function profileTests(zone: ZoneWork): Line | null {
  if (!testsOf(zone).includes('csp')) return null;
  const { prep, held, measure } = zone;
  const count = testCount('csp', measure.netM2, 'metric', `netFloor|${prep.zone}`);
  const changes = Math.max(0, workedFields(zone).filter(({ areaM2 }) => areaM2 > 0).length - 1);
  return makeLine({
    code: 'tests.csp',
    trade: 'spot',
    unit: 'number',
    zone: prep.zone,
    held,
    records: recordsOfZone(zone),
    formula: add(count.formula, term('runs of edge'), term('changes of machine')),
    terms: [
      ...count.terms,
      measured('runs of edge', measure.strip.length, 'number', prep.zone),
      measured('changes of machine', changes, 'number', prep.zone),
    ],
  });
}

/** Pull-off tests of a zone. They are cored round, so they wait for what lies in the slab. */
function pullTests(site: Site, zone: ZoneWork): Line | null {
  if (!testsOf(zone).includes('pull')) return null;
  const { prep, held, measure } = zone;
  const count = testCount('pull', measure.netM2, 'metric', `netFloor|${prep.zone}`);
  return makeLine({
    code: 'tests.pull',
    trade: 'spot',
    unit: 'number',
    zone: prep.zone,
    held: held ?? (site.noCutting ? 'inSlab' : null),
    records: recordsOfZone(zone),
    ...count,
  });
}

/** RH probes are counted over all floor that asks for them, however it is zoned: the concrete is one. */
function probeLine(site: Site): Line[] {
  const asked = site.zones.filter((zone) => zone.held === null && testsOf(zone).includes('rh'));
  if (asked.length === 0) return [];
  const areaM2 = asked.reduce((sum, { measure }) => sum + measure.netM2, 0);
  const units = recordsOf(site.doc, 'job')[0]?.units ?? 'metric';
  return [
    makeLine({
      code: 'tests.rh',
      trade: 'spot',
      unit: 'number',
      zone: null,
      held: site.noCutting ? 'inSlab' : null,
      records: asked.flatMap(recordsOfZone),
      ...testCount('f2170', areaM2, units),
    }),
  ];
}
