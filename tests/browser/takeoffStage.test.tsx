/** The Takeoff stage in a real browser: the ways to read it, its sorting, what it hands to a spreadsheet, its bars. */
import Papa from 'papaparse';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { measureFloor, showJob } from '../../src/app/plan.ts';
import { goTo, restSession, session, showFloor } from '../../src/app/session.ts';
import { readAs } from '../../src/app/takeoff/wayToRead.ts';
import { applyCells, type Doc } from '../../src/model/doc.ts';
import { planStore } from '../../src/model/store.ts';
import { defaultMoneyCells, defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { FLOOR, set, withCells } from '../support/jobPlans.ts';
import { kitchen, warehouse } from '../support/wholeJobs.ts';

let root: Root;
const copied = vi.fn<(text: string) => Promise<void>>(() => Promise.resolve());

function start(doc: Doc): void {
  const store = planStore({ doc: applyCells(doc, [...defaultRateCells(), ...defaultMoneyCells()]) });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: null });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  goTo('takeoff');
  root.render(<JobScreen />);
}

beforeEach(async () => {
  await page.viewport(1440, 900);
  document.body.innerHTML = '<div id="root"></div>';
  const place = document.getElementById('root');
  if (!place) throw new Error('no place');
  root = createRoot(place);
  // A page under test has no right to the clipboard of the machine.
  Object.defineProperty(navigator, 'clipboard', { configurable: true, value: { writeText: copied } });
});

afterEach(() => {
  root.unmount();
  readAs('zones');
  showJob(null);
  restSession();
  copied.mockClear();
});

const read = (name: string): Promise<void> =>
  page.getByRole('group', { name: 'Read it by' }).getByRole('button', { name, exact: true }).click();
const rowNames = (): string[] =>
  [...document.querySelectorAll('tbody th[scope="row"]')].map((th) => th.textContent ?? '');

test('work as a list has a heading for each zone, its crew, and what is paid at the foot', async () => {
  start(warehouse());
  await read('Work');
  await expect.element(page.getByRole('rowheader', { name: /^Crew hours on site, Week 2/ })).toBeVisible();
  await expect.element(page.getByRole('rowheader', { name: 'Person-hours, paid' })).toBeVisible();
  await expect.element(page.getByRole('rowheader', { name: /^Price at a margin of 25 %/ })).toBeVisible();
});

test('the floor beside the paid hours is that of the zones with hours: a held one is not in it', async () => {
  start(withCells(warehouse(), set('finding:F1', 'kind', 'mastic_black')));
  await read('Work');
  await expect.element(page.getByRole('rowheader', { name: 'Person-hours, paid' })).toBeVisible();
  const m2Of = (row: string): string | undefined =>
    [...document.querySelectorAll('tr')]
      .map((tr) => [...tr.cells].map((cell) => cell.textContent).join(' | '))
      .find((text) => text.includes(row))
      ?.match(/[\d,]+\.\d\d(?=\s*m²)/)?.[0];
  expect(m2Of('West aisles')).toBeDefined();
  expect(m2Of('Person-hours, paid')).toBe(m2Of('West aisles'));
});

test('a job without phases is one visit, and is called so', async () => {
  start(kitchen());
  await read('Phases');
  await expect.element(page.getByRole('rowheader', { name: /^All in one go/ })).toBeVisible();
});

test('a heading sorts its column down, up, and back into the order of the work, and says so', async () => {
  start(kitchen());
  await read('Work');
  const likely = page.getByRole('columnheader', { name: 'Likely' });
  await expect.element(likely).toBeVisible();
  const inOrder = rowNames();
  const press = (): Promise<void> => page.getByRole('button', { name: 'Likely', exact: true }).click();
  await press();
  await expect.element(likely).toHaveAttribute('aria-sort', 'descending');
  expect(rowNames()).not.toEqual(inOrder);
  await press();
  await expect.element(likely).toHaveAttribute('aria-sort', 'ascending');
  await press();
  await expect.element(likely).not.toHaveAttribute('aria-sort');
  expect(rowNames()).toEqual(inOrder);
});

test('what is shown is copied, in the order that is shown', async () => {
  start(kitchen());
  await read('Work');
  await page.getByRole('button', { name: 'High, h', exact: true }).click();
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await expect.poll(() => copied.mock.calls.length).toBe(1);
  const [head, ...rows] = Papa.parse<string[]>(copied.mock.calls[0]?.[0] ?? '', { delimiter: '\t' }).data;
  expect(head).toEqual(['Where', 'Work', 'Quantity', 'Unit', 'Low', 'Likely', 'High', 'Unit']);
  expect(new Set(rows.map((row) => row.length))).toEqual(new Set([8]));
  const inZone = rows.filter((row) => row[0] === rows[0]?.[0]).slice(1);
  const high = inZone.map((row) => Number(row[6]));
  expect(high).toEqual(high.toSorted((a, b) => b - a));
  expect(inZone.map((row) => row[1])).toEqual(rowNames().slice(1, 1 + inZone.length));
});

test('a bar for every row, and a press on bar or figure asks why', async () => {
  start(warehouse());
  await read('Drivers');
  const money = page.getByRole('region', { name: 'Where the money goes' });
  await expect.element(money).toBeVisible();
  const rows = (): number => money.element().querySelectorAll('tbody tr').length;
  // Two bars a row: from low to high, and the likely in it.
  await expect.poll(() => money.element().querySelectorAll('tbody svg rect').length).toBe(rows() * 2);
  const drawing = money.element().querySelector('tbody svg')?.parentElement;
  const box = drawing?.getBoundingClientRect();
  const at = { bubbles: true, clientX: (box?.x ?? 0) + 20, clientY: (box?.y ?? 0) + 5 };
  drawing?.dispatchEvent(new MouseEvent('click', at));
  await expect.poll(() => session().why).toContain('money.');
  await expect.element(page.getByRole('button', { name: 'Close Why' })).toBeVisible();
  await page.getByRole('button', { name: 'Close Why' }).click();
  await money.getByRole('button', { name: /^Why .*: Labour/ }).click();
  await expect.poll(() => session().why).toContain('money.labour');
});
