import type { PassDraft } from './recipeEdits.ts';
import { recipeArgs } from './recipeEdits.ts';
import { machineOfChoice } from './machineChoices.ts';
import type { CascadeArgs } from '../../edit/cascade.ts';
import type { Json, RecordId } from '../../model/cell.ts';
import type { Doc, Held } from '../../model/doc.ts';
import type { NewId } from '../../model/id.ts';
import { defaultMachine } from '../../takeoff/fleet.ts';

/** The recipe as the editor shows it: what a change writes where the zone has none of its own yet. */
export interface RecipeNow {
  readonly zone: Held<'zone'>;
  readonly drafts: readonly PassDraft[];
  readonly name: string;
}

/** A change of a machine that follows, together with the recipe where that is not the zone's own yet. */
export function cascadeArgs(doc: Doc, machine: RecordId, { zone, drafts, name }: RecipeNow, newId: NewId): CascadeArgs {
  const plan = recipeArgs(doc, zone, drafts, name, newId);
  return { recipe: plan.recipe, machine, ...(plan.recipe === zone.recipe ? {} : { plan }) };
}

/** A machine of the list, or one of the book that comes onto the list with this. */
export function addFollowerArgs(doc: Doc, choice: string, recipe: RecipeNow, newId: NewId): CascadeArgs {
  const { method, machine } = machineOfChoice(doc, choice);
  if (machine) return cascadeArgs(doc, machine, recipe, newId);
  const fields = defaultMachine(method) as { readonly [slot: string]: Json } | null;
  return { ...cascadeArgs(doc, newId('machine'), recipe, newId), ...(fields ? { fields } : {}) };
}
