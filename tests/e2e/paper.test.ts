/**
 * What the crew holds in the hand: the zone map of the workshop demo as Chromium prints it, on A4 and on Letter. At the
 * sheet's own size, in black and white, with everything the crew needs and nothing of money.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { setOut } from '../support/journey.ts';
import { pdfInk } from '../support/pdfInk.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

/** Every amount of the takeoff that no length or area looks like, as it could stand on paper. */
async function amountsOf(page: Page): Promise<readonly string[]> {
  await page.getByRole('tab', { name: 'Takeoff' }).click();
  const [csv] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save CSV' }).click(),
  ]);
  const money = readFileSync(await csv.path(), 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('Money,'));
  const amounts = money.flatMap((line) => line.split(',').map(Number)).filter((amount) => amount >= 1000);
  return amounts.flatMap((amount) =>
    [0, 2].flatMap((digits) => [
      amount.toFixed(digits),
      amount.toLocaleString('en', { minimumFractionDigits: digits, maximumFractionDigits: digits }),
    ]),
  );
}

/** The words of a PDF, by the system's own reader where there is one; else those that were sent to the printer. */
async function wordsOf(page: Page, pdf: Uint8Array): Promise<string> {
  const read = spawnSync('pdftotext', ['-', '-'], { input: pdf, encoding: 'utf8' });
  if (read.status === 0) return read.stdout.replaceAll(/\s+/g, ' ');
  const sheets = await page.getByRole('img', { name: /^Page \d/ }).allTextContents();
  return sheets.join(' ').replaceAll(/\s+/g, ' ');
}

test.each([
  ['A4', 297, 210],
  ['Letter', 279.4, 215.9],
])('the zone map on %s', async (sheet, widthMm, heightMm) => {
  const { page, faults, end } = await setOut(
    browser,
    inject('appUrl'),
    { viewport: { width: 1440, height: 900 } },
    (before) =>
      // No printer stands here: what would go to one is taken as a PDF below.
      before.addInitScript(() => {
        window.print = () => undefined;
      }),
  );
  await page.getByRole('button', { name: /^Workshop/ }).click();
  const amounts = await amountsOf(page);
  expect(amounts.length).toBeGreaterThan(20);
  await page.getByRole('tab', { name: 'Crew' }).click();
  await page.getByRole('button', { name: sheet, exact: true }).click();
  await page.getByText(`on ${sheet}`).first().waitFor();
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  const pdf = await page.pdf({ preferCSSPageSize: true });

  // One page a sheet, each of the sheet's own size: Chromium rounds to its pixels, a quarter of a millimetre.
  const { pagesMm, coloured, colours } = pdfInk(pdf);
  expect(pagesMm).toHaveLength(await page.getByRole('img', { name: /^Page \d/ }).count());
  for (const [width, height] of pagesMm) {
    expect(Math.abs(width - widthMm)).toBeLessThan(0.3);
    expect(Math.abs(height - heightMm)).toBeLessThan(0.3);
  }
  expect(colours).toBeGreaterThan(100);
  expect(coloured).toEqual([]);

  const words = await wordsOf(page, pdf);
  expect(words).toMatch(new RegExp(`1 : \\d+ on ${sheet}`));
  for (const said of ['Workshop', 'Assembly hall', 'Stores', 'STOP', 'stop line', 'Chase and fill', 'Page 2 of 2']) {
    expect(words).toContain(said);
  }
  expect(words).toContain('Local law and the site rules come first.');
  expect(words).not.toMatch(/[$€£]|USD|price|wage|margin/i);
  expect(amounts.filter((amount) => words.includes(amount))).toEqual([]);
  expect(faults).toEqual([]);
  await end();
});
