import type { RecordId } from '../model/cell.ts';
import { recordOf, recordsOf, type Doc, type Held } from '../model/doc.ts';
import type { Line } from './line.ts';
import type { ZonePrep } from './prep.ts';

/*
 * A phase is a visit of its own: a night, a weekend, an aisle. It has its own set-up, moves and tear-down, and where it
 * meets floor of another phase there is a lap line. Zones without a phase are worked together, before the phases.
 */

/** Phases of a floor in the order in which they are worked, and those that belong to no floor. */
export function phasesOf(doc: Doc, floor: string): readonly Held<'phase'>[] {
  return recordsOf(doc, 'phase').filter((phase) => !phase.floor || phase.floor === floor);
}

/** The phase that a zone is worked in; null: none, or one that is not there any more. */
export function phaseOf(doc: Doc, floor: string, { record }: Pick<ZonePrep, 'record'>): RecordId | null {
  const phase = recordOf(doc, 'phase', record?.phase ?? null);
  return phase && (!phase.floor || phase.floor === floor) ? phase.id : null;
}

/** What is worked on one visit. */
export interface Visit<T> {
  /** null: what is in no phase. */
  readonly phase: RecordId | null;
  readonly items: readonly T[];
}

/** Items by the visit that they belong to, in the order of the work; visits with nothing are left out. */
export function visitsOf<T>(
  doc: Doc,
  floor: string,
  items: readonly T[],
  phaseOfItem: (item: T) => RecordId | null,
): Visit<T>[] {
  const order = [null, ...phasesOf(doc, floor).map(({ id }) => id)];
  return order
    .map((phase) => ({ phase, items: items.filter((item) => phaseOfItem(item) === phase) }))
    .filter((visit) => visit.items.length > 0);
}

/** Place of a phase in the order of the work: smaller is worked earlier. */
export function visitPlace(doc: Doc, floor: string, phase: RecordId | null): number {
  return phase === null ? -1 : phasesOf(doc, floor).findIndex(({ id }) => id === phase);
}

/** Lines of zones with the phase of their zone; lines of the whole floor keep theirs. */
export function inPhases(
  doc: Doc,
  floor: string,
  preps: readonly Pick<ZonePrep, 'zone' | 'record'>[],
  lines: readonly Line[],
): readonly Line[] {
  const phases = new Map<Line['zone'], RecordId | null>(preps.map((prep) => [prep.zone, phaseOf(doc, floor, prep)]));
  if ([...phases.values()].every((phase) => phase === null)) return lines;
  return lines.map((line) => {
    const phase = line.zone === null ? line.phase : (phases.get(line.zone) ?? null);
    return phase === line.phase ? line : { ...line, phase };
  });
}
