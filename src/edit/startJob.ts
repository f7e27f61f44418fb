import type { Cell, Json, RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';

type Fresh = { readonly id: RecordId; readonly fields: { readonly [slot: string]: Json } };

export type StartJobArgs = {
  readonly job: Fresh;
  readonly floor: Fresh;
  /** Rates, prices and machines that the job starts with: its own copy from now on. */
  readonly records: readonly Fresh[];
};

/** The first change of a new job. */
export const startJob: Command<StartJobArgs> = {
  name: 'startJob',
  refuse(doc, { job, floor }) {
    if (doc.size > 0) return 'jobStarted';
    return job.id.startsWith('job:') && floor.id.startsWith('floor:') ? null : 'wrongKind';
  },
  write: (_doc, { job, floor, records }) => [job, floor, ...records].flatMap(cellsOf),
};

function cellsOf({ id, fields }: Fresh): readonly Cell[] {
  return Object.entries(fields).map(([slot, value]): Cell => [id, slot, value]);
}
