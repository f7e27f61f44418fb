import { expect, test } from 'vitest';
import { judgeReading, limitText } from '../../../src/app/handover/judgeReading.ts';
import { readingOf, surveyReadings } from '../../../src/takeoff/rates/surveyReadings.ts';

function row(id: string) {
  const found = readingOf(id);
  if (!found) throw new Error(`no reading ${id}`);
  return found;
}

// 75 % is the common default for ASTM F2170 and of BS 8203 (second-hand); pH 7 to 10 from ASTM F710, from memory.
test.each([
  ['rh_in_situ', 75, true],
  ['rh_in_situ', 75.1, false],
  ['pull_off_eu', 1.5, true],
  ['pull_off_eu', 1.49, false],
  ['ph', 7, true],
  ['ph', 10, true],
  ['ph', 10.5, false],
  ['mohs', 5, null],
  ['plastic_sheet', 1, null],
] as const)('%s of %d', (id, value, within) => {
  expect(judgeReading(row(id), value)).toBe(within);
});

test('nothing read is not judged', () => {
  expect(judgeReading(row('rh_in_situ'), null)).toBeNull();
});

test('a limit is a phrase; a reading that is only kept has none', () => {
  expect(limitText(row('rh_in_situ'))).toBe('at most 75 %');
  expect(limitText(row('ph'))).toBe('from 7 to 10 pH');
  expect(limitText(row('rebound'))).toBe('');
});

test('every reading says where it comes from', () => {
  expect(surveyReadings.length).toBeGreaterThan(20);
  for (const reading of surveyReadings) expect(reading.source, reading.id).not.toBe('');
});
