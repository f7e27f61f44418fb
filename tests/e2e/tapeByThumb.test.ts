/**
 * A garage of 22' by 21' 4" on a phone, in feet: by typed lengths alone, and by a finger that drags a rectangle. 22' x
 * 21' 4" = 469.33 sq ft, round 86' 8", by hand; less a 16' door 70' 8".
 */
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { fingersOn } from '../support/fingers.ts';
import { setOut, sticksOut } from '../support/journey.ts';
import { planAtRest, sillFigure } from '../support/planHand.ts';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'en-US' };

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const press = (page: Page, name: string): Promise<void> => page.getByRole('button', { name, exact: true }).tap();

async function newGarage(page: Page): Promise<void> {
  await press(page, 'Garage');
  await press(page, 'New job');
  await press(page, 'Sketch it here');
}

/** Where the canvas lies in the window. */
async function canvasBox(page: Page): Promise<{ x: number; y: number; width: number; height: number }> {
  const box = await page.locator('[data-px-per-mm]').boundingBox();
  if (!box) throw new Error('no canvas');
  return box;
}

test('typed lengths alone make the outline: the turn that stands is the turn that is set, and the plan follows', async () => {
  const { page, faults, end } = await setOut(browser, inject('appUrl'), PHONE);
  await newGarage(page);
  const box = await canvasBox(page);
  expect(box.height / 844).toBeGreaterThan(0.4);

  const length = page.getByLabel('Length', { exact: true });
  const turn = page.getByLabel('Turn', { exact: true });
  // A keypad has no Enter: a button sets what is typed. No corner has been tapped yet.
  await length.tap();
  await page.keyboard.type('22');
  await press(page, 'Set this length');
  await expect.poll(() => turn.inputValue()).toBe('90.0');
  await page.keyboard.type("21' 4");
  await press(page, 'Right');
  await expect.poll(() => length.inputValue()).toBe('');
  expect(await turn.inputValue()).toBe('90.0');
  await page.keyboard.type('22');
  await page.keyboard.press('Enter');
  await press(page, 'Close the outline');
  await expect.poll(() => sillFigure(page, 'Net floor')).toBe(469);
  await expect.poll(() => sillFigure(page, 'Edge')).toBe(86.7);
  await page.getByText('All walls so far').waitFor();

  // The whole slab is in sight, above the scale bar.
  await planAtRest(page);
  const { pxPerMm } = await page.locator('[data-px-per-mm]').evaluate((plan) => ({
    pxPerMm: Number((plan as HTMLElement).dataset['pxPerMm']),
  }));
  expect(6706 * pxPerMm).toBeLessThan(box.width);
  expect(6502 * pxPerMm).toBeLessThan(box.height);

  // A width that is typed counts for the tap that follows it at once.
  await press(page, 'Edge');
  await press(page, 'Opening');
  await page.getByLabel('Clear width', { exact: true }).tap();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('16');
  await planAtRest(page);
  await page.touchscreen.tap(195, await lowerWall(page));
  await expect.poll(() => sillFigure(page, 'Edge')).toBe(70.7);
  expect(await sticksOut(page)).toEqual([]);

  // The usual floor of a garage is there: a price stands at once.
  await page.getByRole('button', { name: /Choose a stage/ }).tap();
  await page.getByRole('menuitemradio', { name: 'Takeoff' }).tap();
  await page.getByText(/\$[\d,]+ to \$[\d,]+/).first().waitFor(); // prettier-ignore
  expect(faults).toEqual([]);
  await end();
});

test('a finger drags the rectangle; an undo leaves the sheet ready for the next one', async () => {
  const { page, faults, end } = await setOut(browser, inject('appUrl'), PHONE);
  await newGarage(page);
  await planAtRest(page);
  const fingers = await fingersOn(page);
  await fingers.slide([60, 100], [320, 320]);
  await page.getByText('4 corners').waitFor();
  expect(await sillFigure(page, 'Net floor')).toBeGreaterThan(300);
  // One tap, right after a fast finger, is enough.
  const undo = page.getByRole('button', { name: 'Undo: Draw a slab' });
  await undo.tap();
  await undo.waitFor({ state: 'detached' });
  await press(page, 'Sketch it here');
  await page.getByText('Tap the first corner of the slab').waitFor();
  expect(faults).toEqual([]);
  await end();
});

/** Where the lower wall of the only slab stands in the window: half its depth under the middle of what is fitted. */
async function lowerWall(page: Page): Promise<number> {
  const box = await canvasBox(page);
  const scaleBarPx = 36;
  const { pxPerMm } = await page.locator('[data-px-per-mm]').evaluate((plan) => ({
    pxPerMm: Number((plan as HTMLElement).dataset['pxPerMm']),
  }));
  return box.y + (box.height - scaleBarPx) / 2 + (6502 / 2) * pxPerMm;
}
