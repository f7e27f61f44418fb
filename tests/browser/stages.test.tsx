import axe from 'axe-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page, userEvent } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { measureFloor, showJob } from '../../src/app/plan.ts';
import { goTo, openPanel, pick, restSession, showFloor, type Stage } from '../../src/app/session.ts';
import { applyCells, type Doc } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { defaultMoneyCells, defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { findingCells, FLOOR, rectangle } from '../support/jobPlans.ts';
import { paperWords } from '../../src/words/paperWords.ts';
import { ui } from '../../src/words/uiWords.ts';
import { sillWords } from '../../src/words/surveyWords.ts';
import { takeoffText } from '../../src/words/whyWords.ts';
import { richJob } from '../support/richJob.ts';

let root: Root;
let store: PlanStore;

function start(doc: Doc): void {
  store = planStore({ doc: applyCells(doc, [...defaultRateCells(), ...defaultMoneyCells()]) });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: null });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  root.render(<JobScreen />);
}

beforeEach(async () => {
  await page.viewport(1440, 900);
  document.body.innerHTML = '<div id="root"></div>';
  const place = document.getElementById('root');
  if (!place) throw new Error('no place');
  root = createRoot(place);
});

afterEach(() => {
  root.unmount();
  showJob(null);
  restSession();
});

async function violations(): Promise<string[]> {
  const found = await axe.run(document.body);
  return found.violations.flatMap((each) => each.nodes.map((node) => `${each.id}: ${node.html.slice(0, 120)}`));
}

/** Rules that look at the page round the app, which a test has none of. */
const ofThePage = /^(html-has-lang|document-title|page-has-heading-one|landmark-one-main|region):/;

const shownText = (): string => document.body.textContent ?? '';
const stages: readonly Stage[] = ['prep', 'takeoff', 'crew', 'handover'];
const heads: Readonly<Record<string, string>> = {
  prep: 'Zones',
  takeoff: 'Work',
  crew: 'Zone map',
  handover: 'Readings',
};

describe.each(['light', 'dark', 'daylight'])('in the %s theme', (theme) => {
  test.each(stages)('%s has no axe finding', async (stage) => {
    document.documentElement.dataset['theme'] = theme;
    start(richJob());
    goTo(stage);
    await expect.poll(shownText).toContain(heads[stage]);
    expect((await violations()).filter((each) => !ofThePage.test(each))).toEqual([]);
  });

  test.each(['questions', 'money', 'rates'])('the %s panel has no axe finding', async (panel) => {
    document.documentElement.dataset['theme'] = theme;
    start(richJob());
    goTo('takeoff');
    openPanel(panel);
    await expect.element(page.getByRole('dialog')).toBeVisible();
    expect((await violations()).filter((each) => !ofThePage.test(each))).toEqual([]);
  });
});

test('a figure of the takeoff asks why, and its sum leads on to what went in', async () => {
  start(richJob());
  goTo('takeoff');
  await page
    .getByRole('button', { name: /^Why .*: Price, likely/ })
    .last()
    .click();
  await expect.element(page.getByRole('heading', { name: /^Why \$/ })).toBeVisible();
  await page.getByRole('button', { name: 'Cost', exact: true }).click();
  await expect.element(page.getByText('Overhead', { exact: true }).last()).toBeVisible();
});

test('a rate that is changed in the Why dock changes the hours, and goes back to the book', async () => {
  start(richJob());
  goTo('takeoff');
  await page
    .getByRole('button', { name: /^Why .*: Final vacuum/ })
    .first()
    .click();
  const heading = page.getByRole('heading', { name: /^Why / });
  const before = heading.element().textContent;
  await page.getByRole('button', { name: 'Change the rate' }).first().click();
  await page.getByLabelText('Low', { exact: true }).fill('1');
  await page.getByLabelText('Likely', { exact: true }).fill('2');
  await userEvent.keyboard('{Tab}');
  await page.getByRole('button', { name: 'Keep this rate' }).click();
  await expect.poll(() => heading.element().textContent).not.toBe(before);
  await page.getByRole('button', { name: 'Change the rate' }).first().click();
  await page.getByRole('button', { name: /Back to the book/ }).click();
  await expect.poll(() => heading.element().textContent).toBe(before);
});

test('a rate that does not rise is answered by a sentence and changes nothing', async () => {
  start(richJob());
  goTo('takeoff');
  await page
    .getByRole('button', { name: /^Why .*: Final vacuum/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Change the rate' }).first().click();
  await page.getByLabelText('Low', { exact: true }).fill('5000');
  await userEvent.keyboard('{Tab}');
  const changes = store.tick();
  await page.getByRole('button', { name: 'Keep this rate' }).click();
  await expect.element(page.getByText(/have to rise in that order/)).toBeVisible();
  expect(store.tick()).toBe(changes);
});

describe('a zone with a hold', () => {
  const held = (): Doc =>
    applyCells(richJob(), findingCells('finding:black', 'mastic_black', rectangle(2000, 2000, [13_000, 1000])));

  test('says so in Prep, has no hours or price there, and is free again with a result, a date and a name', async () => {
    start(held());
    goTo('prep');
    pick(['zone:deck']);
    await expect.element(page.getByText(/Hold: suspect asbestos/)).toBeVisible();
    expect(shownText()).not.toContain('Hours of work');
    await page.getByRole('button', { name: 'Record result' }).click();
    await page.getByRole('button', { name: 'Clear', exact: true }).click();
    await page.getByRole('button', { name: 'Put on the record' }).click();
    await expect.element(page.getByText(/Type the name of the person/)).toBeVisible();
    await page.getByLabelText('Name of the person').fill('Tester');
    await page.getByRole('button', { name: 'Put on the record' }).click();
    await expect.poll(shownText).toContain('Hours of work');
    expect(shownText()).not.toContain('Hold: suspect asbestos');
  });

  test('is a stop on the crew card', async () => {
    start(held());
    goTo('crew');
    await page.getByRole('button', { name: 'Zone cards' }).click();
    await page.getByRole('button', { name: /^deck/ }).click();
    await expect.element(page.getByText('STOP')).toBeVisible();
    // Which hold, as on paper: a crew must know what it is kept away from.
    await expect.element(page.getByText(/^Maybe asbestos/)).toBeVisible();
    expect(page.getByRole('checkbox').elements()).toHaveLength(0);
  });
});

test('until it is known what lies in the slab the crew card says not to cut, above the steps', async () => {
  start(
    applyCells(richJob(), [
      ['job:test', 'inSlabLocated', undefined],
      ['job:test', 'inSlab', undefined],
    ]),
  );
  goTo('crew');
  await page.getByRole('button', { name: 'Zone cards' }).click();
  await page.getByRole('button', { name: /hall$/ }).click();
  await expect.element(page.getByText(paperWords.inSlab)).toBeVisible();
});

test('no amount and no word of money stands anywhere on the crew stage', async () => {
  start(richJob());
  goTo('crew');
  await expect.poll(() => document.querySelectorAll('figure svg').length).toBeGreaterThan(0);
  expect(document.querySelector('main')?.textContent).not.toMatch(/[$€£]|\bUSD\b|margin of|per hour|wage of/i);
  await page.getByRole('button', { name: 'Zone cards' }).click();
  await expect.element(page.getByRole('checkbox').first()).toBeVisible();
  expect(document.querySelector('main')?.textContent).not.toMatch(/[$€£]|\bUSD\b|price|margin|wage/i);
});

test.each(['prep', 'takeoff'] as const)('a crew copy has no money on %s', async (stage) => {
  start(applyCells(richJob(), [['job:test', 'currency', undefined]]));
  goTo(stage);
  await expect.poll(shownText).toContain(heads[stage]);
  expect(document.querySelector('main')?.textContent, stage).not.toMatch(/[$€£]|\bUSD\b|price|wage|rate book/i);
});

test('with a second floor the price says that it is of this one alone', async () => {
  start(applyCells(richJob(), [['floor:second', 'name', 'Upper floor']]));
  goTo('takeoff');
  await expect.element(page.getByText(takeoffText.onlyThisFloor)).toBeVisible();
  await expect.element(page.getByText(sillWords.floorNotAnOffer)).toBeVisible();
});

test('a step is ticked off with the keyboard and stays ticked', async () => {
  start(richJob());
  goTo('crew');
  await page.getByRole('button', { name: 'Zone cards' }).click();
  const first = page.getByRole('checkbox').first();
  (first.element() as HTMLElement).focus();
  await userEvent.keyboard(' ');
  await expect.element(first).toBeChecked();
  expect([...store.getState().keys()].filter((id) => id.startsWith('tick:'))).toHaveLength(1);
});

test('the map of a job in feet is drawn at a scale in feet; units changed, at none of the old ones', async () => {
  start(applyCells(richJob(), [['job:test', 'units', 'imperial']]));
  goTo('crew');
  const scale = page.getByRole('combobox', { name: 'Scale' });
  // The sheet of this job is there, and not that of the job before it.
  await expect.poll(shownText).toContain(' on Letter');
  await scale.click();
  await expect.poll(() => page.getByRole('option').elements()[1]?.textContent).toBe(`1/4" = 1' (1 : 48)`);
  await page.getByRole('option', { name: `1/32" = 1' (1 : 384)` }).click();
  await expect.poll(shownText).toContain(`1/32" = 1' (1 : 384) on Letter`);
  store.commit('units', [['job:test', 'units', 'metric']]);
  await expect.element(scale).toHaveTextContent('Largest that fits');
  await expect.poll(shownText).toMatch(/1 : \d+ on Letter/);
});

test('an undo that another device has overtaken says so, and the button names the step before', async () => {
  start(richJob());
  goTo('prep');
  store.commit('placeNote', [['job:test', 'site', 'mine']]);
  store.commit('setField', [['job:test', 'name', 'mine']]);
  store.commit('setField', [['job:test', 'name', 'theirs']], 'remote');
  const undo = page.getByRole('button', { name: /^Undo/ });
  await expect.element(undo).toBeVisible();
  const newest = undo.element().getAttribute('aria-label');
  await undo.click();
  await expect.element(page.getByText(ui.overtaken)).toBeVisible();
  await expect.poll(() => undo.element().getAttribute('aria-label')).not.toBe(newest);
  await undo.click();
  expect(store.getState().get('job:test')).toMatchObject({ name: 'theirs' });
  expect(store.steps().undo).toEqual([]);
});
