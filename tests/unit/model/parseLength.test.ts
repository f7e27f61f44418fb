import { describe, expect, it } from 'vitest';
import { parseLength } from '../../../src/model/parseLength.ts';
import type { LengthUnit } from '../../../src/model/units.ts';

const ft = (feet: number, inches = 0): number => feet * 304.8 + inches * 25.4;

describe('parseLength reads what people type', () => {
  const cases: readonly [typed: string, field: LengthUnit, mm: number][] = [
    ["12'6", 'ft', ft(12, 6)],
    [`12'6"`, 'ft', ft(12, 6)],
    [`12' 6 1/2"`, 'ft', ft(12, 6.5)],
    [`12'-6 1/2"`, 'ft', ft(12, 6.5)],
    [`12'6-1/2"`, 'ft', ft(12, 6.5)],
    ['12-6.5', 'ft', ft(12, 6.5)],
    ['12-6-1/2', 'ft', ft(12, 6.5)],
    ['12 6', 'ft', ft(12, 6)],
    ['12 6 1/2', 'ft', ft(12, 6.5)],
    ['12 6"', 'ft', ft(12, 6)],
    ['12ft 6in', 'm', ft(12, 6)],
    ['12 ft. 6 in.', 'm', ft(12, 6)],
    ['12 Feet 6 Inches', 'm', ft(12, 6)],
    ['12', 'ft', ft(12)],
    ["12'", 'm', ft(12)],
    ['12.5', 'ft', ft(12.5)],
    ['12 1/2', 'ft', ft(12.5)],
    ['6 1/2"', 'ft', ft(0, 6.5)],
    ['6-1/2"', 'ft', ft(0, 6.5)],
    ['1/2"', 'ft', 12.7],
    ['6½"', 'ft', ft(0, 6.5)],
    ['12′ 6½″', 'ft', ft(12, 6.5)],
    ['12’ 6”', 'ft', ft(12, 6)],
    ["12' 6''", 'ft', ft(12, 6)],
    ['6 1/2', 'in', ft(0, 6.5)],
    ['3.81m', 'ft', 3810],
    ['3,81 m', 'ft', 3810],
    ['3.81', 'm', 3810],
    ['381 cm', 'm', 3810],
    ['3 m 81 cm', 'm', 3810],
    ['3 m 8 cm 1 mm', 'm', 3081],
    ['3810', 'mm', 3810],
    ['3 810 mm', 'm', 3810],
    ['3 810', 'mm', 3810],
    ['1,234.5 mm', 'm', 1234.5],
    ['1.234,5 mm', 'm', 1234.5],
    ['0,125', 'm', 125],
    ['.5', 'm', 500],
    ['0', 'm', 0],
  ];
  it.each(cases)('%s in a field in %s is %d mm', (typed, field, mm) => {
    expect(parseLength(typed, field)).toEqual({ ok: true, mm: Math.round(mm * 320) / 320 });
  });
});

describe('parseLength refuses what can be read two ways or not at all', () => {
  const cases: readonly [typed: string, field: LengthUnit, fault: string, what: string][] = [
    ['', 'm', 'empty', ''],
    ['   ', 'm', 'empty', ''],
    ['twelve', 'ft', 'notALength', 'twelve'],
    ['12 yards', 'ft', 'notALength', 'yards'],
    ['1.2.3', 'm', 'notALength', '1.2.3'],
    ["'", 'ft', 'notALength', "'"],
    ['-3 m', 'm', 'negative', '-3 m'],
    ['1,234', 'm', 'ambiguousComma', '1,234'],
    ['12-1/2', 'ft', 'ambiguousFraction', '12-1/2'],
    ['12 6', 'm', 'twoNumbers', '12 6'],
    ['12-6', 'mm', 'twoNumbers', '12 6'],
    ['12 ft 3 m', 'm', 'unitsMixed', '12 3'],
    ['81 cm 3 m', 'm', 'unitsMixed', '81 3'],
    ['3 m 81', 'm', 'unitsMixed', '3 81'],
    [`12' 14"`, 'ft', 'inchesOver12', '14'],
    [`12.5' 6"`, 'ft', 'brokenFeetWithInches', '12.5'],
    ['1/0"', 'ft', 'divideByZero', '1/0'],
    ['5551234567', 'm', 'tooLong', '5551234567'],
    ['12..6', 'ft', 'notALength', '12..6'],
    ['=1+1', 'm', 'notALength', '=1+1'],
  ];
  it.each(cases)('%s in a field in %s: %s', (typed, field, fault, what) => {
    expect(parseLength(typed, field)).toEqual({ ok: false, fault, what });
  });
});
