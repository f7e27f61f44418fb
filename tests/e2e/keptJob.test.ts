/**
 * What a person does is not lost, in the app as it is built: a tab that is killed, a second tab, a file that comes back, one that is too new or
 * broken, a full disk. And what leaves with the crew holds no amount.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Browser, Download, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { ROOT } from '../../scripts/runTool.mjs';
import type { Point } from '../../src/geometry/floorShape.ts';
import { VERSION } from '../../src/model/envelope.ts';
import { launchChromium } from '../support/chromium.ts';
import { setOut } from '../support/journey.ts';
import { dragFloor, inWindow, planAtRest, sillFigure } from '../support/planHand.ts';

const DESK = { viewport: { width: 1440, height: 900 } };
const WORKSHOP = readFileSync(join(ROOT, 'public/demo/workshop.slabtooth'));

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

/** A new job with a slab of 6 by 4 m, dragged as a rectangle. Square metres are as exact as the grid of the screen. */
async function slabOf24(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Blank' }).click();
  await page.getByRole('button', { name: 'New job', exact: true }).click();
  await page.getByRole('button', { name: 'Sketch it here' }).click();
  await planAtRest(page);
  await dragFloor(page, [2000, 2000], [8000, 6000]);
  await expect.poll(() => sillFigure(page, 'Net floor')).toBe(24);
}

async function dragColumn(page: Page, from: Point): Promise<void> {
  await page.keyboard.press('b');
  await dragFloor(page, from, [from[0] + 1000, from[1] + 1000]);
}

const isKept = (page: Page): Promise<void> => page.getByText('Saved here, no copy on file').waitFor();

/** Kills the process behind a tab, as the system does when memory runs out. Nothing in the page gets a last word. */
async function kill(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const crashed = new Promise((resolve) => page.once('crash', resolve));
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

async function limitRoom(page: Page, quotaSize?: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const { origin } = new URL(inject('appUrl'));
  await session.send('Storage.overrideQuotaForOrigin', quotaSize === undefined ? { origin } : { origin, quotaSize });
}

async function save(page: Page, item: string): Promise<Uint8Array> {
  await page.getByRole('button', { name: /, ground floor/i }).click();
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('menuitem', { name: item }).click()]);
  return bytesOf(file);
}

async function bytesOf(file: Download): Promise<Uint8Array> {
  return readFileSync(await file.path());
}

async function openFile(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a file' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/zip', buffer: Buffer.from(bytes) });
}

type Saved = { minReader: number; records: Record<string, Record<string, unknown>> };

/** The same file with its job.json rewritten by `change`. */
function rewritten(file: Uint8Array, change: (job: Saved) => void): Uint8Array {
  const entries = unzipSync(file);
  const job = JSON.parse(strFromU8(entries['job.json'] ?? new Uint8Array())) as Saved;
  change(job);
  return zipSync({ ...entries, 'job.json': strToU8(JSON.stringify(job)) });
}

/** Puts a scan under the plan that is larger than the room that is left. */
async function putScanUnder(page: Page): Promise<void> {
  // Nothing is in the hand and nothing is picked: the sheet speaks of the plan page.
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Put a plan page under' }).click(),
  ]);
  await chooser.setFiles(join(ROOT, 'tests/data/plan-scans/storey-a.png'));
}

describe('a tab', () => {
  test('that is killed between two drags: what was done is there', async () => {
    const { page, end } = await setOut(browser, inject('appUrl'), DESK);
    await slabOf24(page);
    await dragColumn(page, [3000, 3000]);
    await expect.poll(() => sillFigure(page, 'Net floor')).toBe(23);
    await isKept(page);
    const address = page.url();
    // The second one is under way.
    const [x, y] = await inWindow(page, [6000, 3000]);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 30, y + 30);
    await page.mouse.move(x + 60, y + 60);
    await kill(page);

    const again = await page.context().newPage();
    await again.goto(address);
    await expect.poll(() => sillFigure(again, 'Net floor')).toBe(23);
    expect(await sillFigure(again, 'Obstructions')).toBe(1);
    await dragColumn(again, [6000, 3000]);
    await expect.poll(() => sillFigure(again, 'Net floor')).toBe(22);
    await end();
  });

  test('that is the second one reads and follows, and draws once the first is closed', async () => {
    const { page: first, end } = await setOut(browser, inject('appUrl'), DESK);
    await slabOf24(first);
    await isKept(first);
    const second = await first.context().newPage();
    await second.goto(first.url());
    const bar = second.getByText('Read only: this job is open in another tab. Close it there and you can draw here.');
    await bar.waitFor();
    await expect.poll(() => sillFigure(second, 'Net floor')).toBe(24);
    await planAtRest(second);
    await dragColumn(second, [6000, 3000]);
    await second.getByText('Nothing was changed: this job is open for drawing in another tab.').waitFor();
    await expect.poll(() => sillFigure(second, 'Net floor')).toBe(24);

    await first.bringToFront();
    await dragColumn(first, [3000, 3000]);
    await expect.poll(() => sillFigure(second, 'Net floor')).toBe(23);
    await first.close();
    await bar.waitFor({ state: 'detached' });
    await dragColumn(second, [6000, 3000]);
    await expect.poll(() => sillFigure(second, 'Net floor')).toBe(22);
    await isKept(second);
    await end();
  });
});

describe('a file', () => {
  test('comes back as it was, in the place of the job it is a copy of', async () => {
    const { page, faults, end } = await setOut(browser, inject('appUrl'), DESK);
    await slabOf24(page);
    await dragColumn(page, [3000, 3000]);
    await expect.poll(() => sillFigure(page, 'Net floor')).toBe(23);
    const file = await save(page, 'Save file');
    await page.getByText(/The copy holds everything/).waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => sillFigure(page, 'Net floor')).toBe(24);
    await page.getByRole('button', { name: /, ground floor/i }).click();
    await page.getByRole('menuitem', { name: 'All jobs' }).click();
    await openFile(page, 'back.slabtooth', file);
    await page.getByRole('dialog', { name: 'This job is here already' }).waitFor();
    await page.getByRole('button', { name: 'Put in its place' }).click();
    await expect.poll(() => sillFigure(page, 'Net floor')).toBe(23);
    expect(faults).toEqual([]);
    await end();
  });

  test('of a newer Slabtooth is read only, and says so', async () => {
    const { page, end } = await setOut(browser, inject('appUrl'), DESK);
    const newer = rewritten(WORKSHOP, (job) => {
      job.minReader = VERSION + 1;
    });
    await openFile(page, 'newer.slabtooth', newer);
    await page.getByText('Read only: a newer Slabtooth saved this job.').waitFor();
    await expect.poll(() => sillFigure(page, 'Net floor')).toBeGreaterThan(300);
    const net = await sillFigure(page, 'Net floor');
    await planAtRest(page);
    await dragColumn(page, [6000, 3000]);
    await page.getByText('Nothing was changed: this job was saved by a newer Slabtooth').waitFor();
    await expect.poll(() => sillFigure(page, 'Net floor')).toBe(net);
    await end();
  });

  test('that is broken is a sentence, and nothing else', async () => {
    const { page, faults, end } = await setOut(browser, inject('appUrl'), DESK);
    const noJson = zipSync({ ...unzipSync(WORKSHOP), 'job.json': strToU8('{"format":"slabtooth","version":1,') });
    await openFile(page, 'half.slabtooth', WORKSHOP.subarray(0, WORKSHOP.length / 2));
    await page.getByText('"half.slabtooth" is not a Slabtooth file. Choose one that ends in .slabtooth.').waitFor();
    await openFile(page, 'torn.slabtooth', noJson);
    await page.getByText('The job in "torn.slabtooth" is damaged and cannot be read. Try an older copy.').waitFor();
    await page.getByText('No job of yours in this browser yet.').waitFor();
    expect(faults).toEqual([]);
    await end();
  });

  test('for the crew holds no amount of the job, in its bytes or unpacked', async () => {
    const { page, end } = await setOut(browser, inject('appUrl'), DESK);
    // Amounts that stand nowhere else by chance, one for each price of the job.
    const amounts: number[] = [];
    const priced = rewritten(WORKSHOP, ({ records }) => {
      for (const [id, price] of Object.entries(records)) {
        if (!id.startsWith('price:')) continue;
        price['amount'] = 73_100_017 + 1009 * amounts.length;
        amounts.push(price['amount'] as number);
      }
    });
    expect(amounts.length).toBeGreaterThan(20);
    await openFile(page, 'priced.slabtooth', priced);
    await expect.poll(() => sillFigure(page, 'Net floor')).toBeGreaterThan(300);
    const written = (file: Uint8Array): string =>
      [file, ...Object.values(unzipSync(file))].map((bytes) => strFromU8(bytes, true)).join('\n');
    const found = (file: Uint8Array): readonly number[] => {
      const text = written(file);
      return amounts.filter((amount) => [String(amount), (amount / 100).toFixed(2)].some((one) => text.includes(one)));
    };
    // The search finds them all where they are.
    expect(found(await save(page, 'Save file'))).toEqual(amounts);
    const crew = await save(page, 'Save crew copy');
    expect(found(crew)).toEqual([]);
    const job = strFromU8(unzipSync(crew)['job.json'] ?? new Uint8Array());
    expect(job).not.toMatch(/"(price|pricing|estimate|letter):|currency|USD|[$€£]/);
    // It is the job all the same.
    expect(job).toContain('"zone:hall"');
    // Opened, it stands where the crew works from.
    await page.getByRole('button', { name: 'Workshop, Ground floor' }).click();
    await page.getByRole('menuitem', { name: 'All jobs' }).click();
    await openFile(page, 'crew.slabtooth', crew);
    await page.getByRole('button', { name: 'Open beside it' }).click();
    await page.getByRole('tab', { name: 'Crew', selected: true }).waitFor();
    await end();
  });
});

test('a full disk is a sentence: the work stays, goes into a file, and is kept when there is room again', async () => {
  // Without the offline copy of the app, which would fill the same room.
  const { page, end } = await setOut(browser, inject('appUrl'), { ...DESK, serviceWorkers: 'block' }, (before) =>
    // Chromium remembers for a while how much room it has found: it is small from the first.
    limitRoom(before, 400_000),
  );
  await slabOf24(page);
  await putScanUnder(page);
  const says = page.getByText(
    /Not saved: the disk is full\. .* on this screen only\. Make room, or save the job as a file now/,
  );
  await says.waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('status').getByRole('button', { name: 'Save file' }).click(),
  ]);
  const names = Object.keys(unzipSync(await bytesOf(download)));
  expect(names).toContain('job.json');
  expect(names.filter((name) => name.startsWith('images/'))).toHaveLength(1);

  await limitRoom(page);
  await page.keyboard.press('Control+z');
  await says.waitFor({ state: 'detached' });
  const address = page.url();
  await kill(page);
  const again = await page.context().newPage();
  await again.goto(address);
  await expect.poll(() => sillFigure(again, 'Net floor')).toBe(24);
  await end();
});
