import type { FloorShape } from '../../src/geometry/floorShape.ts';
import type { Numbers, ZoneNumbers } from './engine.ts';
import { recordsOf } from './plan.ts';
import {
  FACE_M,
  FACE_SHARE,
  GROSS_SHARE,
  LENGTH_SHARE,
  LINE_M,
  NOTHING_M,
  NOTHING_M2,
  SUM_SHARE,
} from './tolerances.ts';

/** What must hold of any one answer. Each law answers what is wrong, in words, or null. */
type Law = (measure: Numbers, shape: FloorShape) => string | null;

/** The parts of a floor or of a zone, m2, each summed on its own. */
export interface Parts {
  readonly netM2: number;
  readonly fieldM2: number;
  readonly stripM2: number;
  readonly tightM2: number;
}

/** The partition law: the parts are the net floor, within `slackM2`, and none is negative. */
export function partsFault({ netM2, fieldM2, stripM2, tightM2 }: Parts, slackM2: number): string | null {
  const off = fieldM2 + stripM2 + tightM2 - netM2;
  if (!(Math.abs(off) <= slackM2))
    return `field ${fieldM2} + strip ${stripM2} + tight ${tightM2} is ${off} off net ${netM2}`;
  const least = Math.min(netM2, fieldM2, stripM2, tightM2);
  return least >= 0 ? null : `a part is negative: ${fieldM2} ${stripM2} ${tightM2} of ${netM2}`;
}

export function slackOf(measure: Numbers, share: number): number {
  return share * measure.netM2 + NOTHING_M2;
}

/** The floor as one: every part summed over its zones. */
export function partsOfFloor(measure: Numbers): Parts {
  return {
    netM2: measure.netM2,
    fieldM2: sum(measure.zones, (zone) => zone.fieldM2),
    stripM2: sum(measure.zones, (zone) => zone.stripM2),
    tightM2: sum(measure.zones, (zone) => zone.tightM2),
  };
}

export function sum<T>(list: readonly T[], of: (one: T) => number): number {
  return list.reduce((total, one) => total + of(one), 0);
}

const partition: Law = (measure) => {
  const slackM2 = slackOf(measure, SUM_SHARE);
  for (const zone of measure.zones) {
    const fault = partsFault(zone, slackM2);
    if (fault) return `${zone.id}: ${fault}`;
  }
  return partsFault(partsOfFloor(measure), slackM2);
};

const zonesAndRest: Law = (measure) =>
  apart(
    'zones and rest, net',
    sum(measure.zones, (zone) => zone.netM2),
    measure.netM2,
    slackOf(measure, SUM_SHARE),
  );

const grossLessDeducted: Law = (measure) => {
  const taken = Object.values(measure.deductedM2);
  if (taken.some((area) => area < 0)) return `a deduction is negative: ${taken.join(' ')}`;
  const slackM2 = GROSS_SHARE * measure.grossM2 + NOTHING_M2;
  return apart('gross less deductions, net', measure.grossM2 - sum(taken, (area) => area), measure.netM2, slackM2);
};

const finite: Law = (measure) => {
  const bad = numbersIn(measure).find(([, value]) => !Number.isFinite(value));
  return bad ? `${bad[0]} is ${bad[1]}` : null;
};

const notNegative: Law = (measure) => {
  const bad = measure.zones.flatMap((zone) => numbersIn(zone)).find(([, value]) => value < 0);
  return bad ? `${bad[0]} is ${bad[1]}` : null;
};

/** Every number of an answer with its name, outlines left alone. */
export function numbersIn(measure: Numbers | ZoneNumbers): (readonly [string, number])[] {
  const named: (readonly [string, number])[] = [];
  const walk = (name: string, value: unknown): void => {
    if (typeof value === 'number') named.push([name, value]);
    if (typeof value !== 'object' || value === null) return;
    for (const [key, part] of Object.entries(value)) if (!OUTLINES.has(key)) walk(`${name}.${key}`, part);
  };
  if ('zones' in measure) {
    const { zones, ...floor } = measure;
    walk('floor', floor);
    for (const zone of zones) walk(zone.id, zone);
  } else walk(measure.id, measure);
  return named;
}

/** Made when they are asked for, so a check of numbers does not ask. Their places may lie anywhere. */
const OUTLINES: ReadonlySet<string> = new Set([
  'net',
  'field',
  'strip',
  'tight',
  'region',
  'faceLines',
  'at',
  'faults',
]);

const faultsNameRecords: Law = (measure, shape) => {
  const records = recordsOf(shape);
  const lost = measure.faults.find((fault) => !records.has(fault.record));
  return lost ? `fault ${lost.code} names ${lost.record}, which is no record` : null;
};

const nothingFailed: Law = (measure) => {
  const failed = measure.faults.find((fault) => fault.code === 'clipFailed');
  return failed ? `${failed.record} could not be measured` : null;
};

/** One answer a zone, and one for the rest, in their order. */
const everyZoneAnswered: Law = (measure, shape) => {
  const answered = measure.zones.map((zone) => zone.id);
  const refused = new Set(measure.faults.map((fault) => fault.record));
  const missing = [...shape.zones.map((zone) => zone.id), 'rest'].find(
    (id) => !answered.includes(id) && !refused.has(id),
  );
  return missing ? `zone ${missing} has no answer and no fault` : null;
};

const smallerThanWhole: Law = (measure) => {
  const slackM2 = slackOf(measure, SUM_SHARE);
  for (const zone of measure.zones) {
    if ((zone.cutOffM2 ?? 0) > zone.tightM2 + slackM2)
      return `${zone.id}: cut off ${zone.cutOffM2} of tight ${zone.tightM2}`;
    if ((zone.lapM2 ?? 0) > zone.stripM2 + slackM2) return `${zone.id}: lap ${zone.lapM2} of strip ${zone.stripM2}`;
    const finding = Object.entries(zone.findingM2).find(([, area]) => area > zone.netM2 + slackM2);
    if (finding) return `${zone.id}: finding ${finding.join(' ')} of net ${zone.netM2}`;
    if (zone.machine === null && zone.fieldM2 + zone.stripM2 > 0) return `${zone.id}: no machine, yet machine field`;
  }
  return null;
};

/** What a cascade, findings and lines are split into is the whole again. */
const splitsAddUp: Law = (measure) => {
  const slackM2 = slackOf(measure, SUM_SHARE);
  for (const zone of measure.zones) {
    const fault =
      (zone.fields
        ? apart(
            'fields, field',
            sum(zone.fields, (field) => field.areaM2),
            zone.fieldM2,
            slackM2,
          )
        : null) ??
      findingPartsFault(zone, slackM2) ??
      linePartsFault(zone);
    if (fault) return `${zone.id}: ${fault}`;
  }
  return null;
};

function findingPartsFault(zone: ZoneNumbers, slackM2: number): string | null {
  if (!zone.findingParts) return null;
  for (const [id, areaM2] of Object.entries(zone.findingM2)) {
    const parts = zone.findingParts.filter((part) => part.findings.includes(id));
    const together = sum(parts, (part) => part.fieldM2 + part.stripM2 + part.tightM2);
    const fault = apart(`parts of finding ${id}`, together, areaM2, slackM2);
    if (fault) return fault;
  }
  return null;
}

function linePartsFault(zone: ZoneNumbers): string | null {
  for (const [id, { fieldM, stripM, tightM }] of Object.entries(zone.lineParts ?? {})) {
    const lengthM = zone.lengthM[id] ?? 0;
    const fault = apart(`parts of line ${id}`, fieldM + stripM + tightM, lengthM, SUM_SHARE * lengthM + NOTHING_M);
    if (fault) return fault;
  }
  return null;
}

export function apart(what: string, a: number, b: number, slack: number): string | null {
  return Math.abs(a - b) <= slack ? null : `${what}: ${a} and ${b} differ by ${Math.abs(a - b)}`;
}

const LAWS = {
  finite,
  notNegative,
  faultsNameRecords,
  nothingFailed,
  everyZoneAnswered,
  partition,
  zonesAndRest,
  grossLessDeducted,
  smallerThanWhole,
  splitsAddUp,
} as const satisfies Record<string, Law>;

/** Every law that an answer breaks, with what is wrong. */
export function brokenLaws(measure: Numbers, shape: FloorShape): { law: string; what: string }[] {
  return Object.entries(LAWS).flatMap(([law, rule]) => {
    const what = rule(measure, shape);
    return what ? [{ law, what }] : [];
  });
}

/** Where two answers for the same floor differ, or null; but for the lines of `undecided`. */
export function difference(
  a: Numbers,
  b: Numbers,
  share: number,
  undecided: ReadonlySet<string> = new Set(),
): string | null {
  const decided = (lengths: ByName): ByName =>
    Object.fromEntries(Object.entries(lengths).filter(([id]) => !undecided.has(id)));
  const slackM2 = slackOf(a, share);
  const whole =
    apart('net', a.netM2, b.netM2, slackM2) ?? apart('gross', a.grossM2, b.grossM2, share * a.grossM2 + NOTHING_M2);
  if (whole) return whole;
  for (const zone of a.zones) {
    const other = b.zones.find((one) => one.id === zone.id);
    if (!other) return `zone ${zone.id} is gone`;
    for (const part of ['netM2', 'fieldM2', 'stripM2', 'tightM2', 'cutOffM2'] as const) {
      const fault = apart(`${zone.id} ${part}`, zone[part] ?? 0, other[part] ?? 0, slackM2);
      if (fault) return fault;
    }
    const fault =
      recordDifference(`${zone.id} finding`, zone.findingM2, other.findingM2, slackM2) ??
      lengthDifference(`${zone.id} line`, decided(zone.lengthM), decided(other.lengthM)) ??
      facesDifference(`${zone.id} faces`, { ...zone.faces }, { ...other.faces });
    if (fault) return fault;
  }
  return null;
}

type ByName = Readonly<Record<string, number>>;

function recordDifference(what: string, a: ByName, b: ByName, slack: number): string | null {
  for (const key of Object.keys({ ...a, ...b })) {
    const fault = apart(`${what} ${key}`, a[key] ?? 0, b[key] ?? 0, slack);
    if (fault) return fault;
  }
  return null;
}

function lengthDifference(what: string, a: ByName, b: ByName): string | null {
  const longest = Math.max(0, ...Object.values(a));
  return recordDifference(what, a, b, LENGTH_SHARE * longest + LINE_M);
}

function facesDifference(what: string, a: ByName, b: ByName): string | null {
  const longest = Math.max(0, ...Object.values(a));
  return recordDifference(what, a, b, FACE_SHARE * longest + FACE_M);
}
