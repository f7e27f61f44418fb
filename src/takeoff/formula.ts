import type { Formula, Range, Term } from './line.ts';

type Case = keyof Range;

/** Names a term of the line. */
export const term = (name: string): Formula => ({ op: 'term', name });
export const number = (value: number): Formula => ({ op: 'number', value });
export const add = (...of: readonly Formula[]): Formula => ({ op: 'add', of });
export const multiply = (...of: readonly Formula[]): Formula => ({ op: 'multiply', of });
export const largest = (...of: readonly Formula[]): Formula => ({ op: 'max', of });
export const subtract = (left: Formula, right: Formula): Formula => ({ op: 'subtract', left, right });
export const divide = (left: Formula, right: Formula): Formula => ({ op: 'divide', left, right });
export const wholeUp = (of: Formula): Formula => ({ op: 'ceil', of });
export const round = (of: Formula): Formula => ({ op: 'round', of });
export const sumOf = (names: readonly string[]): Formula => add(...names.map(term));

/** Float sums of whole numbers may end a hair above one: 4.000000000001 bags are four. */
const HAIR = 1e-9;

/**
 * What a formula gives for its terms, in the unit of the line: low, likely and high case each by itself.
 * A name that is not among the terms gives NaN, so that a broken line shows instead of passing for zero.
 */
export function evaluate(formula: Formula, terms: readonly Term[]): Range {
  const [first] = terms;
  // Thousands of lines are one number off the plan.
  if (formula.op === 'term' && first?.name === formula.name) return first.value;
  if (isPlainSum(formula, terms)) return sumOfTerms(terms);
  const values: Values = new Map(terms.map(({ name, value }) => [name, value]));
  // What is measured and set has one value: the three cases are one, and a thousand cracks are gone through once.
  if (terms.every(({ value }) => isFixed(value))) return fixed(inCase(formula, values, 'likely'));
  return {
    low: inCase(formula, values, 'low'),
    likely: inCase(formula, values, 'likely'),
    high: inCase(formula, values, 'high'),
  };
}

/** Every term once, in order: a thousand lengths added up need no names looked up. */
function isPlainSum(formula: Formula, terms: readonly Term[]): boolean {
  if (formula.op !== 'add' || formula.of.length !== terms.length) return false;
  return formula.of.every((part, i) => part.op === 'term' && part.name === terms[i]?.name);
}

function sumOfTerms(terms: readonly Term[]): Range {
  let [low, likely, high] = [0, 0, 0];
  for (const { value } of terms) {
    low += value.low;
    likely += value.likely;
    high += value.high;
  }
  return { low, likely, high };
}

/** By name: a line over a thousand cracks looks a thousand of them up. */
type Values = ReadonlyMap<string, Range>;

function inCase(formula: Formula, values: Values, which: Case): number {
  switch (formula.op) {
    case 'term':
      return values.get(formula.name)?.[which] ?? Number.NaN;
    case 'number':
      return formula.value;
    case 'add': {
      let sum = 0;
      for (const part of formula.of) sum += inCase(part, values, which);
      return sum;
    }
    case 'multiply': {
      let product = 1;
      for (const part of formula.of) product *= inCase(part, values, which);
      return product;
    }
    case 'max':
      return Math.max(...formula.of.map((part) => inCase(part, values, which)));
    case 'subtract':
      return inCase(formula.left, values, which) - inCase(formula.right, values, which);
    case 'divide':
      return inCase(formula.left, values, which) / inCase(formula.right, values, which);
    case 'ceil':
      return Math.ceil(inCase(formula.of, values, which) - HAIR);
    case 'round':
      return Math.round(inCase(formula.of, values, which));
  }
}

function isFixed({ low, likely, high }: Range): boolean {
  return low === likely && likely === high;
}

/** A range whose three values are one: what is measured, counted or set. */
export function fixed(value: number): Range {
  return { low: value, likely: value, high: value };
}
