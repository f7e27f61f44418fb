import { expect, test } from 'vitest';
import { measureMemory } from '../../../src/geometry/measureMemory.ts';
import { takeoff, takeoffTotals } from '../../../src/takeoff/takeoff.ts';
import {
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  rectangle,
  restCells,
  slabCells,
  withCells,
} from '../../support/jobPlans.ts';

test('a finding that is put down where the hand had drawn it is counted under its own id', () => {
  const floor = docOf(jobCells(), slabCells(rectangle(6000, 5000)), restCells({}));
  const withOne = (id: `finding:${string}`) =>
    withCells(floor, findingCells(id, 'oil_light', rectangle(1000, 1000, [1000, 3000])));
  const memory = measureMemory();
  takeoff(floor, FLOOR, memory);
  takeoffTotals(withOne('finding:draft'), FLOOR, memory);
  const put = takeoff(withOne('finding:F1'), FLOOR, memory);
  expect(put).toEqual(takeoff(withOne('finding:F1'), FLOOR));
  expect(put.lines.map(({ key }) => key)).toContain('hours.finding.oil_light|rest');
});
