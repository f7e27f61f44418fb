import type { Cell, Change, CommandCall, Json } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import { RefusedChange, type PlanStore } from '../model/store.ts';
import type { Command, Refusal } from './command.ts';
import { commands } from './commands.ts';
import { faultOfChange } from './soundness.ts';

/** A call of a command with its arguments checked by the compiler. */
export function callOf<A extends Json>(command: Command<A>, args: A): CommandCall {
  return { name: command.name, args };
}

/** Why a call would be refused, as a code for a sentence; null when it may run. */
export function refusalOf(doc: Doc, call: CommandCall): string | null {
  const planned = plan(doc, call);
  return 'refused' in planned ? planned.refused : null;
}

/** What a call would write, for previews: nothing when it would be refused, and why. */
export function previewOf(
  doc: Doc,
  call: CommandCall,
): { readonly cells: readonly Cell[]; readonly refused: string | null } {
  const planned = plan(doc, call);
  return 'refused' in planned ? { cells: [], refused: planned.refused } : { cells: planned.cells, refused: null };
}

/** Runs a call: one change, one undo step; or a refusal that has changed nothing. */
export function runCommand(store: PlanStore, call: CommandCall): Change | Refusal {
  const planned = plan(store.getState(), call);
  if ('refused' in planned) return planned;
  try {
    return store.commit(call.name, planned.cells);
  } catch (fault) {
    // The store has the last word on what can be read: what it refuses is a refusal like any other.
    if (fault instanceof RefusedChange) return { refused: 'badValue' };
    throw fault;
  }
}

function plan(doc: Doc, call: CommandCall): { readonly cells: readonly Cell[] } | Refusal {
  const command = Object.hasOwn(commands, call.name) ? commands[call.name] : undefined;
  if (!command) return { refused: 'unknownCommand' };
  const refused = command.refuse(doc, call.args);
  if (refused) return { refused };
  const cells = command.write(doc, call.args).filter((cell) => changes(doc, cell));
  if (cells.length === 0) return { refused: 'noChange' };
  const fault = faultOfChange(doc, cells, command.passesLocks === true);
  return fault ? { refused: fault } : { cells };
}

function changes(doc: Doc, [id, slot, value]: Cell): boolean {
  const now = doc.get(id)?.[slot];
  return now !== value && JSON.stringify(now) !== JSON.stringify(value);
}
