import axe from 'axe-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page, userEvent } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { measureFloor, showJob, undo } from '../../src/app/plan.ts';
import { goTo, openPanel, restSession, showFloor } from '../../src/app/session.ts';
import { ratesCsv } from '../../src/exchange/rateCsv.ts';
import { applyCells, type Doc } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { defaultMachine } from '../../src/takeoff/fleet.ts';
import { defaultMoneyCells, defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { rateBook } from '../../src/takeoff/rates/rateBook.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { docOf, FLOOR, jobCells, recipeCells, record, rectangle, slabCells, zoneCells } from '../support/jobPlans.ts';

let root: Root;
let store: PlanStore;

/** A job with one machine whose copy of two rows is of an older book. */
function job(): Doc {
  const machine = defaultMachine('grinder_small');
  if (!machine) throw new Error('no machine');
  const plain = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8_000)),
    zoneCells('zone:1', rectangle(10_000, 8_000), { recipe: 'recipe:a' }),
    record('machine:a', { ...machine, name: 'Our small one' }),
    recipeCells('a', { method: 'grinder_small', machine: 'machine:a' }),
  );
  return applyCells(plain, [
    ...defaultRateCells(),
    ...defaultMoneyCells(),
    ['rate:labour-edge_hand', 'likely', 9],
    ['rate:labour-edge_hand', 'edition', '00000001'],
    ['rate:labour-corner', 'likely', 4],
    ['rate:labour-corner', 'edition', '00000001'],
  ]);
}

beforeEach(async () => {
  await page.viewport(1440, 900);
  document.body.innerHTML = '<div id="root"></div>';
  const place = document.getElementById('root');
  if (!place) throw new Error('no place');
  root = createRoot(place);
  store = planStore({ doc: job() });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: null });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  root.render(<JobScreen />);
  goTo('takeoff');
  openPanel('rates');
});

afterEach(() => {
  root.unmount();
  showJob(null);
  restSession();
});

const rate = (code: string) => rateBook(store.getState()).rate(code);
const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
const inBook = (role: 'status' | 'alert') => page.getByRole('dialog').getByRole(role);
const field = (name: string) => page.getByRole('textbox', { name, exact: true });

async function typeIn(name: string, text: string): Promise<void> {
  await field(name).fill(text);
  await userEvent.keyboard('{Tab}');
}

async function choose(name: string, text: string): Promise<void> {
  await expect.element(button('Open CSV')).toBeVisible();
  const input = document.querySelector<HTMLInputElement>('input[type=file]');
  if (!input) throw new Error('no file button');
  const files = new DataTransfer();
  files.items.add(new File([text], name, { type: 'text/csv' }));
  input.files = files.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
}

test('a rate is changed in its place, is marked as own with the book beside it, and goes back', async () => {
  await button(/^Edges and details/).click();
  await button('Change: Drain or pit frame').click();
  await typeIn('Likely', '12');
  await field('Where the figure comes from').fill('three jobs of last year');
  await button('Keep this rate').click();
  await expect
    .poll(() => rate('labour/drain'))
    .toMatchObject({ likely: 12, provenance: 'own', source: 'three jobs of last year' });
  await expect.poll(() => document.body.textContent).toContain('three jobs of last year. Book: 6, 10, 20');
  await button('Reset to the book: Drain or pit frame').click();
  await expect.poll(() => rate('labour/drain')).toMatchObject({ likely: 10, provenance: 'P' });
  await inBook('status').getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => rate('labour/drain').likely).toBe(12);
});

test('figures that do not rise are told in words, and nothing is kept', async () => {
  await button('Change: Planetary walk-behind grinder to 550 mm').click();
  await typeIn('Low', '90');
  await button('Keep this rate').click();
  await expect.element(inBook('alert')).toHaveTextContent('have to rise in that order');
  await button(/^Edges and details/).click();
  // Not left: what was typed would be lost.
  await expect.element(page.getByRole('group', { name: /^Rate: Planetary/ })).toBeVisible();
  expect(rate('methods/grinder_small').low).toBe(15);
});

test('a newer book is offered row by row: take one, leave the other, undo', async () => {
  const banner = page.getByRole('region', { name: 'The rate book has changed in 2 rows' });
  await expect.element(banner).toBeVisible();
  expect(rate('labour/edge_hand').likely).toBe(9);
  await banner.getByRole('button', { name: 'See them' }).click();
  await button('Take the book’s row: Edge strip, handheld grinder, strip to 200 mm').click();
  await expect.poll(() => rate('labour/edge_hand').likely).toBe(15);
  await button('Leave as it is: Inside corner by hand').click();
  await expect.poll(() => document.body.textContent).not.toContain('The rate book has changed');
  expect(rate('labour/corner').likely).toBe(4);
  undo();
  await expect.poll(() => document.body.textContent).toContain('The rate book has changed in 1 row');
});

test('a job whose book is newer says so when it is opened, and leads there', async () => {
  openPanel(null);
  const notice = page.getByText(
    'The rate book has changed in 2 rows. This job goes on with the figures it was priced with.',
  );
  await expect.element(notice).toBeVisible();
  await button('See them').click();
  await expect.element(page.getByRole('dialog', { name: 'Rate book of this job' })).toBeVisible();
});

test('your own figure is passed by when everything else is taken', async () => {
  await button(/^Edges and details/).click();
  await button('Change: Inside corner by hand').click();
  await typeIn('Likely', '4.5');
  await button('Keep this rate').click();
  await expect.poll(() => rate('labour/corner')).toMatchObject({ likely: 4.5, provenance: 'own' });
  await button('Take all').click();
  await expect.poll(() => rate('labour/edge_hand').likely).toBe(15);
  expect(rate('labour/corner').likely).toBe(4.5);
});

test('a machine gets a rate of its own, which its hours are worked out with', async () => {
  await button('Machines of this job').click();
  await button('Change: Our small one').click();
  await typeIn('Low', '30');
  await typeIn('High', '70');
  await typeIn('Likely', '50');
  await button('Keep this rate').click();
  await expect.poll(() => rateBook(store.getState()).methodRate('grinder_small', 'machine:a').likely).toBe(50);
  await expect.poll(() => document.body.textContent).toMatch(/Our small one.*Your own figure/);
});

test('a table is read from a file, or refused with a sentence for each bad line', async () => {
  await choose('bad.csv', 'Code,Unit,Low,Likely,High\nlabour/edge_hand,m/h,9,8,7\nlabour/none,m/h,1,2,3');
  const alert = inBook('alert');
  await expect.element(alert).toHaveTextContent('Line 2: low, likely and high have to rise in that order.');
  await expect.element(alert).toHaveTextContent('Line 3: no rate has the code "labour/none".');
  expect(rate('labour/edge_hand').likely).toBe(9);

  const csv = ratesCsv(store.getState(), 'metric').replace(
    'labour/drain,Drain or pit frame,min each,6,10,20',
    'labour/drain,Drain or pit frame,min each,6,11,20',
  );
  await choose('ours.csv', csv);
  await expect.element(inBook('status')).toHaveTextContent('1 rate taken from ours.csv.');
  await expect.poll(() => rate('labour/drain')).toMatchObject({ likely: 11, provenance: 'own' });
  await expect.poll(() => document.querySelector('[role=alert]')).toBeNull();
});

test('words are found in every table, those to look up too', async () => {
  await field('Find a rate').fill('asbestos');
  await expect.element(page.getByRole('region', { name: 'Legal limits' })).toBeVisible();
  await expect.poll(() => document.body.textContent).toContain('CFR1926.1101');
  await field('Find a rate').fill('silica, table');
  await expect.poll(() => document.body.textContent).toContain('Walk-behind milling machines and floor grinders');
  await field('Find a rate').fill('nothing is called so');
  await expect.element(page.getByText('No rate has these words in its name.')).toBeVisible();
});

test('a table that is asked for ends the search, and is marked again', async () => {
  const grind = page.getByRole('button', { name: 'Grind', exact: true });
  await expect.element(grind).toHaveAttribute('aria-current', 'page');
  await field('Find a rate').fill('vacuum');
  await expect.element(grind).not.toHaveAttribute('aria-current');
  await grind.click();
  await expect.element(grind).toHaveAttribute('aria-current', 'page');
  await expect.element(field('Find a rate')).toHaveValue('');
});

test.each([
  [1440, 900],
  [834, 1112],
  [390, 844],
])(
  'at %i x %i nothing sticks out, targets are large enough, and a screen reader finds its way',
  async (width, height) => {
    await page.viewport(width, height);
    await expect.element(field('Find a rate')).toBeVisible();
    const found = await axe.run(document.body);
    const ofThePage = /^(html-has-lang|document-title|page-has-heading-one|landmark-one-main|region)$/;
    expect(found.violations.map(({ id }) => id).filter((id) => !ofThePage.test(id))).toEqual([]);
    const dialog = document.querySelector('[role=dialog]');
    const wide = [...(dialog?.querySelectorAll('*') ?? [])].filter(
      (each) => each.getBoundingClientRect().right > width + 0.5,
    );
    expect(wide.map((each) => each.textContent)).toEqual([]);
    const small = [...(dialog?.querySelectorAll('button') ?? [])].filter(
      (each) => each.getBoundingClientRect().height < 44,
    );
    expect(small.map((each) => each.textContent)).toEqual([]);
  },
);
