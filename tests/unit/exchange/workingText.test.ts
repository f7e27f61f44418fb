import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formulaText, workingText } from '../../../src/exchange/workingText.ts';
import { add, divide, evaluate, largest, multiply, number, subtract } from '../../../src/takeoff/formula.ts';
import type { Formula } from '../../../src/takeoff/line.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { measured } from '../../../src/takeoff/terms.ts';
import { FLOOR } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const anyFormula: fc.Arbitrary<Formula> = fc.letrec<{ formula: Formula }>((tie) => ({
  formula: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.integer({ min: 1, max: 9 }).map(number),
    fc.array(tie('formula'), { minLength: 1, maxLength: 3 }).map((of) => add(...of)),
    fc.array(tie('formula'), { minLength: 1, maxLength: 3 }).map((of) => multiply(...of)),
    fc.tuple(tie('formula'), tie('formula')).map(([left, right]) => subtract(left, right)),
    fc.tuple(tie('formula'), tie('formula')).map(([left, right]) => divide(left, right)),
  ),
})).formula;

/** The text worked out by the arithmetic of the language itself. */
function workedOut(text: string): number {
  return Number(runInNewContext(text.replaceAll(' x ', ' * ')));
}

function isSame(text: number, right: number): boolean {
  if (!Number.isFinite(right)) return !Number.isFinite(text);
  return Math.abs(text - right) <= 1e-9 * Math.max(1, Math.abs(right));
}

test('a formula as text, typed into a calculator, gives what the formula gives', () => {
  fc.assert(
    fc.property(anyFormula, (formula) => {
      const right = evaluate(formula, []).likely;
      const text = workedOut(formulaText(formula, []));
      expect(isSame(text, right), `${text} for ${right}`).toBe(true);
    }),
  );
});

test('terms stand with their numbers, units and sources', () => {
  const terms = [measured('field', 40.2345678, 'm2'), { ...measured('rate', 25, 'm2/h'), source: 'a table' }];
  expect(formulaText(divide({ op: 'term', name: 'field' }, { op: 'term', name: 'rate' }), terms)).toBe('40.2346 / 25');
  expect(formulaText(largest(number(1), number(2)), [])).toBe('largest of (1, 2)');
});

test('every line of a floor has its working, and every number in it a source', () => {
  const of = takeoff(richJob(), FLOOR);
  const text = workingText(richJob(), of);
  expect(text.split('\n\n')).toHaveLength(of.lines.length);
  expect(text).not.toMatch(/undefined|NaN|null/);
  expect(text).toMatch(/^Machine passes, .*hall {2}[\d.]+ h \([\d.]+ to [\d.]+\)$/m);
  expect(text).toMatch(/^ {4}rate {2}[\d.]+ m2\/h \([\d.]+ to [\d.]+\) {2}common practice, no source$/m);
});
