/**
 * The garage of sketchGarage.test.ts once more, by keyboard alone: no pointer ever touches the page. Then a wall with an
 * opening in it, a crack that is nudged, removed and brought back, and the takeoff. Sums by hand: tests/support/garage.ts.
 */
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launchChromium } from '../support/chromium.ts';
import { BY_HAND, CRACK, DOOR_EDGE, INNER_WALL, WALLS, type Leg } from '../support/garage.ts';
import { setOut } from '../support/journey.ts';
import { planAtRest, sillFigure } from '../support/planHand.ts';

const DESK = { viewport: { width: 1440, height: 900 } };

/** By hand from the sketch; corners: five that a round head cannot fill, and five of closet and wall that stick out. */
const TAKEOFF = [
  /Net floor\s*m²\s+35\.92\s+35\.92/,
  /Edge by hand\s*m\s+21\.20\s+21\.20/,
  /Stop lines\s*m\s+4\.80\s+4\.80/,
  /Inner corners\s+5\s+5/,
  /Outer corners\s+5\s+5/,
  /Cracks, not judged, width not measured\s*m\s+4\.00\s+4\.00/,
];

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    // Past the last control the browser's own bar has the focus.
    if (!(at instanceof HTMLElement) || at === document.body) return '';
    const label = at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : undefined;
    return (label ?? at.getAttribute('aria-label') ?? at.textContent ?? '').trim();
  });

/** Whoever steers by keys must see where they are: a ring round a control, a chalk bar in the box of a field. */
const focusShows = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!at?.parentElement || at === document.body) return false;
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    const ring = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
    return ring || (at.matches('input') && getComputedStyle(at.parentElement).boxShadow !== 'none');
  });

/** Tab, until what is meant has the focus; every stop on the way can be seen. */
async function tabTo(page: Page, name: string | RegExp, most = 60): Promise<void> {
  const unseen: string[] = [];
  for (let step = 0; step < most; step++) {
    await page.keyboard.press('Tab');
    const now = await focused(page);
    if (now !== '' && !(await focusShows(page))) unseen.push(now);
    if (typeof name === 'string' ? now === name : name.test(now)) {
      if (unseen.length === 0) return;
      throw new Error(`The focus does not show on: ${unseen.join(', ')}.`);
    }
  }
  throw new Error(`Tab does not come to ${String(name)}.`);
}

/** A figure typed over the plan goes into Length; Tab, and it is the turn. Enter sets the corner. */
async function typeLegs(page: Page, legs: readonly Leg[]): Promise<void> {
  for (const { lengthM, turnDeg } of legs) {
    await page.keyboard.type(lengthM);
    await page.keyboard.press('Tab');
    await page.keyboard.type(turnDeg);
    await page.keyboard.press('Enter');
  }
}

/** What a screen reader was told last: the regions that speak up by themselves. */
const said = (page: Page): Promise<string> =>
  page
    .getByRole('status')
    .allInnerTexts()
    .then((texts) => texts.join(' '));

/** A line from the middle of what is seen, ended with Enter: Esc gives the keys back from the field to the plan. */
async function drawFromMiddle(page: Page, letter: string, legs: readonly Leg[]): Promise<void> {
  await page.keyboard.press(letter);
  await tabTo(page, 'Start in the middle');
  await page.keyboard.press('Enter');
  await typeLegs(page, legs);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Enter');
}

test('a garage is drawn, marked and read to its takeoff by keyboard alone', async () => {
  const { page, faults, end } = await setOut(browser, inject('appUrl'), DESK);
  const keys = page.keyboard;
  await tabTo(page, 'Garage');
  await keys.press('Enter');
  await tabTo(page, 'New job');
  await keys.press('Enter');
  await page.getByText('No floor yet').waitFor();

  // The slab: S, Enter sets the first corner in the middle, then lengths and turns.
  await keys.press('s');
  await keys.press('Enter');
  await page.getByText('Next point. Type length and turn').waitFor();
  await typeLegs(page, WALLS);
  await keys.press('Escape');
  await keys.press('Enter');
  await expect.poll(() => sillFigure(page, 'Net floor')).toBe(BY_HAND.netM2);
  await expect.poll(() => sillFigure(page, 'Edge')).toBe(BY_HAND.roundM);

  // The garage door: Enter leads from the slab's row to its sheet, there to the edge, and then to its kind.
  await tabTo(page, /^S1/);
  await keys.press('Enter');
  await expect.poll(() => focused(page)).toBe('Picked item');
  await tabTo(page, `${DOOR_EDGE}Wall4.80 m`);
  await keys.press('Enter');
  await tabTo(page, 'Wall');
  await keys.press('ArrowRight');
  await keys.press('ArrowRight');
  expect(await focused(page)).toBe('Doorway');
  await keys.press('Enter');
  await expect.poll(() => sillFigure(page, 'Edge')).toBe(BY_HAND.edgeM);
  expect(await sillFigure(page, 'Net floor')).toBe(BY_HAND.netM2);
  await keys.press('0');
  await planAtRest(page);

  // A crack, nudged from the list, removed and brought back; what happened is said aloud.
  await drawFromMiddle(page, 'c', CRACK);
  await expect.poll(() => sillFigure(page, 'Cracks')).toBe(BY_HAND.crackM);
  await tabTo(page, /^C1/);
  await keys.press('ArrowUp');
  await expect.poll(() => said(page)).toContain('C1 Crack, not judged moved up by 0.10 m');
  await keys.press('Shift+ArrowLeft');
  await expect.poll(() => said(page)).toContain('C1 Crack, not judged moved left by 1.00 m');
  expect(await sillFigure(page, 'Cracks')).toBe(BY_HAND.crackM);
  await keys.press('Delete');
  await expect.poll(() => said(page)).toContain('C1 Crack, not judged removed.');
  await expect.poll(() => sillFigure(page, 'Cracks')).toBe(0);
  await expect.poll(() => focused(page)).toMatch(/^Z1/);
  await keys.press('Control+z');
  await expect.poll(() => sillFigure(page, 'Cracks')).toBe(BY_HAND.crackM);
  // The offer to bring it back is gone with it: pressed now it would take back something else.
  await expect.poll(() => page.getByRole('status').getByRole('button', { name: 'Undo' }).count()).toBe(0);

  // A wall on the slab, and an opening where it begins: its floor counts again.
  await drawFromMiddle(page, 'w', INNER_WALL);
  await keys.press('o');
  await tabTo(page, 'Set in the middle');
  await keys.press('Enter');
  await expect.poll(() => sillFigure(page, 'Net floor')).toBe(BY_HAND.netWithWallM2);
  await expect.poll(() => sillFigure(page, 'Edge')).toBe(BY_HAND.edgeWithWallM);

  // The takeoff: every figure can be asked why, and Esc leads back.
  await tabTo(page, 'Survey');
  await keys.press('ArrowRight');
  await keys.press('ArrowRight');
  await keys.press('Enter');
  await page.getByText('Not an offer', { exact: true }).waitFor();
  // First in the column of the zone, then in that of the total, which is the outline less what stands on it.
  await tabTo(page, /^Why 35.92: Net floor/);
  await tabTo(page, /^Why 35.92: Net floor/);
  await keys.press('Enter');
  const why = page.getByRole('region', { name: 'Why', exact: true });
  await why.waitFor();
  const column = await why.innerText();
  for (const figure of ['36.04', '0.12', '35.92']) expect(column).toContain(figure);
  await keys.press('Escape');
  await why.waitFor({ state: 'detached' });
  expect(await focused(page)).toMatch(/^Why 35.92: Net floor/);
  const table = await page.getByRole('table').innerText();
  for (const line of TAKEOFF) expect(table).toMatch(line);
  expect(faults).toEqual([]);
  await end();
});
