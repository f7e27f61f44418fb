/** Sums of Why in feet: they add up by eye, or stand in metric and say so. 1 ft = 0.3048 m, 1 in = 25.4 mm (NIST SP 811). */
import { expect, test } from 'vitest';
import { shownTerms, unitsOfSum } from '../../../src/app/takeoff/shownTerms.ts';
import { divide, fixed, multiply, number, term, wholeUp } from '../../../src/takeoff/formula.ts';
import type { Term } from '../../../src/takeoff/line.ts';
import { makeLine } from '../../../src/takeoff/makeLine.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FLOOR } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

function made(name: string, value: number, unit: string): Term {
  return { name, value: fixed(value), unit, source: 'the plan', provenance: 'measured', fromMemory: false, from: null };
}

const base = { trade: 'hours', zone: null, records: [] } as const;

test('metres over metres an hour are hours in feet as well', () => {
  const terms = [made('edge', 30.48, 'm'), made('rate', 3.048, 'm/h')];
  const line = makeLine({ ...base, code: 'a', unit: 'h', formula: divide(term('edge'), term('rate')), terms });
  expect(unitsOfSum(line, 'imperial')).toBe('imperial');
  const feet = shownTerms(terms, 'imperial').map(({ value }) => value.likely);
  expect(feet).toEqual([expect.closeTo(100, 9), expect.closeTo(10, 9)]);
});

test('a width by a width is a whole number in inches as well', () => {
  const terms = [made('edge', 30.48, 'm'), made('strip', 254, 'mm'), made('cup', 127, 'mm')];
  const formula = multiply(term('edge'), wholeUp(divide(term('strip'), term('cup'))));
  expect(unitsOfSum(makeLine({ ...base, code: 'a', unit: 'm', formula, terms }), 'imperial')).toBe('imperial');
});

test('millimetres over a thousand hold for metres alone', () => {
  const terms = [made('edge', 30.48, 'm'), made('strip', 254, 'mm')];
  const formula = divide(multiply(term('edge'), term('strip')), number(1000));
  const line = makeLine({ ...base, code: 'a', unit: 'm2', formula, terms });
  expect([unitsOfSum(line, 'imperial'), unitsOfSum(line, 'metric')]).toEqual(['metric', 'metric']);
});

test('of a rich job most hours add up in feet, and dust by its density does not', () => {
  const { lines } = takeoff(richJob(), FLOOR);
  const hours = lines.filter(({ trade }) => trade === 'hours');
  const inFeet = hours.filter((line) => unitsOfSum(line, 'imperial') === 'imperial');
  expect(inFeet.length / hours.length).toBeGreaterThan(0.9);
  const dust = lines.find(({ code, quantity }) => code === 'dustMass' && quantity.likely > 0);
  expect(dust && unitsOfSum(dust, 'imperial')).toBe('metric');
});
