import { zoneKey } from './zoneNames.ts';
import type { Doc, Held } from '../../model/doc.ts';
import { edgeMachine, prepOfFloor, type PlannedMachine, type ZonePrep } from '../../takeoff/prep.ts';
import { methodOf } from '../../takeoff/rates/methods.ts';
import type { MethodRow } from '../../takeoff/rates/methodRow.ts';
import { passageMm } from '../../takeoff/planShape.ts';

/** What a zone gets, read once for the docks that speak of it. */
export interface ZoneRecipe {
  readonly prep: ZonePrep;
  readonly machine: PlannedMachine | null;
  /** Hand tool of the edge: that of the last pass that has one. */
  readonly edgeTool: MethodRow | null;
  /** Least clear width its last, smallest machine passes, mm; null without a machine. */
  readonly passageMm: number | null;
}

export function zoneRecipe(doc: Doc, zone: Held<'zone'>): ZoneRecipe | null {
  const prep = prepOfFloor(doc, zone.floor).find((each) => each.zone === zoneKey(zone));
  if (!prep) return null;
  const last = edgeMachine(prep);
  const edge = prep.passes.findLast((pass) => pass.edgeMethod !== null)?.edgeMethod ?? null;
  return {
    prep,
    machine: prep.machine,
    edgeTool: edge === null ? null : methodOf(edge),
    passageMm: last ? passageMm(last) : null,
  };
}
