import { describe, expect, it } from 'vitest';
import { typeOf } from '../../../src/model/cell.ts';
import { differenceOf } from '../../../src/model/difference.ts';
import { applyCells, cellsBefore, cellsFor, EMPTY_DOC, onFloor, recordOf, recordsOf } from '../../../src/model/doc.ts';
import { laidOver } from '../../../src/model/overlay.ts';
import { idMaker, isRecordId } from '../../../src/model/id.ts';
import { everyKind } from '../../support/everyKind.ts';

describe('reading a plan', () => {
  it('gives the records of a kind in order, without those that are gone, the same objects each time', () => {
    const doc = applyCells(everyKind, [
      ['floor:b', 'name', 'Cellar'],
      ['floor:b', 'order', '0i'],
      ['floor:c', 'name', 'Attic'],
      ['floor:c', 'gone', true],
    ]);
    expect(recordsOf(doc, 'floor').map(({ id }) => id)).toEqual(['floor:b', 'floor:a']);
    expect(recordsOf(doc, 'floor')).toBe(recordsOf(doc, 'floor'));
    expect(recordsOf(doc, 'slab')[0]).toBe(recordsOf(everyKind, 'slab')[0]);
  });
  it('gives one record, or null when it is missing, gone or of another kind', () => {
    expect(recordOf(everyKind, 'crack', 'crack:a')).toMatchObject({ id: 'crack:a', tag: 'C1' });
    expect(recordOf(everyKind, 'crack', 'crack:z')).toBeNull();
    expect(recordOf(everyKind, 'crack', 'joint:a')).toBeNull();
    expect(recordOf(everyKind, 'crack', null)).toBeNull();
    expect(recordOf(applyCells(everyKind, [['crack:a', 'gone', true]]), 'crack', 'crack:a')).toBeNull();
  });
  it('gives the items of one floor', () => {
    const doc = applyCells(everyKind, [['crack:a', 'floor', 'floor:b']]);
    expect(onFloor(doc, 'crack', 'floor:a')).toEqual([]);
    expect(onFloor(doc, 'crack', 'floor:b')).toHaveLength(1);
  });
});

describe('cells', () => {
  it('written and taken back leave the plan as it was', () => {
    const cells = [
      ...cellsFor('person:b', { name: 'B. Helper' }),
      ['floor:a', 'name', 'x'] as const,
      ['floor:a', 'name', 'y'] as const,
    ];
    const after = applyCells(everyKind, cells);
    expect(after.get('floor:a')).toMatchObject({ name: 'y' });
    expect(applyCells(after, cellsBefore(everyKind, cells))).toEqual(everyKind);
  });
  it('none of them are the same plan', () => {
    expect(applyCells(everyKind, [])).toBe(everyKind);
  });
  it('of a difference turn one plan into the other', () => {
    const other = applyCells(everyKind, [
      ['floor:a', 'name', 'x'],
      ['floor:a', 'level', undefined],
      ['person:b', 'name', 'B. Helper'],
    ]);
    expect(differenceOf(everyKind, other)).toHaveLength(3);
    expect(applyCells(everyKind, differenceOf(everyKind, other))).toEqual(other);
    expect(applyCells(other, differenceOf(other, everyKind))).toEqual(everyKind);
    expect(applyCells(EMPTY_DOC, differenceOf(EMPTY_DOC, everyKind))).toEqual(everyKind);
    expect(differenceOf(everyKind, new Map(structuredClone([...everyKind])))).toEqual([]);
  });
});

describe('lists by kind', () => {
  const crack = (id: `crack:${string}`, order: string, floor: `floor:${string}` = 'floor:a') =>
    cellsFor(id, {
      floor,
      tag: id,
      order,
      path: [
        [0, 0],
        [1, 1],
      ],
      widthMm: null,
      depthMm: null,
      behaviour: 'notJudged',
    });
  const before = applyCells(everyKind, [...crack('crack:x', '3'), ...crack('crack:y', '1'), ...crack('crack:z', '2')]);
  const plain = (doc: typeof before) => new Map(doc);

  it.each([
    ['a field', [['crack:x', 'widthMm', 3]]],
    ['another order', [['crack:x', 'order', '0i']]],
    ['one more', crack('crack:w', '15')],
    ['one gone', [['crack:y', 'gone', true]]],
    ['one taken out', Object.keys(before.get('crack:y') ?? {}).map((slot) => ['crack:y', slot, undefined])],
    ['another floor', [['crack:z', 'floor', 'floor:b']]],
  ] as const)('after %s are those of a plan that is read afresh', (_what, cells) => {
    onFloor(before, 'crack', 'floor:a');
    const after = applyCells(before, cells as Parameters<typeof applyCells>[1]);
    expect(recordsOf(after, 'crack')).toEqual(recordsOf(plain(after), 'crack'));
    expect(onFloor(after, 'crack', 'floor:a')).toEqual(onFloor(plain(after), 'crack', 'floor:a'));
  });

  it.each([
    ['a field', [['crack:x', 'widthMm', 3]]],
    ['one more', crack('crack:w', '15')],
    ['one gone and one more', [['crack:y', 'gone', true], ...crack('crack:w', '0i')]],
    ['one taken out', Object.keys(before.get('crack:y') ?? {}).map((slot) => ['crack:y', slot, undefined])],
    ['nothing', []],
  ] as const)('laid over a plan, %s reads like a plan that it was written to', (_what, cells) => {
    recordsOf(before, 'crack');
    const over = laidOver(before, cells as Parameters<typeof laidOver>[1]);
    const after = applyCells(before, cells as Parameters<typeof applyCells>[1]);
    expect([...over]).toEqual([...after]);
    expect([...over.keys()]).toEqual([...after.keys()]);
    expect([...over.values()]).toEqual([...after.values()]);
    expect(over.size).toBe(after.size);
    for (const id of [...before.keys(), ...after.keys()]) {
      expect(over.get(id)).toEqual(after.get(id));
      expect(over.has(id)).toBe(after.has(id));
    }
    expect(recordsOf(over, 'crack')).toEqual(recordsOf(after, 'crack'));
    expect(recordsOf(plain(over), 'crack')).toEqual(recordsOf(after, 'crack'));
    expect(before.get('crack:x')?.['widthMm']).toBeNull();
  });

  it('stay the same lists while nothing of their kind changes', () => {
    const [zones, cracks] = [onFloor(before, 'zone', 'floor:a'), onFloor(before, 'crack', 'floor:a')];
    const after = applyCells(before, [['crack:x', 'widthMm', 3]]);
    expect(onFloor(after, 'zone', 'floor:a')).toBe(zones);
    expect(onFloor(after, 'crack', 'floor:a')).not.toBe(cracks);
  });
});

describe('ids', () => {
  it('are made of the bytes given, twelve letters each, skipping bytes that would favour some', () => {
    let next = 250;
    const newId = idMaker((count) => Uint8Array.from({ length: count }, () => next++ % 256));
    const id = newId('crack');
    expect(id).toMatch(/^crack:[0-9a-z]{12}$/);
    expect(typeOf(id)).toBe('crack');
    // 250 and 251 are y and z, 252 to 255 are skipped, 0 is 0.
    expect(id.slice(6)).toBe('yz0123456789');
  });
  it.each([
    ['slab:x7', true],
    ['outOfScope:x_7-A', true],
    ['Slab:x7', false],
    ['slab:', false],
    ['slab', false],
    ['__proto__', false],
    [7, false],
  ])('%s is a record id: %s', (value, is) => {
    expect(isRecordId(value)).toBe(is);
  });
});
