import { join } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright';
import { build, preview } from 'vite';
import { CHROMIUM_FLAGS, findChromium } from '../../scripts/chromium.mjs';
import type { Point } from '../../src/geometry/floorShape.ts';
import { inWindow, plainFiles, planAtRest } from '../../tests/support/planHand.ts';
import { watchPage } from './watchPage.ts';

/** npm starts a script in the project's folder; a bundled file no longer knows where it came from. */
const ROOT = process.cwd();

export interface DragApp {
  readonly page: Page;
  close(): Promise<void>;
}

/** The app as it is built, served and opened in a real browser. Null when there is no Chromium on this machine. */
export async function openApp(): Promise<DragApp | null> {
  const executablePath = findChromium();
  if (!executablePath) return null;
  const outDir = join(ROOT, '.cache', 'drag-app');
  const shared = { root: ROOT, configFile: join(ROOT, 'vite.config.ts'), logLevel: 'warn' } as const;
  await build({ ...shared, mode: 'production', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    ...shared,
    build: { outDir },
    preview: { port: 0, host: 'localhost' },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('The preview server has no port.');
  const browser: Browser = await chromium.launch({ args: CHROMIUM_FLAGS, executablePath });
  const context = await browser.newContext({ locale: 'en-GB', viewport: { width: 1440, height: 900 } });
  await plainFiles(context);
  await context.addInitScript(watchPage);
  const page = await context.newPage();
  page.on('pageerror', (error) => console.error(error));
  await page.goto(`http://localhost:${address.port}/`);
  return {
    page,
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

export async function openJob(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open a file' }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/zip', buffer: Buffer.from(bytes) });
  await page.locator('[data-px-per-mm]').waitFor({ timeout: 120_000 });
  await planAtRest(page);
}

/** No numbers are on their way any more. */
export async function numbersAtRest(page: Page, timeoutMs = 300_000): Promise<void> {
  await page.locator('[data-answers][aria-busy="false"]').waitFor({ timeout: timeoutMs });
}

/** The wheel, at a floor point, until the plan is so near. */
export async function zoomTo(page: Page, at: Point, pxPerMm: number): Promise<void> {
  const near = (): Promise<number> =>
    page.locator('[data-px-per-mm]').evaluate((plan) => Number((plan as HTMLElement).dataset['pxPerMm']));
  // One notch after the other, each where the point is then.
  async function notch(left: number): Promise<void> {
    if (left === 0 || (await near()) >= pxPerMm) return;
    const [x, y] = await inWindow(page, at);
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -100);
    await planAtRest(page);
    await notch(left - 1);
  }
  await notch(60);
}
