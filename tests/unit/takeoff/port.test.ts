import { expect, test } from 'vitest';
import type { Answer } from '../../../src/takeoff/port.ts';
import { takeoffInline } from '../../../src/takeoff/takeoffInline.ts';
import { docOf, FLOOR, jobCells, record, rectangle, set, slabCells, withCells } from '../../support/jobPlans.ts';

const doc = docOf(jobCells(), slabCells(rectangle(5_000, 4_000)));
const column = record('obstruction:b', {
  floor: FLOOR,
  tag: 'B1',
  kind: 'column',
  shape: { form: 'rectangle', at: [2_500, 2_000], widthMm: 1_000, depthMm: 1_000, turnDeg: 0 },
  under: 'none',
});
const moved = set('obstruction:b', 'shape', {
  form: 'rectangle',
  at: [2_500, 2_000],
  widthMm: 2_000,
  depthMm: 1_000,
  turnDeg: 0,
});

function heard(soon?: (work: () => void) => void) {
  const port = takeoffInline(soon);
  const answers: Answer[] = [];
  port.listen((answer) => answers.push(answer));
  return { port, answers, net: () => answers.at(-1)?.takeoff.measure.netM2 };
}

test('a change is kept, a preview is dropped and never merged', () => {
  const { port, answers, net } = heard();
  port.load(doc, FLOOR, 1);
  expect(net()).toBeCloseTo(20, 6);
  port.change(column, 2);
  expect(net()).toBeCloseTo(19, 6);
  port.preview(moved, 2);
  expect(net()).toBeCloseTo(18, 6);
  expect(answers.at(-1)?.preview).toBe(true);
  port.preview(null, 2);
  expect(net()).toBeCloseTo(19, 6);
  expect(answers.at(-1)?.preview).toBe(false);
});

test('a preview of a plan that has changed since is ignored; a change ends a preview', () => {
  const { port, answers, net } = heard();
  port.load(doc, FLOOR, 1);
  port.preview(column, 1);
  port.change(set('job:test', 'name', 'Other'), 5);
  expect(net()).toBeCloseTo(20, 6);
  port.preview(column, 4);
  expect(net()).toBeCloseTo(20, 6);
  expect(answers.at(-1)?.tick).toBe(5);
});

test('messages that wait are answered once, with the newest tick', () => {
  const waiting: (() => void)[] = [];
  const { port, answers, net } = heard((work) => waiting.push(work));
  port.load(doc, FLOOR, 1);
  port.change(column, 2);
  port.change(moved, 3);
  expect(answers).toEqual([]);
  for (const work of waiting.splice(0)) work();
  expect(answers.map(({ tick }) => tick)).toEqual([3]);
  expect(net()).toBeCloseTo(18, 6);
});

test('what it has measured is not measured again for a price; when a preview ends it is as it was', () => {
  const { port, answers } = heard();
  const measure = () => answers.at(-1)?.takeoff.measure;
  port.load(withCells(doc, column), FLOOR, 1);
  const first = measure();
  port.preview(moved, 1);
  expect(measure()).not.toBe(first);
  port.preview(null, 1);
  expect(measure()).toEqual(first);
  const settled = measure();
  port.change(set('job:1', 'currency', 'EUR'), 2);
  expect(measure()).toBe(settled);
});

/** A clock and timers that a test moves on. `costMs` passes whenever something is timed. */
function paced(costMs: number) {
  let nowMs = 0;
  let timers: { readonly atMs: number; readonly work: () => void }[] = [];
  const pace = {
    later(work: () => void, ms: number) {
      const timer = { atMs: nowMs + ms, work };
      timers.push(timer);
      return () => {
        timers = timers.filter((each) => each !== timer);
      };
    },
    clockMs: () => (nowMs += costMs),
  };
  const port = takeoffInline((work) => work(), pace);
  const heardAll: ['totals' | 'answer', number, number | undefined][] = [];
  port.listen(
    ({ ask, takeoff }) => heardAll.push(['answer', ask, takeoff.measure.netM2]),
    ({ ask, totals }) => heardAll.push(['totals', ask, totals?.netM2]),
  );
  const rest = (): void => {
    for (const { work } of timers.splice(0)) work();
  };
  return { port, rest, take: () => heardAll.splice(0).map(([what, ask, net]) => `${what} ${ask}: ${net?.toFixed(1)}`) };
}

test('where an answer takes long, areas and lengths come at once and the rest when the hand rests', () => {
  const { port, rest, take } = paced(400);
  port.load(withCells(doc, column), FLOOR, 1);
  expect(take()).toEqual(['totals 1: 19.0', 'answer 1: 19.0']);
  port.preview(moved, 1);
  port.preview(null, 1);
  port.preview(moved, 1);
  expect(take()).toEqual(['totals 2: 18.0', 'totals 3: 19.0', 'totals 4: 18.0']);
  rest();
  expect(take()).toEqual(['answer 4: 18.0']);
  rest();
  expect(take()).toEqual([]);
});

test('where it is quick, the whole answer follows every move', () => {
  const { port, take } = paced(1);
  port.load(withCells(doc, column), FLOOR, 1);
  take();
  port.preview(moved, 1);
  port.preview(null, 1);
  expect(take()).toEqual(['answer 2: 18.0', 'answer 3: 19.0']);
});

test('asks are counted by every call, answered or not', () => {
  const { port } = heard(() => undefined);
  expect([port.load(doc, FLOOR, 1), port.change(column, 2), port.preview(moved, 2), port.preview(null, 2)]).toEqual([
    1, 2, 3, 4,
  ]);
});
