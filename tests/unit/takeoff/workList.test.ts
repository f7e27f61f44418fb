/** The takeoff as a list of work. Sums and order are arithmetic; that a held zone has no hours is a rule of the house. */
import { expect, test } from 'vitest';
import type { Takeoff } from '../../../src/takeoff/port.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { TIME_OF_WORK, workList, type WorkGroup } from '../../../src/takeoff/workList.ts';
import { workshopDoc } from '../../../demo/workshop.ts';
import { recordsOf } from '../../../src/model/doc.ts';
import { FLOOR } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';
import { kitchen, showroom, warehouse } from '../../support/wholeJobs.ts';

const workshop = (): Takeoff => {
  const doc = workshopDoc('0'.repeat(64));
  return takeoff(doc, recordsOf(doc, 'floor')[0]?.id ?? '');
};
const JOBS: readonly (readonly [string, () => Takeoff])[] = [
  ['warehouse', () => takeoff(warehouse(), FLOOR)],
  ['kitchen', () => takeoff(kitchen(), FLOOR)],
  ['showroom', () => takeoff(showroom(), FLOOR)],
  ['rich job', () => takeoff(richJob(), FLOOR)],
  ['workshop', workshop],
];
const CASES = ['low', 'likely', 'high'] as const;

function sumOfRows(group: WorkGroup, which: (typeof CASES)[number]): number {
  return group.rows.reduce((sum, row) => sum + (row.hours.quantity?.[which] ?? 0), 0);
}

test.each(JOBS)('%s: the rows of every group add up to its heading, by zone and by phase', (_name, job) => {
  const result = job();
  for (const by of ['zone', 'phase'] as const) {
    const groups = workList(result, by);
    expect(groups.length).toBeGreaterThan(0);
    for (const group of groups.filter(({ hours }) => hours !== null)) {
      for (const which of CASES) {
        expect(sumOfRows(group, which), `${group.key} ${which}`).toBeCloseTo(group.hours?.quantity?.[which] ?? -1, 2);
      }
    }
  }
});

test.each(JOBS)('%s: zones and phases hold the same hours, and the crew groups what is paid', (_name, job) => {
  const result = job();
  const hours = (by: 'zone' | 'phase', kinds: readonly string[]): number =>
    workList(result, by)
      .filter(({ kind }) => kinds.includes(kind))
      .reduce((sum, group) => sum + (group.hours?.quantity?.likely ?? 0), 0);
  expect(hours('phase', ['phase'])).toBeCloseTo(hours('zone', ['zone']), 9);
  const crew = result.lines.find(({ code }) => code === 'hours.crew')?.quantity.likely ?? -1;
  expect(hours('zone', ['site'])).toBeCloseTo(crew, 9);
  expect(hours('phase', ['site'])).toBeCloseTo(crew, 9);
});

test('two phases stand one after the other, each before its crew; without phases there is one of each', () => {
  const kinds = (result: Takeoff): string[] =>
    workList(result, 'phase').map(({ kind, phase }) => `${kind} ${phase ?? '-'}`);
  expect(kinds(takeoff(warehouse(), FLOOR))).toEqual([
    'phase phase:a',
    'site phase:a',
    'phase phase:b',
    'site phase:b',
  ]);
  expect(kinds(takeoff(kitchen(), FLOOR))).toEqual(['phase -', 'site -']);
});

test('a held zone has its floor and no hours', () => {
  const held = workList(workshop(), 'zone').find((group) => group.held !== null);
  expect(held).toMatchObject({ hours: null, rows: [], held: 'asbestos' });
  expect(held?.netFloor?.quantity?.likely).toBeGreaterThan(0);
});

test('hours stand beside what they are spent on: a field once however many passes, edge by the metre, crack by its run', () => {
  const groups = workList(workshop(), 'phase');
  const row = (code: string) => groups[0]?.rows.find((each) => each.code === code)?.worked;
  const line = (code: string) => {
    const lines = workshop().lines.filter((each) => each.code === code && each.zone === 'zone:hall');
    return lines.reduce((sum, each) => sum + each.quantity.likely, 0);
  };
  expect(row('hours.machine')).toMatchObject({ unit: 'm2' });
  expect(row('hours.machine')?.quantity.likely).toBeCloseTo(line('field'), 9);
  expect(row('hours.machine')?.lines.map(({ key }) => key)).toEqual(['field|zone:hall']);
  expect(row('hours.edge')).toMatchObject({ unit: 'm' });
  expect(row('hours.edge')?.quantity.likely).toBeCloseTo(line('edge'), 9);
  expect(row('hours.crackFill')).toMatchObject({ unit: 'm' });
});

test('what night or an occupied building adds is a row of its own', () => {
  const rows = workList(takeoff(showroom(), FLOOR), 'zone')[0]?.rows ?? [];
  const more = rows.find(({ code }) => code === TIME_OF_WORK);
  expect(more?.hours.quantity?.likely).toBeGreaterThan(0);
  expect(workList(takeoff(kitchen(), FLOOR), 'zone')[0]?.rows.some(({ code }) => code === TIME_OF_WORK)).toBe(false);
});
