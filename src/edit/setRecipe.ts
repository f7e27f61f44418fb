import type { Cell, RecordId } from '../model/cell.ts';
import { recordOf, recordsOf } from '../model/doc.ts';
import { keysAfter } from '../model/order.ts';
import { cascadeFault } from './cascadeFault.ts';
import type { Command } from './command.ts';

export type PassArgs = {
  readonly id: RecordId;
  readonly method: string;
  readonly machine: RecordId | null;
  readonly abrasive?: string;
  /** Times over with this machine and abrasive. */
  readonly times: number;
  readonly edgeMethod: string | null;
  readonly edgeAbrasive?: string;
  readonly edgeTimes: number;
};

export type SetRecipeArgs = {
  readonly zone: RecordId;
  /** The zone's own recipe, or a new id. Other zones with the same recipe follow. */
  readonly recipe: RecordId;
  readonly name?: string;
  /** All of them, in the order they are done; the recipe's other passes go. */
  readonly passes: readonly PassArgs[];
  /** Machines that follow that of the first pass; absent: as before. */
  readonly followedBy?: readonly RecordId[];
};

export const setRecipe: Command<SetRecipeArgs> = {
  name: 'setRecipe',
  refuse(doc, { zone, recipe, passes, followedBy }) {
    if (!recordOf(doc, 'zone', zone)) return 'unknownRecord';
    if (doc.get(recipe)?.['gone'] === true) return 'unknownRecord';
    const machines = passes.every((pass) => pass.machine === null || recordOf(doc, 'machine', pass.machine));
    if (!machines) return 'unknownMachine';
    const own = passes.every((pass) => !doc.has(pass.id) || doc.get(pass.id)?.['recipe'] === recipe);
    if (!own) return 'idTaken';
    if (!passes.every((pass) => pass.times >= 1 && pass.edgeTimes >= 0)) return 'passTimes';
    const followers = followedBy ?? recordOf(doc, 'recipe', recipe)?.followedBy ?? [];
    return cascadeFault(doc, passes[0]?.machine ?? null, followers);
  },
  write(doc, { zone, recipe, name, passes, followedBy }) {
    const orders = keysAfter(null, passes.length);
    const kept = new Set(passes.map((pass) => pass.id));
    const was = recordOf(doc, 'recipe', recipe);
    return [
      [recipe, 'name', name ?? was?.name ?? ''],
      ...(followedBy ? [followedByCell(recipe, followedBy)] : []),
      ...passes.flatMap((pass, index) => passCells(pass, recipe, orders[index] ?? '')),
      ...recordsOf(doc, 'pass')
        .filter((pass) => pass.recipe === recipe && !kept.has(pass.id))
        .map((pass): Cell => [pass.id, 'gone', true]),
      [zone, 'recipe', recipe],
    ];
  },
};

/** An empty list is not written. */
export function followedByCell(recipe: RecordId, machines: readonly RecordId[]): Cell {
  return [recipe, 'followedBy', machines.length === 0 ? undefined : machines];
}

function passCells({ id, ...pass }: PassArgs, recipe: RecordId, order: string): readonly Cell[] {
  const slots = { recipe, order, gone: undefined, abrasive: undefined, edgeAbrasive: undefined, ...pass };
  return Object.entries(slots).map(([slot, value]): Cell => [id, slot, value]);
}
