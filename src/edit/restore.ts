import type { Cell, RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';

export type RestoreArgs = { readonly ids: readonly RecordId[] };

/** Brings records back, and with them what went along when they were removed. */
export const restore: Command<RestoreArgs> = {
  name: 'restore',
  passesLocks: true,
  refuse: (doc, { ids }) =>
    ids.length > 0 && ids.every((id) => doc.get(id)?.['gone'] === true) ? null : 'unknownRecord',
  write(doc, { ids }) {
    const cells: Cell[] = [];
    for (const [id, fields] of doc) {
      const along = ids.includes(fields['goneWith'] as RecordId);
      if (!along && !ids.includes(id)) continue;
      cells.push([id, 'gone', undefined]);
      if (fields['goneWith'] !== undefined) cells.push([id, 'goneWith', undefined]);
    }
    return cells;
  },
};
