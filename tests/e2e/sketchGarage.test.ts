/**
 * A salesperson in a garage with a phone: sketched by finger and tape, a crack and an oil stain marked, four questions
 * asked, a price range on the spot, and the card the crew will read. Sums by hand: tests/support/garage.ts.
 */
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import type { Point } from '../../src/geometry/floorShape.ts';
import { FINGER } from '../../src/canvas/look.ts';
import { prepText, questionWords } from '../../src/words/stageWords.ts';
import { launchChromium } from '../support/chromium.ts';
import { fingersOn } from '../support/fingers.ts';
import { BY_HAND, CRACK, STAIN, WALLS, type Leg } from '../support/garage.ts';
import { setOut, sticksOut } from '../support/journey.ts';
import { inWindow, planAtRest, sillFigure, tapFloor } from '../support/planHand.ts';

const PHONE = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const press = (page: Page, name: string): Promise<void> => page.getByRole('button', { name, exact: true }).tap();

/** Takes a tool from its group: the first press opens the rows, the second chooses. */
async function take(page: Page, group: string, tool: string): Promise<void> {
  await page.getByRole('button', { name: group, exact: true }).tap();
  await page.getByRole('group', { name: group }).getByRole('button', { name: tool }).tap();
}

async function typeLegs(page: Page, legs: readonly Leg[]): Promise<void> {
  for (const { lengthM, turnDeg } of legs) {
    await page.getByLabel('Length', { exact: true }).fill(lengthM);
    await page.getByLabel('Turn', { exact: true }).fill(turnDeg);
    await page.getByLabel('Turn', { exact: true }).press('Enter');
  }
}

async function goTo(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: /Choose a stage/ }).tap();
  await page.getByRole('menuitemradio', { name }).tap();
  expect(await sticksOut(page), name).toEqual([]);
}

const camera = (page: Page): Promise<number> =>
  page.locator('[data-px-per-mm]').evaluate((plan) => Number((plan as HTMLElement).dataset['pxPerMm']));

test('a garage is sketched, marked and priced on a phone by touch alone', async () => {
  const { page, faults, end } = await setOut(browser, inject('appUrl'), PHONE);
  expect(await sticksOut(page)).toEqual([]);
  await press(page, 'Garage');
  await press(page, 'New job');
  await press(page, 'Sketch it here');

  // Two fingers see more of the floor, and set no point on it.
  const fingers = await fingersOn(page);
  const near = await camera(page);
  await fingers.pinch([[60, 200], [330, 200]], [[120, 200], [270, 200]]); // prettier-ignore
  await expect.poll(() => camera(page)).toBeLessThan(near * 0.7);
  await page.getByText('Tap the first corner of the slab').waitFor();

  // First corner by finger, the walls as the tape gives them.
  const start: Point = [2000, 1000];
  await tapFloor(page, start);
  await typeLegs(page, WALLS);
  expect(await sticksOut(page)).toEqual([]);
  // A look nearer in the middle of it leaves the line in hand as it was.
  const wide = await camera(page);
  await fingers.pinch([[120, 200], [270, 200]], [[110, 200], [280, 200]]); // prettier-ignore
  await expect.poll(() => camera(page)).toBeGreaterThan(wide);
  await press(page, 'Close the outline');
  await expect.poll(() => sillFigure(page, 'Net floor')).toBe(BY_HAND.netM2);
  await expect.poll(() => sillFigure(page, 'Edge')).toBe(BY_HAND.roundM);
  expect(await sticksOut(page)).toEqual([]);
  const at = (x: number, y: number): Point => [start[0] + x, start[1] + y];

  // The garage door: a doorway, where the work stops. No edge is worked there.
  await press(page, 'More');
  await page.getByRole('menuitem', { name: 'Fit' }).tap();
  await take(page, 'Edge', 'Edge kind');
  await tapFloor(page, at(3200, 5800));
  await expect.poll(() => sillFigure(page, 'Edge')).toBe(BY_HAND.edgeM);
  expect(await sillFigure(page, 'Net floor')).toBe(BY_HAND.netM2);

  // A crack from where a finger put it, by lengths.
  await take(page, 'Line', 'Crack');
  await tapFloor(page, at(1500, 2500));
  await typeLegs(page, CRACK);
  await press(page, 'Crack ends here');
  await expect.poll(() => sillFigure(page, 'Cracks')).toBe(BY_HAND.crackM);

  // An oil stain; it is floor all the same.
  await take(page, 'Floor', 'Finding');
  await tapFloor(page, at(1000, 4000));
  await typeLegs(page, STAIN);
  await press(page, 'Done');
  const sheet = page.getByRole('region', { name: 'Picked item' });
  await expect.poll(() => sheet.innerText()).toContain(BY_HAND.stainM2.toFixed(2));
  expect(await sillFigure(page, 'Net floor')).toBe(BY_HAND.netM2);

  // The way in for the machine: the finger slides, the point stands above it and is set when it lifts.
  await take(page, 'Edge', 'Machine entrance');
  await planAtRest(page);
  const [x, y] = await inWindow(page, at(3200, 5700));
  await fingers.slide([x - 40, y + 40], [x, y + FINGER.abovePx]);
  await sheet.getByRole('heading', { name: 'Machine entrance' }).waitFor();
  await sheet.getByRole('textbox', { name: 'Narrowest width on the way in' }).fill('2.40');
  await page.keyboard.press('Enter');
  await press(page, 'Done');
  // A tap beside the slab puts everything down: the list says what has been drawn.
  await tapFloor(page, at(-700, 1500));
  await expect
    .poll(() => page.getByRole('listitem').allInnerTexts())
    .toEqual([/^S1/, /^D1/, /^F1/, /^C1/, /^M1/, /^Z1/].map((tag) => expect.stringMatching(tag)));

  // One zone, as a garage starts with. The small grinder keeps 50 mm from a face and laps 50 mm: what is left is hand work, corners too.
  await goTo(page, 'Prep');
  await page.getByText('Adds up to the net floor').waitFor();
  expect(await sillFigure(page, 'Machine field')).toBe(BY_HAND.fieldM2);
  const split = page.getByRole('region', { name: prepText.splits });
  expect(await split.innerText()).toMatch(new RegExp(`corners\\s+${BY_HAND.cornersM2}`));
  expect(await sillFigure(page, 'Edge')).toBe(BY_HAND.edgeM);

  // A price on the spot: a range from the first, an offer only when the four questions are answered.
  await goTo(page, 'Takeoff');
  const price = page.getByRole('region', { name: 'Price range' });
  await page.getByText('Not an offer', { exact: true }).waitFor();
  expect(await price.innerText()).toMatch(/£[\d,]+ to £[\d,]+/);
  for (const ask of Object.values(questionWords)) {
    const question = page.getByRole('region', { name: ask.ask });
    await question.getByRole('button', { name: 'No', exact: true }).tap();
    await question.getByText(ask.notes.no).waitFor();
  }
  await page.getByText('Not an offer', { exact: true }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^Price range/ }).waitFor();
  expect(await price.innerText()).toContain('With sample wages and prices');
  expect(await sticksOut(page)).toEqual([]);

  // The crew's card: what to do, in order, to be ticked off, and no word of money.
  await goTo(page, 'Crew');
  const card = page.getByRole('article', { name: 'Garage floor' });
  const steps = card.getByRole('checkbox');
  await steps.filter({ hasText: 'Chase and fill C1' }).tap();
  await expect.poll(() => steps.filter({ hasText: 'Chase and fill C1' }).getAttribute('aria-checked')).toBe('true');
  expect(await steps.filter({ hasText: 'F1' }).innerText()).toContain('1.00');
  const words = await page.locator('main').innerText();
  expect(words).toContain('Local law and the site rules come first');
  expect(words).not.toMatch(/[$€£]|price|wage|margin/i);
  await goTo(page, 'Handover');
  await page.getByText('1 of 6 done').waitFor();

  expect(faults).toEqual([]);
  await end();
});
