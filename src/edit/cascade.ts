import type { Cell, Json, RecordId } from '../model/cell.ts';
import { applyCells, recordOf, recordsOf, type Doc } from '../model/doc.ts';
import { newRecordCells, refuseNewId } from './newItem.ts';
import { followedByCell, setRecipe, type SetRecipeArgs } from './setRecipe.ts';
import { cascadeFault } from './cascadeFault.ts';

/** A change of the machines that follow the first one of a recipe. */
export type CascadeArgs = {
  readonly recipe: RecordId;
  readonly machine: RecordId;
  /** The recipe as a whole, where the zone has none of its own yet: written together with the change. */
  readonly plan?: SetRecipeArgs;
  /** Every slot of the machine, where it is not on the list of machines yet. */
  readonly fields?: { readonly [slot: string]: Json };
};

/** Machines that follow in a recipe now, without those that are no longer there. */
export function followersOf(doc: Doc, { recipe, plan }: CascadeArgs): readonly RecordId[] {
  const listed = plan?.followedBy ?? recordOf(doc, 'recipe', recipe)?.followedBy ?? [];
  return listed.filter((id) => recordOf(doc, 'machine', id) !== null);
}

/** Why the machines may not follow each other like this; null when they may. */
export function refuseCascade(doc: Doc, args: CascadeArgs, next: readonly RecordId[]): string | null {
  const { recipe, machine, plan, fields } = args;
  const newMachine = fields ? refuseNewId(doc, machine, 'machine') : null;
  if (newMachine) return newMachine;
  const known = withMachine(doc, args);
  if (plan) return plan.recipe === recipe ? setRecipe.refuse(known, { ...plan, followedBy: next }) : 'unknownRecord';
  if (!recordOf(doc, 'recipe', recipe)) return 'unknownRecord';
  const first = recordsOf(doc, 'pass').find((pass) => pass.recipe === recipe);
  return cascadeFault(known, first?.machine ?? null, next);
}

export function cascadeCells(doc: Doc, args: CascadeArgs, next: readonly RecordId[]): readonly Cell[] {
  const { recipe, plan } = args;
  const own: readonly Cell[] = plan
    ? setRecipe.write(doc, { ...plan, followedBy: next })
    : [followedByCell(recipe, next)];
  return [...machineCells(doc, args), ...own];
}

/** The plan with the machine that is about to be added. */
export function withMachine(doc: Doc, args: CascadeArgs): Doc {
  return applyCells(doc, machineCells(doc, args));
}

function machineCells(doc: Doc, { machine, fields }: CascadeArgs): readonly Cell[] {
  return fields ? newRecordCells(doc, machine, fields) : [];
}
