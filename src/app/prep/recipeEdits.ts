import type { RecordId } from '../../model/cell.ts';
import { onFloor, recordOf, type Doc, type Held } from '../../model/doc.ts';
import type { NewId } from '../../model/id.ts';
import type { PassArgs, SetRecipeArgs } from '../../edit/setRecipe.ts';
import { abrasivesFor } from '../../takeoff/profile.ts';
import type { PlannedPass, ZonePrep } from '../../takeoff/prep.ts';

/** A pass as the editor holds it: what is planned now, whether recorded or standing in. */
export type PassDraft = Omit<PlannedPass, 'machine'> & { readonly machine: RecordId | null };

/** The passes of a zone to start an edit from. A stand-in machine has no record: its method names it. */
export function draftsOf(prep: ZonePrep): readonly PassDraft[] {
  return prep.passes.map((pass) => ({ ...pass, machine: recordIdOf(pass.machine?.id) }));
}

type EdgeWork = Pick<PassDraft, 'edgeMethod' | 'edgeAbrasive' | 'edgeTimes'>;

const NO_EDGE: EdgeWork = { edgeMethod: null, edgeAbrasive: null, edgeTimes: 0 };

function edgeOf({ edgeMethod, edgeAbrasive, edgeTimes }: PassDraft): EdgeWork {
  return { edgeMethod, edgeAbrasive, edgeTimes };
}

/** Passes of the first pass's machine run on another one; abrasives that do not fit it go. */
export function onMachine(
  drafts: readonly PassDraft[],
  method: string,
  machine: RecordId | null,
): readonly PassDraft[] {
  const [first] = drafts;
  const fits = (abrasive: string | null): boolean => abrasivesFor(method).some((row) => row.id === abrasive);
  return drafts.map((draft) => {
    if (draft.method !== first?.method || draft.machine !== first.machine) return draft;
    return { ...draft, method, machine, abrasive: fits(draft.abrasive) ? draft.abrasive : null };
  });
}

/** One more pass, once over, like the last. Where only that one had edge work, the edge is worked after the new one. */
export function withOneMore(drafts: readonly PassDraft[]): readonly PassDraft[] {
  const last = drafts.at(-1);
  if (!last) return drafts;
  const before = drafts.slice(0, -1);
  const moves = before.every((draft) => draft.edgeMethod === null);
  const added = { ...last, record: null, times: 1, ...(moves ? {} : NO_EDGE) };
  return [...before, moves ? { ...last, ...NO_EDGE } : last, added];
}

/** One pass less. Edge work that no other pass has goes over to the last one that stays. */
export function without(drafts: readonly PassDraft[], index: number): readonly PassDraft[] {
  const gone = drafts[index];
  const kept = drafts.filter((_, at) => at !== index);
  const last = kept.at(-1);
  if (!gone || !last || kept.some((draft) => draft.edgeMethod !== null)) return kept;
  return [...kept.slice(0, -1), { ...last, ...edgeOf(gone) }];
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
  const followedBy = recordOf(doc, 'recipe', zone.recipe)?.followedBy ?? [];
  // The machine that goes first from now on does not follow itself.
  const kept = followedBy.filter((id) => id !== drafts[0]?.machine);
  const isAsWritten = own !== null && kept.length === followedBy.length;
  return {
    zone: zone.id,
    recipe: own ?? newId('recipe'),
    name,
    ...(isAsWritten ? {} : { followedBy: kept }),
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
