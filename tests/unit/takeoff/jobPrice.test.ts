import { describe, expect, test } from 'vitest';
import type { Cell } from '../../../src/model/cell.ts';
import type { Doc } from '../../../src/model/doc.ts';
import { estimateNow } from '../../../src/exchange/estimateNow.ts';
import { toTheCent } from '../../../src/exchange/estimateRows.ts';
import { wholeJobJson, wholeJobText } from '../../../src/exchange/wholeJob.ts';
import { evaluate } from '../../../src/takeoff/formula.ts';
import { jobPrice } from '../../../src/takeoff/jobPrice.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { docOf, FLOOR, jobCells, record, rectangle, set, slabCells, withCells } from '../../support/jobPlans.ts';
import { kitchen, warehouse } from '../../support/wholeJobs.ts';

const ground = docOf(jobCells(), slabCells(rectangle(9_000, 8_000)));
const UPPER = 'floor:upper';

function upperFloor(width: number, depth: number): Cell[] {
  const outline = rectangle(width, depth).map(([x, y]) => ({ x, y, edge: { kind: 'wall' as const } }));
  return [...record(UPPER, { name: 'Upper floor' }), ...record('slab:upper', { floor: UPPER, tag: 'S1', outline })];
}

const both = withCells(ground, upperFloor(7_000, 6_000));
const one = (lines: readonly Line[], code: string): Line => {
  const found = lines.find((line) => line.code === code);
  if (!found) throw new Error(`no line ${code}`);
  return found;
};
const priceOf = (doc: Doc, floor: string): number => one(takeoff(doc, floor).lines, 'money.price').quantity.likely;
const hoursOf = (floor: string, code: string): number => one(takeoff(both, floor).lines, code).quantity.likely;

describe('a job with one floor', () => {
  test.each([
    ['a room', ground],
    ['a kitchen', kitchen()],
    ['a hall in two phases', warehouse()],
  ])('%s costs what its takeoff says, line by line', (_, doc) => {
    const money = takeoff(doc, FLOOR).lines.filter((line) => line.trade === 'money');
    const job = jobPrice(doc);
    expect(new Map(job.money.map((line) => [line.key, line.quantity]))).toEqual(
      new Map(money.map((line) => [line.key, line.quantity])),
    );
    expect(job.notAnOffer).toEqual(takeoff(doc, FLOOR).notAnOffer);
  });
});

describe('a job with two floors (trade practice, no source: mobilisation once a visit)', () => {
  const job = jobPrice(both);

  test('has one price, less than both floors alone and more than either', () => {
    const price = one(job.money, 'money.price').quantity.likely;
    expect(price).toBeLessThan(priceOf(both, FLOOR) + priceOf(both, UPPER));
    expect(price).toBeGreaterThan(Math.max(priceOf(both, FLOOR), priceOf(both, UPPER)));
  });

  test('is set up, torn down and mobilised once, and moves from floor to floor', () => {
    // Set-up 1 h, tear-down 1 h, a move of 10 min: table labour.
    const days = job.work.find((line) => line.key === 'days|floor|job')?.quantity.likely ?? Number.NaN;
    const alone = [FLOOR, UPPER].reduce(
      (sum, floor) => sum + hoursOf(floor, 'hours.crew') - hoursOf(floor, 'hours.dailyStart'),
      0,
    );
    const crew = job.work.find((line) => line.key === 'hours.crew|floor|job')?.quantity.likely;
    expect(crew).toBeCloseTo(alone - 2 + 10 / 60 + (days - 1) * 0.5, 6);
    expect(job.money.filter(({ code }) => code === 'money.mobilisation')).toHaveLength(1);
    expect(job.money.some(({ code }) => code === 'money.remobilisation')).toBe(false);
  });

  test('shares its price out over the zones of both floors, to the cent', () => {
    expect(job.zones.map(({ floor }) => floor)).toEqual([FLOOR, UPPER]);
    const shares = job.zones.reduce((sum, { share }) => sum + share.quantity.likely, 0);
    expect(shares).toBe(one(job.money, 'money.price').quantity.likely);
    expect(job.zones.map(({ areaM2 }) => areaM2)).toEqual([expect.closeTo(72, 6), expect.closeTo(42, 6)]);
  });

  test('every line has a key of its own, comes out of its terms, and its terms are lines that are there', () => {
    const lines = [...job.work, ...job.money];
    expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length);
    const byKey = new Map(lines.map((line) => [line.key, line]));
    for (const line of job.money) {
      const again = evaluate(line.working.formula, line.working.terms);
      expect(again.likely, line.key).toBeCloseTo(line.quantity.likely, 9);
      for (const term of line.working.terms.filter(({ source, from }) => source === 'line' && from !== null)) {
        expect(byKey.has(term.from ?? ''), `${line.key} ${term.name}`).toBe(true);
      }
    }
  });

  test('names its zones by floor', () => {
    expect(estimateNow(both).frozen?.parts?.map(({ name }) => name)).toEqual([
      'Ground floor, Rest of the slab',
      'Upper floor, Rest of the slab',
    ]);
  });

  test('with a phase on one of them each visit is set up by itself', () => {
    const zone = { place: 'indoor', wetAllowed: false, hardness: 'medium' } as const;
    const phased = withCells(
      both,
      record('phase:a', { name: 'Night 1', floor: FLOOR }),
      record('zone:a', {
        ...zone,
        floor: FLOOR,
        tag: 'Z1',
        covers: 'ring',
        ring: rectangle(4_000, 8_000),
        phase: 'phase:a',
      }),
    );
    expect(one(jobPrice(phased).money, 'money.remobilisation').quantity.likely).toBe(15_000);
    const crew = jobPrice(phased).work.find((line) => line.key === 'hours.crew|floor|job')?.quantity.likely;
    const sum = [FLOOR, UPPER]
      .map((floor) => one(takeoff(phased, floor).lines, 'hours.crew').quantity.likely)
      .reduce((a, b) => a + b);
    expect(crew).toBeCloseTo(sum, 9);
  });
});

describe('a floor with nothing on it', () => {
  const empty = withCells(ground, record(UPPER, { name: 'Upper floor' }));

  test('is left out and named; the job costs what the other one does', () => {
    expect(jobPrice(empty).leftOut.map(({ name }) => name)).toEqual(['Upper floor']);
    expect(one(jobPrice(empty).money, 'money.price').quantity.likely).toBe(priceOf(ground, FLOOR));
    expect(jobPrice(empty).notAnOffer).toEqual([]);
    expect(estimateNow(empty).frozen?.exclusions?.[0]).toBe('Upper floor: nothing is drawn there');
  });

  test('a page that is not trued on it keeps the job from being an offer', () => {
    const page = { floor: UPPER, name: 'Plan', image: 'h', widthPx: 100, heightPx: 100 } as const;
    const untrued = withCells(empty, record('page:a', { ...page, dimensions: [], origin: [0, 0], guessMmPerPx: 10 }));
    expect(jobPrice(untrued).notAnOffer).toContain('pageNotTrued');
  });
});

test('what is open on any floor is open for the job', () => {
  const open = withCells(both, set('job:test', 'gasAppliance', { answer: 'unknown' }));
  expect(jobPrice(open).notAnOffer).toEqual(['gasAppliance']);
});

test('the command line says the same price over both floors, to the cent', () => {
  const total = estimateNow(both).frozen?.totalMinor ?? Number.NaN;
  expect(wholeJobJson(both)?.totalMinor).toBe(total);
  expect(wholeJobText(both)).toContain(toTheCent(total, 'USD').replace(' USD', ''));
  expect(wholeJobText(ground)).toBe('');
  const crew = withCells(both, set('job:test', 'currency', undefined));
  expect([wholeJobText(crew), wholeJobJson(crew)]).toEqual(['', null]);
});
