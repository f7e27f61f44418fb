import { expect, test } from 'vitest';
import { whyColumn, whySum, type WhyPart } from '../../../src/app/takeoff/whyColumn.ts';
import { feedsOf, whyKey, whyLine } from '../../../src/app/takeoff/whyLine.ts';
import { add, divide, evaluate, multiply, number, subtract, term, wholeUp } from '../../../src/takeoff/formula.ts';
import type { Formula } from '../../../src/takeoff/line.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { measured } from '../../../src/takeoff/terms.ts';
import { richJob } from '../../support/richJob.ts';

const terms = [
  measured('field', 100, 'm2'),
  measured('passes', 2, ''),
  measured('rate', 25, 'm2/h'),
  measured('strip', 4, 'm2'),
];
const column = (formula: Formula): readonly WhyPart[] => whyColumn(formula, terms, (piece) => evaluate(piece, terms));
const likely = (part: WhyPart): string => String(part.value.likely);

/** What a person with a pencil would make of the column. */
function addUp(parts: readonly WhyPart[]): number {
  const [first] = parts;
  if (!first) return Number.NaN;
  if (parts.every((part) => part.sign === 'most')) return Math.max(...parts.map((part) => part.value.likely));
  if (parts.some((part) => part.sign === 'times' || part.sign === 'over')) {
    return parts.reduce(
      (product, part) => (part.sign === 'over' ? product / part.value.likely : product * part.value.likely),
      1,
    );
  }
  return parts.reduce((sum, part) => (part.sign === 'less' ? sum - part.value.likely : sum + part.value.likely), 0);
}

test('a product within a quotient is one column', () => {
  const parts = column(divide(multiply(term('passes'), term('field')), term('rate')));
  expect(parts.map((part) => [part.sign, part.term?.name])).toEqual([
    ['times', 'passes'],
    ['times', 'field'],
    ['over', 'rate'],
  ]);
  expect(whySum(parts, likely)).toBe('2 x 100 / 25');
});

test('less a difference is more again', () => {
  const parts = column(subtract(term('field'), subtract(term('strip'), number(1))));
  expect(parts.map((part) => part.sign)).toEqual(['plus', 'less', 'plus']);
  expect(addUp(parts)).toBe(97);
});

test('a sum of one thing is that thing', () => {
  const parts = column(multiply(add(term('field')), term('passes')));
  expect(parts.every((part) => part.parts.length === 0)).toBe(true);
});

test('what is rounded up says so and keeps its own column', () => {
  const [bags] = column(add(wholeUp(divide(term('field'), term('rate'))), number(1)));
  expect(bags?.roundedUp).toBe(true);
  expect(bags?.parts).toHaveLength(2);
});

test('every line of a rich job adds up as its column says', () => {
  const { lines } = takeoff(richJob(), 'floor:ground');
  let columns = 0;
  for (const line of lines) {
    const { formula, terms: own } = line.working;
    if (formula.op === 'round' || formula.op === 'ceil' || line.quantity.likely === 0) continue;
    const parts = whyColumn(formula, own, (piece) => evaluate(piece, own));
    expect(addUp(parts), line.key).toBeCloseTo(evaluate(formula, own).likely, 6);
    columns += 1;
  }
  expect(columns).toBeGreaterThan(20);
});

test('a figure that adds lines up is explained by them', () => {
  const answer = takeoff(richJob(), 'floor:ground');
  const nets = answer.lines.filter((line) => line.code === 'netFloor');
  const key = whyKey(nets);
  expect(nets.length).toBeGreaterThan(1);
  const sum = key === null ? null : whyLine(answer, key);
  expect(sum?.key).toBe(key);
  expect(sum?.quantity.likely).toBeCloseTo(answer.measure.netM2, 6);
  expect(sum?.working.terms.map((each) => each.from)).toEqual(nets.map((line) => line.key));
});

test('a figure goes into every line that took one of its lines', () => {
  const { lines } = takeoff(richJob(), 'floor:ground');
  const fields = lines.filter((line) => line.code === 'field');
  const feeds = feedsOf(whyKey(fields) ?? '', lines);
  expect(feeds.some((line) => line.code === 'hours.machine')).toBe(true);
  expect(feeds.some((line) => line.code === 'field')).toBe(false);
  expect(feeds.length).toBeGreaterThanOrEqual(feedsOf(fields[0]?.key ?? '', lines).length);
});
