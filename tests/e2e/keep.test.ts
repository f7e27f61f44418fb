import type { Browser, BrowserContext, CDPSession, Page } from 'playwright';
import { build } from 'vite';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { join } from 'node:path';
import { ROOT } from '../../scripts/runTool.mjs';
import { launchChromium } from '../support/chromium.ts';

/** A real Chromium, tabs that are killed, a disk that is full, and an address without locks. */
const SECURE = 'http://localhost:4999/';
/** Plain http to another machine: no locks, no secure context. Nothing is sent anywhere, the page is made here. */
const PLAIN = 'http://phone-on-site.test/';
/** What may be lost when a tab is killed. */
const AT_RISK_MS = 250;

let browser: Browser;
let context: BrowserContext;
let script = '';

async function bundleKeepPage(): Promise<string> {
  const built = await build({
    root: ROOT,
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    build: { write: false, rolldownOptions: { input: join(ROOT, 'tests/support/keepPage.ts') } },
  });
  const outputs = [built].flat().flatMap((one) => ('output' in one ? one.output : []));
  const chunk = outputs.find((one) => one.type === 'chunk');
  if (!chunk) throw new Error('The page of the keeper tests could not be built.');
  return chunk.code;
}

async function newTab(address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.evaluate(() => window.keepPage.start());
  return page;
}

/** Kills the process behind a tab, as the system does when memory runs out. Nothing in the page gets a last word. */
async function kill(page: Page): Promise<void> {
  const session = await context.newCDPSession(page);
  const crashed = new Promise((resolve) => page.once('crash', resolve));
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

async function limitRoom(session: CDPSession, address: string, bytes?: number): Promise<void> {
  const origin = new URL(address).origin;
  await session.send('Storage.overrideQuotaForOrigin', bytes === undefined ? { origin } : { origin, quotaSize: bytes });
}

const untilSaved = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => window.keepPage.saveState().at === 'saved', null, { timeout: 15_000 });
const untilReadOnlyIs = (page: Page, want: string | null): Promise<unknown> =>
  page.waitForFunction((why) => window.keepPage.readOnly() === why, want, { timeout: 15_000 });

beforeAll(async () => {
  script = await bundleKeepPage();
  browser = await launchChromium();
});
afterAll(() => browser.close());
beforeEach(async () => {
  context = await browser.newContext();
  const body = '<!doctype html><title>keep</title><script type="module" src="/keepPage.js"></script>';
  const serve = (url: URL): boolean => [SECURE, PLAIN].includes(`${url.origin}/`);
  await context.route(serve, (route) =>
    route.request().url().endsWith('.js')
      ? route.fulfill({ contentType: 'text/javascript', body: script })
      : route.fulfill({ contentType: 'text/html', body }),
  );
});
afterEach(() => context.close());

describe('a killed tab', () => {
  test('between two drags loses nothing of the first', async () => {
    const page = await newTab(SECURE);
    const id = await page.evaluate(() => window.keepPage.newJob('Hall'));
    await page.evaluate((job) => window.keepPage.open(job), id);
    await page.evaluate(() => window.keepPage.drag(1));
    await page.waitForTimeout(AT_RISK_MS);
    await kill(page);

    const again = await newTab(SECURE);
    await again.evaluate((job) => window.keepPage.open(job), id);
    expect(await again.evaluate(() => window.keepPage.level())).toBe(1);
  });

  test('in the middle of many drags loses at most the last 250 ms, and the plan opens whole', async () => {
    const page = await newTab(SECURE);
    const id = await page.evaluate(() => window.keepPage.newJob('Hall'));
    await page.evaluate((job) => window.keepPage.open(job), id);
    await page.evaluate(async () => {
      for (let level = 1; level <= 100; level++) {
        window.keepPage.drag(level);
        // oxlint-disable-next-line no-await-in-loop -- drags come one after the other
        await new Promise((resolve) => setTimeout(resolve, 10));
      }
    });
    const done = await page.evaluate(() => window.keepPage.level());
    await kill(page);

    const again = await newTab(SECURE);
    expect(await again.evaluate((job) => window.keepPage.open(job), id)).toBeNull();
    const level = await again.evaluate(() => window.keepPage.level());
    expect(done).toBe(100);
    expect(level).toBeGreaterThanOrEqual(100 - AT_RISK_MS / 10);
  });

  test('a change is in the database within 250 ms', async () => {
    const page = await newTab(SECURE);
    const id = await page.evaluate(() => window.keepPage.newJob('Hall'));
    await page.evaluate((job) => window.keepPage.open(job), id);
    const times: number[] = [];
    for (let turn = 1; turn <= 20; turn++) {
      // oxlint-disable-next-line no-await-in-loop -- one change at a time
      times.push(await page.evaluate((level) => window.keepPage.timeToSaved(level), turn));
    }
    times.sort((a, b) => a - b);
    expect(times[10]).toBeLessThan(AT_RISK_MS);
  });
});

describe('a full disk', () => {
  test('is said, loses nothing, still saves as a file, and is written when there is room again', async () => {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await page.goto(SECURE);
    // Set before the first write: Chromium remembers for a while how much room it has found.
    await limitRoom(session, SECURE, 400_000);
    await page.evaluate(() => window.keepPage.start());
    const id = await page.evaluate(() => window.keepPage.newJob('Hall'));
    await page.evaluate((job) => window.keepPage.open(job), id);
    const hash = await page.evaluate(() => window.keepPage.addImage(2_000_000));
    await page.evaluate(() => window.keepPage.dragLarge(1, 1_000_000));
    await page.evaluate(() => window.keepPage.flush());
    expect(await page.evaluate(() => window.keepPage.saveState())).toMatchObject({
      at: 'notSaved',
      fault: 'diskFull',
      waiting: 2,
    });
    expect(await page.evaluate(() => window.keepPage.level())).toBe(1);
    expect(await page.evaluate(() => window.keepPage.levelInFile())).toBe(1);
    expect(await page.evaluate((name) => window.keepPage.imageSize(name ?? ''), hash)).toBe(2_000_000);
    // Not closed while something would be lost.
    expect(await page.evaluate(() => window.keepPage.close())).toBe(false);

    await limitRoom(session, SECURE);
    await page.evaluate(() => window.keepPage.drag(2));
    await untilSaved(page);
    await kill(page);
    const again = await newTab(SECURE);
    await again.evaluate((job) => window.keepPage.open(job), id);
    expect(await again.evaluate(() => window.keepPage.level())).toBe(2);
    expect(await again.evaluate((name) => window.keepPage.imageSize(name ?? ''), hash)).toBe(2_000_000);
  });
});

describe.each([
  ['with the locks of the browser', SECURE, true],
  ['on plain http, where there are none', PLAIN, false],
])('a second tab %s', (_name, address, hasLocks) => {
  test('reads and follows, may not write, and may when the first is closed', async () => {
    const first = await newTab(address);
    expect(await first.evaluate(() => window.keepPage.hasLocks())).toBe(hasLocks);
    const id = await first.evaluate(() => window.keepPage.newJob('Hall'));
    expect(await first.evaluate((job) => window.keepPage.open(job), id)).toBeNull();
    const second = await newTab(address);
    expect(await second.evaluate((job) => window.keepPage.open(job), id)).toBe('otherTab');

    await first.evaluate(() => window.keepPage.drag(1));
    await second.waitForFunction(() => window.keepPage.level() === 1);
    await expect(second.evaluate(() => window.keepPage.drag(7))).rejects.toThrow('otherTab');
    expect(await second.evaluate(() => window.keepPage.level())).toBe(1);

    await first.close({ runBeforeUnload: false });
    await untilReadOnlyIs(second, null);
    await second.evaluate(() => window.keepPage.drag(2));
    await untilSaved(second);
    await kill(second);
    const third = await newTab(address);
    await third.evaluate((job) => window.keepPage.open(job), id);
    await untilReadOnlyIs(third, null);
    expect(await third.evaluate(() => window.keepPage.level())).toBe(2);
  });

  test('may write when the first was killed', async () => {
    const first = await newTab(address);
    const id = await first.evaluate(() => window.keepPage.newJob('Hall'));
    await first.evaluate((job) => window.keepPage.open(job), id);
    await first.evaluate(() => window.keepPage.timeToSaved(1));
    const second = await newTab(address);
    expect(await second.evaluate((job) => window.keepPage.open(job), id)).toBe('otherTab');
    await kill(first);
    await untilReadOnlyIs(second, null);
    expect(await second.evaluate(() => window.keepPage.level())).toBe(1);
  });
});
