import type { RecordId } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import { cascadeCells, followersOf, refuseCascade, type CascadeArgs } from './cascade.ts';
import type { Command } from './command.ts';

/** `before`: the machine that it shall come before; null: last. */
export type MoveFollowerArgs = CascadeArgs & { readonly before: RecordId | null };

/** Machines of one width may change places; a wider one always goes first. */
export const moveFollower: Command<MoveFollowerArgs> = {
  name: 'moveFollower',
  refuse(doc, args) {
    const now = followersOf(doc, args);
    const known = now.includes(args.machine) && (args.before === null || now.includes(args.before));
    return known ? refuseCascade(doc, args, moved(doc, args)) : 'unknownMachine';
  },
  write: (doc, args) => cascadeCells(doc, args, moved(doc, args)),
};

function moved(doc: Doc, args: MoveFollowerArgs): readonly RecordId[] {
  const now = followersOf(doc, args);
  if (args.before === args.machine) return now;
  const others = now.filter((id) => id !== args.machine);
  const place = args.before === null ? others.length : others.indexOf(args.before);
  return others.toSpliced(place, 0, args.machine);
}
