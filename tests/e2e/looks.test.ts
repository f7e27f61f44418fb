/**
 * Every screen of the workshop demo as it is met at the desk, on a tablet and on a phone: no finding of axe-core (the rules
 * of WCAG 2.2 that a machine can check, and its best practices), nothing wider than the window, targets that a finger meets.
 */
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { ROOT } from '../../scripts/runTool.mjs';
import { launchChromium } from '../support/chromium.ts';
import { type Journey, setOut, smallTargets, sticksOut } from '../support/journey.ts';

declare const axe: { run(): Promise<AxeResults> };

const DESK = { width: 1440, height: 900 };

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

type Size = typeof DESK;

async function openAt(size: Size): Promise<Journey> {
  // Colours are looked at as they end up, not on the way.
  const as = { viewport: size, hasTouch: size.width < DESK.width, reducedMotion: 'reduce' } as const;
  return setOut(browser, inject('appUrl'), as, (page) =>
    page.addInitScript({ path: join(ROOT, 'node_modules/axe-core/axe.min.js') }),
  );
}

async function goTo(page: Page, stage: string): Promise<void> {
  const tab = page.getByRole('tab', { name: stage });
  if ((await tab.count()) > 0) return tab.click();
  await page.getByRole('button', { name: /Choose a stage/ }).click();
  await page.getByRole('menuitemradio', { name: stage }).click();
  await page.getByRole('menu').waitFor({ state: 'detached' });
}

/** The screens in the order of the work, and what shows that each is there. */
const SCREENS: readonly { readonly name: string; go(page: Page): Promise<void> }[] = [
  { name: 'jobs', go: (page) => page.getByText('No job of yours in this browser yet.').waitFor() },
  {
    name: 'survey',
    async go(page) {
      await page.getByRole('button', { name: /^Workshop/ }).click();
      await page.getByText(/trued by 3/).waitFor();
    },
  },
  {
    name: 'truing a page',
    async go(page) {
      await page.getByRole('button', { name: 'True again' }).click();
      await page.getByRole('heading', { name: 'True the page' }).waitFor();
    },
  },
  {
    name: 'prep',
    async go(page) {
      await goTo(page, 'Prep');
      await page.getByText('Adds up to the net floor').waitFor();
    },
  },
  {
    name: 'lanes',
    async go(page) {
      await page.getByRole('checkbox', { name: 'Lanes' }).check();
      await page.getByText('Machine hours by lanes').waitFor();
    },
  },
  {
    name: 'the four questions',
    async go(page) {
      await page.getByRole('button', { name: 'The four questions' }).click();
      await page.getByRole('dialog', { name: 'Four questions before a price' }).waitFor();
    },
  },
  {
    name: 'takeoff',
    async go(page) {
      await page.keyboard.press('Escape');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await goTo(page, 'Takeoff');
      await page
        .getByRole('rowheader', { name: /Machine field/ })
        .first()
        .waitFor();
    },
  },
  {
    name: 'why',
    async go(page) {
      await page
        .getByRole('button', { name: /^Why .*: Machine field/ })
        .first()
        .click();
      await page.getByRole('region', { name: 'Why', exact: true }).waitFor();
    },
  },
  {
    name: 'why, by lanes',
    async go(page) {
      await page.getByRole('button', { name: 'Close Why' }).click();
      await page.getByRole('group', { name: 'Read it by' }).getByRole('button', { name: 'Work' }).click();
      await page
        .getByRole('button', { name: /^Why .* h: Machine passes/ })
        .first()
        .click();
      await page.getByRole('region', { name: 'Second opinion, by lanes' }).waitFor();
    },
  },
  {
    name: 'work as a list',
    async go(page) {
      await page.getByRole('button', { name: 'Close Why' }).click();
      await page.getByRole('rowheader', { name: 'Person-hours, paid' }).waitFor();
    },
  },
  {
    name: 'phases',
    async go(page) {
      await page.getByRole('button', { name: 'Phases', exact: true }).click();
      await page.getByRole('rowheader', { name: /^First weekend/ }).waitFor();
    },
  },
  {
    name: 'what drives the price',
    async go(page) {
      await page.getByRole('button', { name: 'Drivers', exact: true }).click();
      await page.locator('svg rect').first().waitFor();
    },
  },
  {
    name: 'orders',
    async go(page) {
      await page.getByRole('button', { name: 'Orders', exact: true }).click();
      await page.getByRole('heading', { name: 'To buy and carry' }).waitFor();
    },
  },
  {
    name: 'zone map',
    async go(page) {
      await goTo(page, 'Crew');
      await page.getByRole('button', { name: 'Printed map' }).click();
      await page.getByRole('img', { name: /^Page 1 of/ }).waitFor();
    },
  },
  {
    name: 'zone cards',
    async go(page) {
      await page.getByRole('button', { name: 'Zone cards' }).click();
      await page.getByRole('checkbox').first().waitFor();
    },
  },
  {
    name: 'handover',
    async go(page) {
      await goTo(page, 'Handover');
      await page.getByRole('heading', { name: 'Readings' }).waitFor();
    },
  },
];

async function findings(page: Page): Promise<readonly string[]> {
  const { violations } = await page.evaluate(() => axe.run());
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`));
}

async function drawIn(page: Page, theme: string): Promise<void> {
  await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme);
}

/** Each screen in three themes, on a machine that may be busy. */
const LONG_MS = 240_000;

test('at the desk, in three themes, every screen is sound', { timeout: LONG_MS }, async () => {
  const { page, faults, end } = await openAt(DESK);
  for (const { name, go } of SCREENS) {
    await go(page);
    for (const theme of ['dark', 'daylight', 'light']) {
      await drawIn(page, theme);
      expect(await findings(page), `${name}, ${theme}`).toEqual([]);
    }
    expect(await sticksOut(page), name).toEqual([]);
    expect(await smallTargets(page), name).toEqual([]);
  }
  expect(faults).toEqual([]);
  await end();
});

// Letters twice as large leave half as many pixels: the desk at 200 % (WCAG 2.2, 1.4.4) has to be worked with all the same.
test.each([
  ['on a tablet', { width: 834, height: 1112 }],
  ['on a phone', { width: 390, height: 844 }],
  ['at the desk at 200 %', { width: DESK.width / 2, height: DESK.height / 2 }],
])('%s every screen is sound', { timeout: LONG_MS }, async (_where, size) => {
  const { page, faults, end } = await openAt(size);
  for (const { name, go } of SCREENS) {
    await go(page);
    expect(await findings(page), name).toEqual([]);
    expect(await sticksOut(page), name).toEqual([]);
    expect(await smallTargets(page), name).toEqual([]);
  }
  expect(faults).toEqual([]);
  await end();
});
