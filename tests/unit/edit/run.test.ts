import { expect, test } from 'vitest';
import { runCommand } from '../../../src/edit/run.ts';
import type { RecordId } from '../../../src/model/cell.ts';
import type { Fields } from '../../../src/model/doc.ts';
import { planStore } from '../../../src/model/store.ts';

test('what the store cannot read is refused as a code, and nothing is changed', () => {
  // A fault that was there before does not stand in a command's way; the store still reads the whole record.
  const doc = new Map<RecordId, Fields>([['floor:a', { name: 7 }]]);
  const store = planStore({ doc });
  expect(runCommand(store, { name: 'setField', args: { id: 'floor:a', slot: 'level', value: 1 } })).toEqual({
    refused: 'badValue',
  });
  expect(store.getState()).toBe(doc);
  expect(store.steps().undo).toEqual([]);
});
