import axe from 'axe-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { measureFloor, run, showJob } from '../../src/app/plan.ts';
import { goTo, openPanel, restSession, showFloor } from '../../src/app/session.ts';
import { applyCells, recordsOf, type Doc } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { defaultMoneyCells, defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { moneyPage } from '../../src/words/moneyWords.ts';
import { FLOOR, set, withCells } from '../support/jobPlans.ts';
import { kitchen } from '../support/wholeJobs.ts';

let root: Root;
let store: PlanStore;

function start(doc: Doc): void {
  store = planStore({ doc: applyCells(doc, [...defaultRateCells(), ...defaultMoneyCells()]) });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: null });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  root.render(<JobScreen />);
  goTo('takeoff');
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
  const all = found.violations.flatMap((each) => each.nodes.map((node) => `${each.id}: ${node.html.slice(0, 120)}`));
  // Rules that look at the page round the app, which a test has none of.
  return all.filter(
    (each) => !/^(html-has-lang|document-title|page-has-heading-one|landmark-one-main|region):/.test(each),
  );
}

const dialog = () => page.getByRole('dialog');
const button = (name: string) => page.getByRole('button', { name, exact: true });

async function issue(): Promise<void> {
  await button('Issue estimate').click();
  await button('Issue it').click();
  await expect.poll(() => recordsOf(store.getState(), 'estimate').length).toBe(1);
}

test('an estimate is issued from the price, stands in the list, and stays when a wage changes', async () => {
  start(kitchen());
  await issue();
  const [estimate] = recordsOf(store.getState(), 'estimate');
  const total = ((estimate?.totalMinor ?? 0) / 100).toLocaleString('en-US', { minimumFractionDigits: 2 });
  run('setRateRow', { id: 'price:wage', fields: { amount: 6_400 } });
  openPanel('estimates');
  await dialog().getByRole('button', { name: /^E-1/ }).click();
  await expect.element(dialog().getByText(total).first()).toBeVisible();
  expect(await violations()).toEqual([]);
  await button('What differs now').click();
  await expect.element(dialog().getByRole('rowheader', { name: 'Wage', exact: true })).toBeVisible();
  expect(recordsOf(store.getState(), 'estimate')[0]).toEqual(estimate);
});

test('what the customer reads holds no cost and no margin; the build-up does', async () => {
  start(kitchen());
  await issue();
  openPanel(recordsOf(store.getState(), 'estimate')[0]?.id ?? null);
  await expect.element(dialog().getByText('Price', { exact: true })).toBeVisible();
  expect(dialog().element().textContent).not.toMatch(/margin|overhead|contingency|labour/i);
  await button('Build-up').click();
  await expect.element(dialog().getByText('Margin', { exact: true })).toBeVisible();
});

test('it cannot be issued while a question is open, and says why', async () => {
  start(withCells(kitchen(), set('job:test', 'gasAppliance', { answer: 'unknown' })));
  await expect.element(button('Issue estimate')).toHaveAttribute('aria-disabled', 'true');
  openPanel('issueEstimate');
  await expect.element(button('Issue it')).toHaveAttribute('aria-disabled', 'true');
  expect(recordsOf(store.getState(), 'estimate')).toEqual([]);
});

test('a changed sentence goes into the estimate, as one step to undo', async () => {
  start(kitchen());
  await button('Issue estimate').click();
  await button('Change these words').click();
  const field = dialog().getByLabelText('Not in the price');
  await field.fill('Cove base\nThe yard');
  await button('Done').click();
  await button('Issue it').click();
  await expect.poll(() => recordsOf(store.getState(), 'estimate')[0]?.exclusions).toEqual(['Cove base', 'The yard']);
});

const sections = Object.values(moneyPage.sections);

async function openSection(title: string): Promise<void> {
  openPanel('money');
  await expect.element(dialog()).toBeVisible();
  const head = dialog().getByRole('button', { name: new RegExp(`^${title}`) });
  if (head.element().getAttribute('aria-expanded') !== 'true') await head.click();
  await expect.element(head).toHaveAttribute('aria-expanded', 'true');
}

describe('the money page', () => {
  test.each(sections)('%s has no axe finding', async (title) => {
    start(kitchen());
    await openSection(title);
    expect(await violations()).toEqual([]);
  });

  test.each(['dark', 'daylight'])('tools on hire have no axe finding in the %s theme', async (theme) => {
    document.documentElement.dataset['theme'] = theme;
    start(kitchen());
    await openSection(moneyPage.sections.machines);
    expect(await violations()).toEqual([]);
    delete document.documentElement.dataset['theme'];
  });

  test.each(sections)('%s can be hit by a finger on a phone, and nothing is wider than it', async (title) => {
    await page.viewport(390, 844);
    start(kitchen());
    await openSection(title);
    const all = [...dialog().element().querySelectorAll('button, input, textarea')];
    const small = all.filter((each) => {
      const { width, height } = each.getBoundingClientRect();
      return width < 44 || height < 44;
    });
    expect(all.length).toBeGreaterThan(10);
    expect(small.map((each) => each.outerHTML.slice(0, 90))).toEqual([]);
    expect(dialog().element().scrollWidth).toBeLessThanOrEqual(390);
  });

  test('a machine is put on hire and taken off again, and its delivery is in the price', async () => {
    start(kitchen());
    await openSection(moneyPage.sections.machines);
    const hired = () => recordsOf(store.getState(), 'pricing')[0]?.hired ?? [];
    await button('On hire: Small grinder').click();
    await expect.poll(hired).toContain('grinder_small');
    await button('On hire: Small grinder').click();
    await expect.poll(hired).not.toContain('grinder_small');
  });
});
