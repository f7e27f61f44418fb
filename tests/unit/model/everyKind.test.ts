import { describe, expect, it } from 'vitest';
import { typeOf } from '../../../src/model/cell.ts';
import { partOf } from '../../../src/model/parts.ts';
import { checkRecord, schemas } from '../../../src/model/records/all.ts';
import { everyKind } from '../../support/everyKind.ts';

describe('the sample of every kind', () => {
  it('holds every kind of record, and each parses', () => {
    const kinds = new Set([...everyKind.keys()].map(typeOf));
    expect([...kinds].toSorted()).toEqual(Object.keys(schemas).toSorted());
    for (const [id, fields] of everyKind) expect(checkRecord(id, fields)).toBeNull();
  });
  it('sets every field that a schema names, but gone', () => {
    for (const [type, schema] of Object.entries(schemas)) {
      const used = new Set(
        [...everyKind].filter(([id]) => typeOf(id) === type).flatMap(([, fields]) => Object.keys(fields)),
      );
      const missing = Object.keys(schema._zod.def.shape).filter((slot) => !used.has(slot));
      // name, note and locked are the same on every item: the slab shows them.
      expect({
        type,
        missing: missing.filter((slot) => !['gone', 'goneWith', 'name', 'note', 'locked'].includes(slot)),
      }).toEqual({
        type,
        missing: [],
      });
    }
  });
  it('a kind that nobody knows is kept, and counts as money', () => {
    expect(checkRecord('lamp:a', { lumen: 800 })).toBeNull();
    expect(partOf('lamp:a', 'lumen')).toBe('money');
  });
  it('says which part each kind and the single fields belong to', () => {
    expect(partOf('slab:a', 'outline')).toBe('plan');
    expect(partOf('job:a', 'currency')).toBe('money');
    expect(partOf('job:a', 'name')).toBe('plan');
    expect(partOf('price:a', 'amount')).toBe('money');
    expect(partOf('reading:a', 'value')).toBe('record');
  });
});

describe('a record that does not parse', () => {
  it.each([
    ['crack:a', { floor: 'floor:a', tag: 'C1', path: [[0, 0]], widthMm: null, behaviour: 'static' }, 'path'],
    ['zone:a', { floor: 'nowhere', tag: 'Z1' }, 'floor'],
    ['machine:a', { clearanceMm: { wall: -1 } }, 'method'],
    ['slab:a', { floor: 'floor:a', tag: 'S1', outline: [] }, 'outline'],
    [
      'crack:a',
      {
        floor: 'floor:a',
        tag: 'C1',
        path: [
          [0, Number.NaN],
          [1, 1],
        ],
        widthMm: null,
        behaviour: 'static',
      },
      'path.0.1',
    ],
    ['crack:a', null, 'the record'],
  ] as const)('%s: the field is named', (id, fields, where) => {
    expect(checkRecord(id, fields)).toContain(where);
  });
});
