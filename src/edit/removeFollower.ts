import { cascadeCells, followersOf, refuseCascade, type CascadeArgs } from './cascade.ts';
import type { Command } from './command.ts';

/** A machine no longer follows: what it worked goes to the next one, or to hand tools. */
export const removeFollower: Command<CascadeArgs> = {
  name: 'removeFollower',
  refuse(doc, args) {
    const now = followersOf(doc, args);
    if (!now.includes(args.machine)) return 'unknownMachine';
    return refuseCascade(
      doc,
      args,
      now.filter((id) => id !== args.machine),
    );
  },
  write: (doc, args) =>
    cascadeCells(
      doc,
      args,
      followersOf(doc, args).filter((id) => id !== args.machine),
    ),
};
