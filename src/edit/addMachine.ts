import type { Json, RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';
import { newRecordCells, refuseNewId } from './newItem.ts';

/** Every slot of the machine record: method, name, sizes, clearances, lap… */
export type AddMachineArgs = { readonly id: RecordId; readonly fields: { readonly [slot: string]: Json } };

export const addMachine: Command<AddMachineArgs> = {
  name: 'addMachine',
  refuse: (doc, { id }) => refuseNewId(doc, id, 'machine'),
  write: (doc, { id, fields }) => newRecordCells(doc, id, fields),
};
