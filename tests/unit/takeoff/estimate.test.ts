import { describe, expect, test } from 'vitest';
import type { Json } from '../../../src/model/cell.ts';
import { applyCells, recordsOf, type Doc } from '../../../src/model/doc.ts';
import type { Estimate } from '../../../src/model/records/estimate.ts';
import { planStore } from '../../../src/model/store.ts';
import { runCommand } from '../../../src/edit/run.ts';
import { estimateNow } from '../../../src/exchange/estimateNow.ts';
import { brokenLines, differencesNow, frozenLines, frozenRates } from '../../../src/takeoff/issuedEstimate.ts';
import { defaultMoneyCells, defaultRateCells } from '../../../src/takeoff/rates/defaults.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  rectangle,
  set,
  slabCells,
  withCells,
} from '../../support/jobPlans.ts';
import { kitchen, showroom } from '../../support/wholeJobs.ts';

const rates = [...defaultRateCells(), ...defaultMoneyCells()];
const room = docOf(jobCells({ number: '26-007' }), slabCells(rectangle(6_000, 5_000)), rates);

/** The job after an estimate was issued from it, or why it was refused. */
function issued(doc: Doc, more: { readonly open?: readonly string[]; readonly id?: string } = {}): Doc | string {
  const { job, frozen } = estimateNow(doc);
  const store = planStore({ doc });
  const args = {
    id: more.id ?? 'estimate:a',
    on: '2030-02-01',
    open: more.open ?? job.notAnOffer,
    frozen: frozen ?? {},
  } as unknown as Json;
  const result = runCommand(store, { name: 'issueEstimate', args });
  return 'refused' in result ? result.refused : store.getState();
}

function estimateOf(doc: Doc | string): Estimate {
  const found = typeof doc === 'string' ? undefined : recordsOf(doc, 'estimate').at(-1);
  if (!found) throw new Error(typeof doc === 'string' ? doc : 'nothing was issued');
  return found;
}

const price = (doc: Doc): number =>
  takeoff(doc, FLOOR).lines.find((line) => line.code === 'money.price')?.quantity.likely ?? Number.NaN;

describe('an issued estimate', () => {
  const after = issued(room) as Doc;
  const estimate = estimateOf(after);

  test('holds the price of the takeoff, the number of the job and its own', () => {
    expect(estimate).toMatchObject({ number: '26-007-1', issuedOn: '2030-02-01', currency: 'USD' });
    expect(estimate.totalMinor).toBe(price(room));
    expect(estimate.parts?.reduce((sum, part) => sum + part.amountMinor, 0)).toBe(price(room));
  });

  test('works out again from its own lines, down to the plan, to the cent', () => {
    expect(frozenLines(estimate).length).toBeGreaterThan(40);
    expect(frozenLines(estimate).map(({ code }) => code)).toEqual(
      expect.arrayContaining(['netFloor', 'hours.machine', 'hours.crew', 'money.labour', 'money.price']),
    );
    expect(brokenLines(estimate)).toEqual([]);
  });

  test.each([
    ['an amount', 'money.labour'],
    ['an hour', 'hours.machine'],
  ])('%s that somebody wrote into it is found', (_, code) => {
    const { totalMinor, lines: frozen } = estimate;
    const of = { totalMinor, lines: frozen };
    const lines = frozenLines(of).map((line) =>
      line.code === code ? { ...line, quantity: { ...line.quantity, likely: line.quantity.likely + 1 } } : line,
    );
    expect(brokenLines({ ...of, lines: lines as unknown as Json[] }).length).toBeGreaterThan(0);
    expect(brokenLines({ ...of, totalMinor: of.totalMinor + 1 })).toEqual(['total']);
  });

  test('keeps the rates and prices that it used, and no other', () => {
    const codes = frozenRates(estimate).map((rate) => rate.code);
    expect(codes).toEqual(expect.arrayContaining(['wage', 'day/grinder_small', 'methods/grinder_small', 'bag']));
    expect(codes).not.toContain('day/shot_medium');
    expect(codes).not.toContain('methods/shot_medium');
  });

  test('stays what it was when wages rise, and says what differs now', () => {
    const dearer = applyCells(after, set('price:wage', 'amount', 6_400));
    expect(estimateOf(dearer)).toEqual(estimate);
    expect(price(dearer)).toBeGreaterThan(estimate.totalMinor);
    const { money, rates: changed } = differencesNow(estimate, estimateNow(dearer).frozen);
    expect(changed).toEqual([{ what: 'wage', unit: 'minor', before: 3_200, after: 6_400 }]);
    expect(money.map(({ what }) => what)).toEqual(expect.arrayContaining(['money.labour|floor', 'money.price|floor']));
  });

  test('nothing differs while nothing has changed', () => {
    expect(differencesNow(estimate, estimateNow(after).frozen)).toEqual({ money: [], rates: [] });
  });

  test.each([
    ['setField', { id: 'estimate:a', slot: 'totalMinor', value: 1 }],
    ['setFields', { ids: ['estimate:a'], fields: { number: 'X' } }],
    ['removeRecords', { ids: ['estimate:a'] }],
    ['reorder', { id: 'estimate:a', before: null }],
  ])('is not changed by %s', (name, args) => {
    const store = planStore({ doc: after });
    expect(runCommand(store, { name, args })).toHaveProperty('refused');
    expect(store.getState()).toBe(after);
  });

  test('the next one gets the next number, and both stand', () => {
    const twice = issued(after, { id: 'estimate:b' }) as Doc;
    expect(recordsOf(twice, 'estimate').map(({ number }) => number)).toEqual(['26-007-1', '26-007-2']);
  });

  test('undo takes it back like any step, whole', () => {
    const store = planStore({ doc: room });
    const { frozen } = estimateNow(room);
    runCommand(store, {
      name: 'issueEstimate',
      args: { id: 'estimate:a', on: '2030-02-01', open: [], frozen } as unknown as Json,
    });
    store.undo();
    expect(store.getState()).toEqual(room);
  });
});

describe('nothing is issued', () => {
  test.each(['builtBefore1981', 'coatingOrTile', 'inSlab', 'gasAppliance'] as const)('while %s is open', (question) => {
    expect(issued(withCells(room, set('job:test', question, { answer: 'unknown' })))).toBe('notAnOffer');
    // Also where whoever asks says that nothing is open.
    expect(issued(withCells(room, set('job:test', question, undefined)), { open: [] })).toBe('notAnOffer');
  });
  test('while a hold stands', () => {
    const paint = findingCells('finding:F1', 'paint', rectangle(1_000, 1_000, [500, 500]));
    expect(issued(withCells(room, paint))).toBe('notAnOffer');
  });
  test('while cutting is held', () => {
    const crack = crackCells('crack:C1', [
      [1_000, 1_000],
      [4_000, 1_000],
    ]);
    expect(issued(withCells(room, crack, set('job:test', 'inSlab', { answer: 'yes' })))).toBe('notAnOffer');
  });
  test('while a price is missing', () => {
    const peened = withCells(
      room,
      record('recipe:p', { name: 'Peened' }),
      record('pass:p', {
        recipe: 'recipe:p',
        method: 'grinder_small',
        machine: null,
        times: 1,
        edgeMethod: 'hand_peener',
        edgeTimes: 1,
      }),
      record('zone:rest', {
        floor: FLOOR,
        tag: 'Z1',
        covers: 'rest',
        place: 'indoor',
        wetAllowed: false,
        hardness: 'medium',
        recipe: 'recipe:p',
      }),
    );
    expect(issued(peened)).toBe('notAnOffer');
  });
  test('without a slab', () => {
    expect(issued(docOf(jobCells(), rates), { open: [] })).toBe('nothingToIssue');
  });
});

describe('whole jobs', () => {
  test.each([
    ['kitchen', kitchen()],
    ['showroom', showroom()],
  ])('%s can be issued and works out again', (_, doc) => {
    const estimate = estimateOf(issued(withCells(doc, rates)));
    expect(brokenLines(estimate)).toEqual([]);
  });
});
