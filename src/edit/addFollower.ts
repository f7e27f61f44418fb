import type { RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';
import { cascadeCells, followersOf, refuseCascade, withMachine, type CascadeArgs } from './cascade.ts';
import type { Command } from './command.ts';

/** One more machine works what the others leave. It takes its place by size, biggest first. */
export const addFollower: Command<CascadeArgs> = {
  name: 'addFollower',
  refuse: (doc, args) => refuseCascade(doc, args, withOneMore(doc, args)),
  write: (doc, args) => cascadeCells(doc, args, withOneMore(doc, args)),
};

function withOneMore(doc: Doc, args: CascadeArgs): readonly RecordId[] {
  const known = withMachine(doc, args);
  const widthOf = (id: RecordId): number => recordOf(known, 'machine', id)?.cutWidthMm ?? 0;
  const now = followersOf(doc, args);
  const smaller = now.findIndex((id) => widthOf(id) < widthOf(args.machine));
  return now.toSpliced(smaller < 0 ? now.length : smaller, 0, args.machine);
}
