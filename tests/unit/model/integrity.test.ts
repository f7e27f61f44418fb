import { describe, expect, it } from 'vitest';
import { applyCells } from '../../../src/model/doc.ts';
import { brokenLinks, linksOf } from '../../../src/model/integrity.ts';
import { schemas } from '../../../src/model/records/all.ts';
import { recordId } from '../../../src/model/records/base.ts';
import { everyKind } from '../../support/everyKind.ts';

describe('broken links', () => {
  it('are none in a whole job', () => {
    expect(brokenLinks(everyKind)).toEqual([]);
  });
  it('name children of a parent that is gone, once each, and do not judge what is gone itself', () => {
    const doc = applyCells(everyKind, [
      ['wall:a', 'gone', true],
      ['crack:a', 'gone', true],
      ['crack:a', 'floor', 'floor:none'],
    ]);
    expect(brokenLinks(doc)).toEqual([{ code: 'parentGone', record: 'opening:a', slot: 'wall', target: 'wall:a' }]);
  });
  it.each([
    ['zone:a', 'recipe', 'recipe:none', 'targetMissing'],
    ['zone:a', 'recipe', 'phase:a', 'targetOfWrongKind'],
    ['slab:a', 'floor', 'floor:none', 'parentMissing'],
    ['pass:a', 'recipe', 'recipe:none', 'parentMissing'],
    ['tick:a', 'of', 'crack:none', 'parentMissing'],
  ] as const)('%s %s to %s: %s', (record, slot, target, code) => {
    expect(brokenLinks(applyCells(everyKind, [[record, slot, target]]))).toEqual([{ code, record, slot, target }]);
  });
  it('say when a machine that a pass names is gone', () => {
    const codes = brokenLinks(applyCells(everyKind, [['machine:a', 'gone', true]])).map(({ code }) => code);
    expect(codes).toEqual(['targetGone']);
  });
  it('say when there is no job record, or a second one', () => {
    expect(brokenLinks(applyCells(everyKind, [['job:a', 'gone', true]]))).toMatchObject([{ code: 'jobMissing' }]);
    const two = applyCells(everyKind, [
      ['job:b', 'name', 'x'],
      ['job:b', 'units', 'metric'],
      ['job:b', 'currency', 'XTS'],
    ]);
    expect(brokenLinks(two)).toMatchObject([{ code: 'jobTwice', record: 'job:b', target: 'job:a' }]);
  });
});

interface AnySchema {
  readonly _zod: {
    readonly def: {
      readonly innerType?: AnySchema;
      readonly element?: AnySchema;
      readonly shape?: Record<string, AnySchema>;
    };
  };
}
/** The schema of what a slot holds, one or a list of it. */
function innermost(schema: AnySchema): unknown {
  const inner = schema._zod.def.innerType ?? schema._zod.def.element;
  return inner ? innermost(inner) : schema;
}

describe('the table of links', () => {
  it('knows every slot of the schemas that holds the id of a record, and no other', () => {
    const inSchemas = Object.entries(schemas).flatMap(([type, schema]) =>
      Object.entries(schema._zod.def.shape)
        .filter(([, slot]) => innermost(slot as unknown as AnySchema) === recordId)
        // Read only when a record comes back; while it is set the record is gone, and not judged.
        .filter(([slot]) => slot !== 'goneWith')
        .map(([slot]) => `${type} ${slot}`),
    );
    const inTable = Object.entries(linksOf).flatMap(([type, links]) =>
      Object.keys(links).map((slot) => `${type} ${slot}`),
    );
    expect(inSchemas.length).toBeGreaterThan(20);
    expect(inTable.toSorted()).toEqual(inSchemas.toSorted());
  });
});
