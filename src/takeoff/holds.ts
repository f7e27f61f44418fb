import type { ZoneMeasure } from '../geometry/floorShape.ts';
import type { RecordId } from '../model/cell.ts';
import { onFloor, recordsOf, type Doc, type Held } from '../model/doc.ts';
import type { Clearance } from '../model/records/base.ts';
import type { Zone } from '../model/records/zone.ts';
import { isChased, isSawnOpen, isSawnOut, isWidened } from './crackClass.ts';
import type { Hold, HoldKind } from './line.ts';
import { lyingIn } from './lyingIn.ts';
import type { ZoneId } from './prep.ts';
import { answersOf, isNotKnown, jobOf, type Answers } from './questions.ts';
import { findingRowOf } from './rates/findings.ts';
import { rateBook } from './rates/rateBook.ts';

/*
 * Three holds, each until a result, a date and a name are recorded (29 CFR 1926.1101 (g)(8)(i)(I) for flooring and
 * mastic of 1980 and earlier; 29 CFR 1926.62 for paint of any year; the third is common practice, no source).
 *
 *   asbestos, lead   hold a whole zone: the edge of a drawn patch is a guess
 *   inSlab           holds every cut, wherever it is
 */

/** Less of a finding than this, m2, is a touch along a zone's edge and not in the zone. */
export const TOUCH_M2 = 1e-4;

/** Holds that stand on a floor, with the records that call for them. */
export function holdsOf(doc: Doc, floor: string, zones: readonly ZoneMeasure[]): Hold[] {
  const answers = answersOf(doc);
  const findings = onFloor(doc, 'finding', floor);
  const whole = buildingHold(doc, answers);
  const onZones = zones.flatMap((zone) => {
    const inZone = lyingIn(findings, zone.findingM2).flatMap(({ record, amount }) =>
      amount > TOUCH_M2 ? [record] : [],
    );
    const asbestos = zoneHold(
      'asbestos',
      zone,
      inZone.filter((finding) => suspectsAsbestos(finding, answers)),
    );
    const lead = zoneHold('lead', zone, inZone.filter(suspectsLead));
    const building: Hold[] =
      whole && asbestos.length === 0
        ? [{ kind: 'asbestos', zone: zone.id as ZoneId, records: whole, reason: 'building' }]
        : [];
    return [...asbestos, ...building, ...lead];
  });
  return [...onZones, ...cuttingHold(doc, floor, answers)];
}

function zoneHold(kind: HoldKind, zone: ZoneMeasure, findings: readonly Held<'finding'>[]): Hold[] {
  if (findings.length === 0) return [];
  return [{ kind, zone: zone.id as ZoneId, records: findings.map(({ id }) => id), reason: 'finding' }];
}

/** A result of `found` does not clear: only `clear` does. */
function isClear(result: Clearance | undefined): boolean {
  return result?.result === 'clear';
}

function suspectsAsbestos(finding: Held<'finding'>, answers: Answers): boolean {
  if (isClear(finding.asbestosTest)) return false;
  if (finding.asbestosTest?.result === 'found') return true;
  const row = findingRowOf(finding.kind);
  if (row?.asbestos === 'always') return true;
  return row?.asbestos === 'old' && answers.builtBefore1981 !== 'no';
}

function suspectsLead(finding: Held<'finding'>): boolean {
  if (isClear(finding.leadTest)) return false;
  return finding.leadTest?.result === 'found' || findingRowOf(finding.kind)?.lead === true;
}

/**
 * The building itself calls for the hold: it is, or may be, of 1980 or earlier, there is or may be a covering, and
 * none is drawn, so that nobody can say which zone is meant. A job that has not been asked about its age yet is not
 * held by this; it is "not an offer" for as long.
 */
function buildingHold(doc: Doc, answers: Answers): readonly RecordId[] | null {
  const old = answers.builtBefore1981 === 'yes' || answers.builtBefore1981 === 'unknown';
  const covered = answers.coatingOrTile === 'yes' || isNotKnown(answers.coatingOrTile);
  if (!old || !covered || hasCoveringDrawn(doc)) return null;
  return [];
}

/** A covering or coating is drawn somewhere in the job: then its own zone is held, and not every zone. */
export function hasCoveringDrawn(doc: Doc): boolean {
  return recordsOf(doc, 'finding').some(({ kind }) => {
    const row = findingRowOf(kind);
    return row !== null && (row.asbestos !== 'no' || row.lead);
  });
}

/** Whether anything in the slab forbids to cut: it is there or may be, and has not been located. */
export function cuttingForbidden(doc: Doc): boolean {
  if (answersOf(doc).inSlab === 'no') return false;
  return !isClear(jobOf(doc)?.inSlabLocated);
}

function cuttingHold(doc: Doc, floor: string, answers: Answers): Hold[] {
  if (answers.inSlab === 'no' || !cuttingForbidden(doc)) return [];
  const leastMm = rateBook(doc).rate('consumables/reservoir').likely;
  const cut = [
    ...onFloor(doc, 'crack', floor).filter((crack) => isChased(crack) || isSawnOpen(crack, leastMm)),
    ...onFloor(doc, 'finding', floor).filter((finding) => isCutOut(finding.kind)),
    ...onFloor(doc, 'joint', floor).filter((joint) => isSawnOut(joint) || isWidened(joint, leastMm)),
    ...onFloor(doc, 'zone', floor).filter(asksToCut),
  ].map(({ id }) => id);
  return cut.length === 0 ? [] : [{ kind: 'inSlab', zone: null, records: cut, reason: 'cutting' }];
}

/** A groove, the hole of a probe and the core of a dolly go into the slab. */
function asksToCut({ groove, tests }: Pick<Zone, 'groove' | 'tests'>): boolean {
  return groove === true || ['rh', 'pull'].some((test) => tests?.some((each) => each === test));
}

/** Findings that are sawn or chipped out of the slab. */
export function isCutOut(kind: string): boolean {
  return findingRowOf(kind)?.method === 'breaker_hand';
}
