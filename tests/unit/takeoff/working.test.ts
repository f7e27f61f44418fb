import { describe, expect, test } from 'vitest';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { evaluate } from '../../../src/takeoff/formula.ts';
import type { Formula, Line } from '../../../src/takeoff/line.ts';
import { defaultMoneyCells } from '../../../src/takeoff/rates/defaults.ts';
import { docOf, FLOOR, jobCells, rectangle, set, slabCells, withCells } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const jobs = [
  ['hall with everything', richJob()],
  ['bare room', docOf(jobCells(), slabCells(rectangle(6_500, 6_000)))],
] as const;

function names(formula: Formula): string[] {
  switch (formula.op) {
    case 'term':
      return [formula.name];
    case 'number':
      return [];
    case 'add':
    case 'multiply':
    case 'max':
      return formula.of.flatMap(names);
    case 'subtract':
    case 'divide':
      return [...names(formula.left), ...names(formula.right)];
    case 'ceil':
    case 'round':
      return names(formula.of);
  }
}

/** The engine sums the field on rings of its own; its working subtracts: they agree to 1e-4 of the net floor. */
function tolerance(line: Line): number {
  return line.code === 'field' ? 0.05 : 1e-9 + Math.abs(line.quantity.high) * 1e-12;
}

describe.each(jobs)('every line of %s', (_, doc) => {
  const { lines, faults } = takeoff(doc, FLOOR);

  test('is there and has a key of its own', () => {
    expect(lines.length).toBeGreaterThan(30);
    expect(new Set(lines.map((line) => line.key)).size).toBe(lines.length);
    expect(faults.filter((fault) => fault.code === 'clipFailed')).toEqual([]);
  });

  test('comes out again from its own terms', () => {
    for (const line of lines) {
      const again = evaluate(line.working.formula, line.working.terms);
      for (const which of ['low', 'likely', 'high'] as const) {
        expect(Math.abs(again[which] - line.quantity[which]), `${line.key} ${which}`).toBeLessThan(tolerance(line));
      }
    }
  });

  test('uses each of its terms, names each once, and says where each is from', () => {
    for (const line of lines) {
      const used = new Set(names(line.working.formula));
      const given = line.working.terms.map((term) => term.name);
      expect(new Set(given).size, line.key).toBe(given.length);
      expect([...used].toSorted(), line.key).toEqual(given.toSorted());
      for (const term of line.working.terms) expect(term.source, `${line.key} ${term.name}`).not.toBe('');
    }
  });

  test('rises from low over likely to high', () => {
    for (const { key, quantity } of lines) {
      expect(quantity.low, key).toBeLessThanOrEqual(quantity.likely);
      expect(quantity.likely, key).toBeLessThanOrEqual(quantity.high);
      expect(Number.isFinite(quantity.high), key).toBe(true);
      expect(quantity.low, key).toBeGreaterThanOrEqual(0);
    }
  });

  test('a term taken from another line is what that line says', () => {
    const byKey = new Map(lines.map((line) => [line.key, line]));
    for (const line of lines) {
      for (const term of line.working.terms.filter((each) => each.source === 'line' && each.unit !== 'h')) {
        const source = byKey.get(term.from ?? '');
        expect(source, `${line.key} ${term.name}`).toBeDefined();
        expect(term.value, `${line.key} ${term.name}`).toEqual(source?.quantity);
      }
    }
  });
});

/** Two persons on a breaker: the second one's hours come on top. */
function hours2(lines: readonly Line[]): number {
  return lines
    .filter((line) => line.code === 'hours.finding.hollow')
    .reduce((sum, line) => sum + line.quantity.likely, 0);
}

describe('sums', () => {
  const { lines, measure } = takeoff(richJob(), FLOOR);
  const sum = (code: string): number =>
    lines.filter((line) => line.code === code && line.zone !== null).reduce((s, line) => s + line.quantity.likely, 0);
  const one = (code: string): number => lines.find((line) => line.code === code)?.quantity.likely ?? Number.NaN;

  test('zones and rest make the net floor; field, strip and hand areas make the net floor', () => {
    expect(sum('netFloor')).toBeCloseTo(measure.netM2, 6);
    expect(sum('netFloor')).toBeCloseTo(one('netFloorAll'), 3);
    expect(sum('field') + sum('strip') + sum('handArea')).toBeCloseTo(measure.netM2, 2);
  });

  test('machine and hand side by side and the hours of the site make the crew hours', () => {
    const site = one('hours.setUp') + one('hours.moves') + one('hours.tearDown') + one('hours.dailyStart');
    expect(one('hours.work') + one('hours.besidesCrew') + site).toBeCloseTo(one('hours.crew'), 9);
    expect(one('hours.besidesCrew')).toBeCloseTo(sum('hours.besides') / 2, 9);
    expect(sum('hours.machineAll') + sum('hours.handAll') + sum('hours.besides')).toBeCloseTo(sum('hours.zone'), 9);
    expect(one('hours.work')).toBeGreaterThanOrEqual(Math.max(sum('hours.machineAll'), sum('hours.handAll')) - 1e-9);
    // Nobody works for nothing: paid hours cover the person-hours of every task.
    expect(one('hours.person')).toBeGreaterThanOrEqual(sum('hours.zonePerson'));
  });

  test('a crew of one does machine and hand work one after the other', () => {
    const alone = takeoff(withCells(richJob(), defaultMoneyCells(), set('pricing:job', 'crew', 1)), FLOOR).lines;
    const hours = (code: string): number =>
      alone.filter((line) => line.code === code).reduce((s, line) => s + line.quantity.likely, 0);
    expect(hours('hours.work')).toBeCloseTo(hours('hours.machineAll') + hours('hours.handAll') + hours2(alone), 6);
  });

  test('shares of the zones make the price to the cent, in each case', () => {
    const price = lines.find((line) => line.code === 'money.price');
    for (const which of ['low', 'likely', 'high'] as const) {
      const shares = lines.filter((line) => line.code === 'money.priceShare').map((line) => line.quantity[which]);
      expect(shares.every(Number.isInteger)).toBe(true);
      expect(shares.reduce((s, share) => s + share, 0)).toBe(price?.quantity[which]);
    }
  });
});
