/** Lanes in Prep: switched on, worked out beside the takeoff, drawn, followed by an edit, and asked why. */
import type { Browser } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { setOut } from '../support/journey.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

test('lanes are off until they are asked for, follow an edit, and Why shows their sum', async () => {
  const { page, faults, end } = await setOut(browser, inject('appUrl'), { viewport: { width: 1440, height: 900 } });
  await page.getByRole('button', { name: /^Workshop/ }).click();
  await page.getByText(/trued by 3/).waitFor();
  await page.getByRole('tab', { name: 'Prep' }).click();
  await page.getByRole('button', { name: /Stores/ }).click();
  const lanes = page.getByRole('region', { name: 'Lanes', exact: true });
  const opinion = lanes.getByRole('button', { name: /Machine hours by lanes/ });
  await lanes.waitFor();
  expect(await opinion.count()).toBe(0);

  await lanes.getByRole('checkbox', { name: 'Lanes' }).check();
  await lanes.getByText(/^\d+ lanes in \d+ runs, \d+ turns/).waitFor();
  await opinion.waitFor();
  const before = await opinion.textContent();

  // Hard concrete is slower for both.
  await page.getByRole('button', { name: 'Hard', exact: true }).click();
  await expect.poll(() => opinion.textContent()).not.toBe(before);

  await opinion.click();
  const why = page.getByRole('region', { name: 'Second opinion, by lanes' });
  await why.getByText(/^Lanes say [\d.]+ h, the rate says [\d.]+ h: [\d.]+ h (more|less)\.$/).waitFor();
  await why.getByText('Lane of an open room').waitFor();
  expect(faults).toEqual([]);
  await end();
});

test('a held zone has no lanes', async () => {
  const { page, faults, end } = await setOut(browser, inject('appUrl'), { viewport: { width: 1440, height: 900 } });
  await page.getByRole('button', { name: /^Workshop/ }).click();
  await page.getByText(/trued by 3/).waitFor();
  await page.getByRole('tab', { name: 'Prep' }).click();
  await page.getByRole('button', { name: /Old office/ }).click();
  await page.getByRole('checkbox', { name: 'Lanes' }).check();
  await page.getByText('No lanes: no machine works this zone, or a hold stands on it.').waitFor();
  expect(faults).toEqual([]);
  await end();
});
