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

test('what it has measured is not measured again: not for a price, and not when a preview ends', () => {
  const { port, answers } = heard();
  const measure = () => answers.at(-1)?.takeoff.measure;
  port.load(withCells(doc, column), FLOOR, 1);
  const first = measure();
  port.preview(moved, 1);
  expect(measure()).not.toBe(first);
  port.preview(null, 1);
  expect(measure()).toBe(first);
  port.change(set('job:1', 'currency', 'EUR'), 2);
  expect(measure()).toBe(first);
});
