/**
 * The whole job by mouse: a scanned plan is put under the canvas, trued, traced; columns, a crack, a joint and a zone are
 * marked; the takeoff is read, the zone map is made ready for print, the job is saved and opened again.
 * The scan and its true measures: tests/data/plan-scans/README.md.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Download, Page } from 'playwright';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { ROOT } from '../../scripts/runTool.mjs';
import { fitTrue, trueMatrix, type KnownDimension } from '../../src/geometry/fitTrue.ts';
import type { Point } from '../../src/geometry/floorShape.ts';
import { ringArea } from '../../src/geometry/ring.ts';
import { mapPoint, type Matrix } from '../../src/geometry/transform.ts';
import { launchChromium } from '../support/chromium.ts';
import { clickFloor, clickPixel, dragFloor, inWindow, plainFiles, sillFigure } from '../support/planHand.ts';

const SCANS = join(ROOT, 'tests/data/plan-scans');

interface Truth {
  readonly imagePixels: readonly [number, number];
  readonly outlinePx: readonly Point[];
  readonly trueArea_m2: number;
  readonly holes_m: readonly (readonly Point[])[];
  readonly worldToPixel: Readonly<Record<'a' | 'b' | 'c' | 'd' | 'e' | 'f', number>>;
  readonly dimensions: readonly { readonly value_m: number; readonly endpointsPx: readonly [Point, Point] }[];
}
const truth = JSON.parse(readFileSync(join(SCANS, 'scan-office-level-1.truth.json'), 'utf8')) as Truth;

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

async function saved(page: Page, item: string | RegExp): Promise<Download> {
  await page.getByRole('button', { name: /ground floor/i }).click();
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('menuitem', { name: item }).click()]);
  return file;
}

async function trueOn(page: Page): Promise<Matrix> {
  // Until it is trued the page lies there 20 m wide, its first pixel at the floor's origin.
  const mmPerPx = 20_000 / truth.imagePixels[0];
  let matrix: Matrix = [mmPerPx, 0, 0, mmPerPx, 0, 0];
  const known: KnownDimension[] = [];
  for (const { value_m, endpointsPx } of truth.dimensions) {
    const [from, to] = endpointsPx;
    await clickPixel(page, matrix, from);
    await clickPixel(page, matrix, to);
    // To the millimetre: the plan prints centimetres, the truth file states more.
    const metres = value_m.toFixed(3);
    await page.getByRole('textbox', { name: 'Length of this dimension' }).fill(metres);
    await page.keyboard.press('Enter');
    await page.getByText(`${value_m.toFixed(2)} m`).waitFor();
    known.push({ from, to, lengthMm: Number(metres) * 1000, by: 'mouse' });
    const result = fitTrue(known);
    if (!result.ok) throw new Error(result.fault);
    // The first dimension's first end stays where it was on the floor.
    const [first] = known as [KnownDimension];
    const stays = [first.from[0] * mmPerPx, first.from[1] * mmPerPx] as const;
    const [x, y] = mapPoint(trueMatrix(result.fit, [0, 0]), first.from);
    matrix = trueMatrix(result.fit, [stays[0] - x, stays[1] - y]);
  }
  return matrix;
}

test('from a scanned plan to a takeoff, a zone map and a file', async () => {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB' });
  await plainFiles(context);
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  await page.goto(inject('appUrl'));

  // A new job with its plan page, which gives no quantities before it is trued.
  await page.getByRole('button', { name: 'Warehouse' }).click();
  await page.getByLabel('Name, if you like').fill('Office level, traced');
  await page.getByRole('button', { name: 'New job', exact: true }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Plan at hand' }).click(),
  ]);
  await chooser.setFiles(join(SCANS, 'scan-office-level-1.png'));
  await page.getByText('This page is not trued').waitFor();
  expect(await sillFigure(page, 'Net floor')).toBeNaN();
  const matrix = await trueOn(page);
  await page.getByText('Both directions are checked').waitFor();
  await page.getByRole('button', { name: 'Done, go on drawing' }).click();

  // Near enough to see single pixels of the scan, as one does who traces: the room fills the window.
  const [left, top] = truth.outlinePx.reduce(([x, y], at) => [Math.min(x, at[0]), Math.min(y, at[1])], [1e9, 1e9]);
  const [right, bottom] = truth.outlinePx.reduce(([x, y], at) => [Math.max(x, at[0]), Math.max(y, at[1])], [0, 0]);
  const middle = mapPoint(matrix, [(left + right) / 2, (top + bottom) / 2]);
  const [px, py] = await inWindow(page, middle);
  await page.mouse.move(px, py);
  await page.mouse.wheel(0, -160);
  await page.mouse.wheel(0, -160);

  // The slab: every corner of the outline, closed on the first.
  await page.keyboard.press('s');
  for (const [i, corner] of truth.outlinePx.entries()) {
    // Alt switches snapping off: the scan's own corners are meant.
    await page.keyboard.down('Alt');
    await clickPixel(page, matrix, corner);
    await page.keyboard.up('Alt');
    // Two quick clicks at almost one place are a double click: where corners lie that close, nobody traces so fast.
    const next = truth.outlinePx[i + 1];
    if (next && Math.hypot(next[0] - corner[0], next[1] - corner[1]) < 20) await page.waitForTimeout(360);
  }
  await page.keyboard.press('Enter');
  await expect.poll(() => sillFigure(page, 'Net floor')).toBeGreaterThan(0);
  const columnM2 = truth.holes_m.reduce((total, hole) => total + ringArea(hole), 0);
  const net = await sillFigure(page, 'Net floor');
  // A click is good to half a pixel of the screen, about a pixel of the scan here: 0.3 % of this room.
  expect(Math.abs(net / (truth.trueArea_m2 + columnM2) - 1)).toBeLessThan(0.003);

  // The column that stands in it, by dragging a rectangle from corner to corner.
  const { a, b, c, d, e, f } = truth.worldToPixel;
  const toPixel: Matrix = [a, b, c, d, e, f];
  const column = (truth.holes_m[0] ?? []).map((at) => mapPoint(matrix, mapPoint(toPixel, at)));
  await page.keyboard.press('b');
  await dragFloor(page, column[0] as Point, column[2] as Point);
  await expect.poll(() => sillFigure(page, 'Obstructions')).toBe(1);
  await expect.poll(() => sillFigure(page, 'Net floor')).toBeLessThan(net);

  // A crack of three points, and undo and redo of it.
  await page.keyboard.press('c');
  await clickFloor(page, [middle[0] - 2000, middle[1] - 1000]);
  await clickFloor(page, [middle[0] - 500, middle[1]]);
  await clickFloor(page, [middle[0] - 200, middle[1] + 1500]);
  await page.keyboard.press('Enter');
  await expect.poll(() => sillFigure(page, 'Cracks')).toBeGreaterThan(3);
  const cracks = await sillFigure(page, 'Cracks');
  await page.keyboard.press('Control+z');
  await expect.poll(() => sillFigure(page, 'Cracks')).toBe(0);
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(() => sillFigure(page, 'Cracks')).toBe(cracks);

  // A joint with a typed length: two metres to the right.
  await page.keyboard.press('j');
  await clickFloor(page, [middle[0], middle[1] - 2500]);
  await page.getByRole('textbox', { name: 'Length', exact: true }).fill('2');
  await page.getByRole('textbox', { name: 'Turn', exact: true }).fill('0');
  await page.getByRole('textbox', { name: 'Turn', exact: true }).press('Enter');
  await page
    .getByRole('button', { name: 'Joint ends here' })
    .or(page.getByRole('button', { name: 'Done', exact: true }))
    .first()
    .click();
  await expect
    .poll(() => page.getByRole('listitem').filter({ hasText: 'Control joint' }).innerText())
    .toContain('2.00');

  // One zone over the whole slab, with what will be laid on it.
  await page.getByRole('tab', { name: 'Prep' }).click();
  await page.getByRole('button', { name: /whole slab/i }).click();
  await page.getByText('Adds up to the net floor').waitFor();
  const field = await sillFigure(page, 'Machine field');
  expect(field).toBeGreaterThan(0.9 * net);
  expect(field).toBeLessThan(net);

  // The takeoff: a number says why.
  await page.getByRole('tab', { name: 'Takeoff' }).click();
  await page.getByText('Not an offer', { exact: true }).waitFor();
  expect(await sillFigure(page, 'Crew hours')).toBeGreaterThan(0);

  // The zone map, at a stated scale, without a price.
  await page.getByRole('tab', { name: 'Crew' }).click();
  const sheet = page.getByRole('img', { name: /^Page 1 of/ });
  await sheet.waitFor();
  const words = (await sheet.textContent()) ?? '';
  expect(words).toMatch(/1 : \d+ on A4/);
  expect(words).not.toMatch(/[$€£]/);
  expect(words).toContain('Local law and the site rules come first');

  // Saved as a file, opened again in a browser that has never seen it: the same numbers.
  const file = await saved(page, 'Save file');
  const path = await file.path();
  const elsewhere = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB' });
  await plainFiles(elsewhere);
  const other = await elsewhere.newPage();
  await other.goto(inject('appUrl'));
  const [open] = await Promise.all([
    other.waitForEvent('filechooser'),
    other.getByRole('button', { name: 'Open a file' }).click(),
  ]);
  await open.setFiles({ name: file.suggestedFilename(), mimeType: 'application/zip', buffer: readFileSync(path) });
  await expect.poll(() => sillFigure(other, 'Cracks'), { timeout: 10_000 }).toBe(cracks);
  await page.getByRole('tab', { name: 'Survey' }).click();
  const netBefore = await sillFigure(page, 'Net floor');
  await expect.poll(() => sillFigure(other, 'Net floor')).toBe(netBefore);
  expect(faults).toEqual([]);
  await elsewhere.close();
  await context.close();
});
