import { cascadeOf, type PlannedMachine, type PlannedPass } from './prep.ts';
import type { ZoneWork } from './site.ts';

/** What one machine of a zone works, in m2, after those before it. */
export interface WorkedField {
  readonly machine: PlannedMachine | null;
  readonly areaM2: number;
  /** Key of the line that says this area. */
  readonly from: string;
  /** False for the machine of the first pass. */
  readonly follows: boolean;
}

/**
 * The machine field of a zone by machine, in the order they work. One machine has the whole field, and so has the first
 * of several while the engine does not tell them apart. Those that follow are here even if nothing is left for them.
 */
export function workedFields({ measure, prep }: ZoneWork): readonly WorkedField[] {
  const zone = prep.zone;
  if (prep.followers.length === 0)
    return [{ machine: prep.machine, areaM2: measure.fieldM2, from: `field|${zone}`, follows: false }];
  return cascadeOf(prep).map((machine, i) => ({
    machine,
    areaM2: measure.fields ? fieldOf(measure.fields, machine.id) : i === 0 ? measure.fieldM2 : 0,
    from: `fieldOf|${zone}|${machine.id}`,
    follows: i > 0,
  }));
}

function fieldOf(fields: NonNullable<ZoneWork['measure']['fields']>, machine: string): number {
  return fields.filter((field) => field.machine === machine).reduce((sum, field) => sum + field.areaM2, 0);
}

/** The method by which a machine works a pass: the pass's own, or that of the machine that follows. */
export function methodIn(pass: PlannedPass, { machine, follows }: WorkedField): string {
  return follows ? (machine?.method ?? pass.method) : pass.method;
}

/** The machine that works a pass there: a rate may be its own. Stand-ins of the book have no record, and so none. */
export function machineIn(pass: PlannedPass, { machine, follows }: WorkedField): string | null {
  return (follows ? machine : pass.machine)?.id ?? null;
}

/** What tells lines of a pass apart: the pass, and behind it the machine that follows. */
export function passKey(pass: PlannedPass, index: number, { machine, follows }: WorkedField): string {
  const own = pass.record ?? `pass-${index + 1}`;
  return follows && machine ? `${own}|${machine.id}` : own;
}
