import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cell, Json, RecordId } from '../../src/model/cell.ts';
import { differenceOf } from '../../src/model/difference.ts';
import { applyCells, type Doc } from '../../src/model/doc.ts';
import { openEnvelope, writeEnvelope } from '../../src/model/envelope.ts';
import { keyBetween, keysAfter } from '../../src/model/order.ts';
import { planStore } from '../../src/model/store.ts';
import { everyKind } from '../support/everyKind.ts';

/** Loose fields of a few records: any value will do, so that the laws are seen and not the schemas. */
const id = fc.constantFrom<RecordId>('floor:a', 'note:a', 'crack:a', 'lamp:a', 'lamp:b');
const slot = fc.constantFrom('glow', 'shade', 'hue');
const value = fc.oneof(
  fc.string(),
  fc.integer(),
  fc.boolean(),
  fc.constant(undefined),
  fc.array(fc.integer()),
) as fc.Arbitrary<Json | undefined>;
const cell: fc.Arbitrary<Cell> = fc.tuple(id, slot, value);
/** At most one cell a field, as a change has it. */
const cells = fc.uniqueArray(cell, { minLength: 1, maxLength: 6, selector: ([record, field]) => `${record} ${field}` });
const gestures = fc.array(cells, { minLength: 1, maxLength: 12 });

describe('undo and redo', () => {
  it('all undone gives the start, all redone the end', () => {
    fc.assert(
      fc.property(gestures, (list) => {
        const store = planStore({ doc: everyKind });
        for (const one of list) store.commit('gesture', one);
        const end = store.getState();
        for (const _ of list) store.undo();
        expect(store.getState()).toEqual(everyKind);
        for (const _ of list) store.redo();
        expect(store.getState()).toEqual(end);
      }),
      { numRuns: 500 },
    );
  });
  it('never change a field that another device has written since', () => {
    fc.assert(
      fc.property(
        gestures,
        gestures,
        fc.array(fc.constantFrom('undo', 'redo', 'theirs'), { maxLength: 30 }),
        (mine, theirs, moves) => {
          const store = planStore({ doc: everyKind });
          for (const one of mine) store.commit('mine', one);
          const remote = new Map<string, Json | undefined>();
          let turn = 0;
          for (const move of moves) {
            if (move === 'theirs') {
              const written = theirs[turn++ % theirs.length] ?? [];
              store.commit('theirs', written, 'remote');
              for (const [record, field, to] of written) remote.set(`${record} ${field}`, to);
            } else store[move]();
          }
          for (const [key, to] of remote) {
            const [record, field] = key.split(' ') as [RecordId, string];
            expect(store.getState().get(record)?.[field]).toEqual(to);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
  it('a log replayed on the start gives the plan on screen', () => {
    fc.assert(
      fc.property(gestures, fc.array(fc.constantFrom('undo', 'redo'), { maxLength: 10 }), (list, moves) => {
        const store = planStore({ doc: everyKind });
        const log: Cell[] = [];
        store.onChange((change) => log.push(...change.writes));
        for (const one of list) store.commit('gesture', one);
        for (const move of moves) store[move]();
        expect(applyCells(everyKind, log)).toEqual(store.getState());
      }),
    );
  });
});

describe('two plans', () => {
  const plan: fc.Arbitrary<Doc> = gestures.map((list) =>
    list.reduce<Doc>((doc, one) => applyCells(doc, one), everyKind),
  );
  it('their difference leads from one to the other', () => {
    fc.assert(
      fc.property(plan, plan, (from, to) => {
        expect(applyCells(from, differenceOf(from, to))).toEqual(to);
      }),
    );
  });
  it('a saved one opens as it was, and is saved as the same text', () => {
    fc.assert(
      fc.property(plan, (doc) => {
        const text = writeEnvelope(doc, new Map());
        const opened = openEnvelope(JSON.parse(text));
        expect(opened.ok && opened.doc).toEqual(doc);
        expect(opened.ok && writeEnvelope(opened.doc, opened.quarantine)).toBe(text);
      }),
    );
  });
});

describe('merging', () => {
  interface Stamped {
    readonly tick: number;
    readonly device: string;
    readonly cell: Cell;
  }
  /** Higher tick wins, the device breaks ties: the rule that stamps are kept for. */
  function merged(writes: readonly Stamped[]): Doc {
    const sorted = writes.toSorted((a, b) => a.tick - b.tick || (a.device < b.device ? -1 : 1));
    return applyCells(
      everyKind,
      sorted.map((write) => write.cell),
    );
  }
  it('by stamps gives one plan, whatever the order of arrival', () => {
    const stamped = fc.record({ tick: fc.nat(9), device: fc.constantFrom('a', 'b', 'c'), cell });
    const writes = fc.uniqueArray(stamped, { maxLength: 20, selector: (write) => `${write.tick} ${write.device}` });
    fc.assert(
      fc.property(
        writes.chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length }))),
        ([list, shuffled]) => {
          expect(merged(shuffled)).toEqual(merged(list));
        },
      ),
    );
  });
});

describe('order keys', () => {
  it('lie strictly between their neighbours wherever one is put', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(), { minLength: 1, maxLength: 60 }), (places) => {
        const keys: string[] = [];
        for (const place of places) {
          const at = place % (keys.length + 1);
          keys.splice(at, 0, keyBetween(keys[at - 1] ?? null, keys[at] ?? null));
        }
        expect(keys).toEqual([...new Set(keys)].toSorted());
        expect(keys.every((key) => !key.endsWith('0'))).toBe(true);
      }),
    );
  });
  it('come in rising runs', () => {
    const keys = keysAfter('i', 200);
    expect(keys).toEqual(keys.toSorted());
    expect(new Set(['i', ...keys]).size).toBe(201);
  });
});
