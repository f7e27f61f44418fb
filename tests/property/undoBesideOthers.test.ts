import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cell } from '../../src/model/cell.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { everyKind } from '../support/everyKind.ts';

const FIELDS = [
  ['note:a', 'text'],
  ['floor:a', 'name'],
  ['person:a', 'name'],
] as const;

const writing = fc.record({
  origin: fc.constantFrom('local', 'local', 'remote'),
  fields: fc.uniqueArray(fc.constantFrom(...FIELDS), { minLength: 1 }),
});

/** What each field holds, in the order of FIELDS. */
function valuesOf(store: PlanStore): readonly unknown[] {
  return FIELDS.map(([id, slot]) => store.getState().get(id)?.[slot]);
}

test('beside another device each step is taken back whole or stands whole, and none bars those before it', () => {
  let passedOver = 0;
  fc.assert(
    fc.property(fc.array(writing, { minLength: 1, maxLength: 12 }), (writings) => {
      const store = planStore({ doc: everyKind });
      for (const [i, { origin, fields }] of writings.entries()) {
        // Every writing has words of its own: a field tells who wrote it last.
        const label = `${origin} ${i}`;
        store.commit(
          label,
          fields.map(([id, slot]): Cell => [id, slot, label]),
          origin,
        );
      }
      const end = valuesOf(store);
      const steps = store.steps().undo;
      const stands = new Set<unknown>(writings.map(({ origin }, i) => `${origin} ${i}`));
      for (const step of steps) {
        const answer = store.undo();
        expect(answer).not.toBeNull();
        if (answer === 'overtaken') passedOver += 1;
        else stands.delete(step);
      }
      expect(store.undo()).toBeNull();
      const start = FIELDS.map(([id, slot]) => everyKind.get(id)?.[slot]);
      for (const [i, value] of valuesOf(store).entries()) {
        if (stands.has(end[i])) expect(value).toBe(end[i]);
        expect(stands.has(value) || value === start[i]).toBe(true);
      }
    }),
    { numRuns: 1000 },
  );
  // A law that nothing was tried against says nothing.
  expect(passedOver).toBeGreaterThan(100);
});
