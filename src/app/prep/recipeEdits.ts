import type { RecordId } from '../../model/cell.ts';
import { onFloor, type Doc, type Held } from '../../model/doc.ts';
import type { NewId } from '../../model/id.ts';
import type { PassArgs, SetRecipeArgs } from '../../edit/setRecipe.ts';
import type { PlannedPass, ZonePrep } from '../../takeoff/prep.ts';

/** A pass as the editor holds it: what is planned now, whether recorded or standing in. */
export type PassDraft = Omit<PlannedPass, 'machine'> & { readonly machine: RecordId | null };

/** The passes of a zone to start an edit from. A stand-in machine has no record: its method names it. */
export function draftsOf(prep: ZonePrep): readonly PassDraft[] {
  return prep.passes.map((pass) => ({ ...pass, machine: recordIdOf(pass.machine?.id) }));
}

export type EdgeWork = Pick<PassDraft, 'edgeMethod' | 'edgeAbrasive' | 'edgeTimes'>;

export const NO_EDGE: EdgeWork = { edgeMethod: null, edgeAbrasive: null, edgeTimes: 0 };

/** Edge work of a recipe: that of its last pass that has any. */
export function edgeOf(drafts: readonly PassDraft[]): EdgeWork {
  const { edgeMethod, edgeAbrasive, edgeTimes } = drafts.findLast((draft) => draft.edgeMethod !== null) ?? NO_EDGE;
  return { edgeMethod, edgeAbrasive, edgeTimes };
}

/** The edge is worked after the last pass, whichever that is after passes came or went. */
export function withEdge(drafts: readonly PassDraft[], edge: EdgeWork): readonly PassDraft[] {
  return drafts.map((draft, at) => ({ ...draft, ...(at === drafts.length - 1 ? edge : NO_EDGE) }));
}

function recordIdOf(id: string | undefined): RecordId | null {
  return id?.startsWith('machine:') ? (id as RecordId) : null;
}

/**
 * Arguments that give a zone these passes. A recipe that another zone uses too is left to it: this zone gets one of
 * its own, so that an edit never reaches a zone that is not on the screen.
 */
export function recipeArgs(
  doc: Doc,
  zone: Held<'zone'>,
  drafts: readonly PassDraft[],
  name: string,
  newId: NewId,
): SetRecipeArgs {
  const shared = onFloor(doc, 'zone', zone.floor).some((other) => other.id !== zone.id && other.recipe === zone.recipe);
  const own = zone.recipe && !shared ? zone.recipe : null;
  return {
    zone: zone.id,
    recipe: own ?? newId('recipe'),
    name,
    passes: drafts.map((draft): PassArgs => ({
      id: own && draft.record ? draft.record : newId('pass'),
      method: draft.method,
      machine: draft.machine,
      times: draft.times,
      edgeMethod: draft.edgeMethod,
      edgeTimes: draft.edgeMethod === null ? 0 : Math.max(1, draft.edgeTimes),
      ...(draft.abrasive ? { abrasive: draft.abrasive } : {}),
      ...(draft.edgeAbrasive && draft.edgeMethod !== null ? { edgeAbrasive: draft.edgeAbrasive } : {}),
    })),
  };
}
