import { expect, test } from 'vitest';
import { refusalOf } from '../../../src/edit/run.ts';
import type { CommandCall, Json } from '../../../src/model/cell.ts';
import { recordOf } from '../../../src/model/doc.ts';
import { phaseOf, phasesOf } from '../../../src/takeoff/phases.ts';
import { refusalCodes } from '../../../src/words/handWords.ts';
import { FLOOR, planWith, room } from '../../support/handPlan.ts';

const call = (name: string, args: Json): CommandCall => ({ name, args });
const square = [
  [0, 0],
  [900, 0],
  [900, 900],
  [0, 900],
];
const start = [
  room,
  call('drawZone', { id: 'zone:a', floor: FLOOR, ring: square }),
  call('newFloor', { id: 'floor:b', name: 'Upper' }),
];
const night = (id: string, name: string, zone: string | null = null): CommandCall =>
  call('addPhase', { id: `phase:${id}`, floor: FLOOR, name, zone });

test('a phase comes last, and the zone that it is made for goes into it', () => {
  const doc = planWith([...start, night('a', ' First night '), night('b', 'Second night', 'zone:a')]);
  expect(phasesOf(doc, FLOOR).map(({ name }) => name)).toEqual(['First night', 'Second night']);
  expect(recordOf(doc, 'zone', 'zone:a')?.phase).toBe('phase:b');
  expect(phasesOf(doc, 'floor:b')).toEqual([]);
});

test('phases change places, take another name, and are taken out: then their zones are in none', () => {
  const both = [...start, night('a', 'First', 'zone:a'), night('b', 'Second')];
  const moved = planWith([...both, call('reorder', { id: 'phase:b', before: 'phase:a' })]);
  expect(phasesOf(moved, FLOOR).map(({ name }) => name)).toEqual(['Second', 'First']);
  const named = planWith([...both, call('setField', { id: 'phase:a', slot: 'name', value: 'Aisle 1' })]);
  expect(phasesOf(named, FLOOR)[0]?.name).toBe('Aisle 1');
  const gone = planWith([...both, call('removeRecords', { ids: ['phase:a'] })]);
  const record = recordOf(gone, 'zone', 'zone:a');
  expect(phaseOf(gone, FLOOR, { record })).toBeNull();
  // What was taken out can come back, and the zone is in it again.
  const back = planWith([...both, call('removeRecords', { ids: ['phase:a'] }), call('restore', { ids: ['phase:a'] })]);
  expect(phaseOf(back, FLOOR, { record: recordOf(back, 'zone', 'zone:a') })).toBe('phase:a');
});

test('each refusal has a sentence', () => {
  const doc = planWith([...start, night('a', 'First')]);
  const refused = [
    night('b', '  '),
    night('a', 'Again'),
    call('addPhase', { id: 'phase:b', floor: 'floor:none', name: 'x' }),
    call('addPhase', { id: 'phase:b', floor: FLOOR, name: 'x', zone: 'zone:none' }),
    call('addPhase', { id: 'zone:b', floor: FLOOR, name: 'x' }),
  ].map((each) => refusalOf(doc, each));
  expect(refused).toEqual(['nameMissing', 'idTaken', 'unknownFloor', 'unknownRecord', 'wrongKind']);
  for (const code of refused) expect(refusalCodes).toContain(code);
});
