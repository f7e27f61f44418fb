import type { RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';
import { newRecordCells, refuseNewId } from './newItem.ts';

export type NewFloorArgs = { readonly id: RecordId; readonly name: string; readonly level?: number };

export const newFloor: Command<NewFloorArgs> = {
  name: 'newFloor',
  refuse: (doc, { id, name }) => refuseNewId(doc, id, 'floor') ?? (name.trim() === '' ? 'nameMissing' : null),
  write: (doc, { id, name, level }) => newRecordCells(doc, id, { name: name.trim(), level }),
};
