import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { preview, type PreviewServer } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT } from '../../scripts/runTool.mjs';
import { launchChromium } from '../support/chromium.ts';

/** A copy of the built app with a server of its own, so that it can be switched off and updated. */
const folder = mkdtempSync(join(tmpdir(), 'slabtooth-offline-'));
let server: PreviewServer;
let browser: Browser;

async function serve(port: number): Promise<PreviewServer> {
  const options = { port, strictPort: port !== 0, host: 'localhost' };
  return preview({ root: folder, configFile: false, build: { outDir: folder }, preview: options, logLevel: 'silent' });
}

function portOf(of: PreviewServer): number {
  const address = of.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('The server has no port.');
  return address.port;
}

/** Waits until the service worker of this page has stored the app and answers for it. */
async function keptOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
  });
}

const shellsKept = (page: Page): Promise<string[]> => page.evaluate(() => caches.keys());

beforeAll(async () => {
  cpSync(join(ROOT, '.cache', 'e2e-app'), folder, { recursive: true });
  server = await serve(0);
  browser = await launchChromium();
});

afterAll(async () => {
  await browser.close();
  await server.close().catch(() => undefined);
  rmSync(folder, { recursive: true, force: true });
});

describe('with no signal', () => {
  test('the app opens with the server gone, and takes a new version only when told', async () => {
    const port = portOf(server);
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(`http://localhost:${port}/`);
    await keptOffline(page);
    const [first] = await shellsKept(page);
    expect(first).toMatch(/^slabtooth-shell-[0-9a-f]{16}$/);

    await server.close();
    await context.setOffline(true);
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('requestfailed', (request) => faults.push(request.url()));
    await page.reload();
    await page.waitForFunction(() => (document.getElementById('root')?.childElementCount ?? 0) > 0);
    expect(await page.title()).toBe('Slabtooth');
    expect(faults).toEqual([]);

    // A new build: one file changes, so does the hash in the worker, as the build itself would write it.
    const markup = readFileSync(join(folder, 'index.html'), 'utf8');
    writeFileSync(join(folder, 'index.html'), markup.replace('<title>Slabtooth</title>', '<title>Slabtooth 2</title>'));
    const worker = readFileSync(join(folder, 'sw.js'), 'utf8');
    const hash = (first ?? '').replace('slabtooth-shell-', '');
    expect(worker).toContain(hash);
    writeFileSync(join(folder, 'sw.js'), worker.replace(hash, '0123456789abcdef'));
    server = await serve(port);
    await context.setOffline(false);

    await page.reload();
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
      const { installing } = registration;
      if (registration.waiting || !installing) return;
      await new Promise((resolve) => installing.addEventListener('statechange', resolve));
    });
    expect(await page.title()).toBe('Slabtooth');
    expect(new Set(await shellsKept(page))).toEqual(new Set(['slabtooth-shell-0123456789abcdef', first]));

    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve));
      registration.waiting?.postMessage('skip-waiting');
      await changed;
    });
    await page.reload();
    expect(await page.title()).toBe('Slabtooth 2');
    expect(await shellsKept(page)).toEqual(['slabtooth-shell-0123456789abcdef']);
    await context.close();
  });

  test('the list of kept files is the built folder, page by its folder, worker left out', () => {
    const worker = readFileSync(join(folder, 'sw.js'), 'utf8');
    const list = /\[("\.\/.*?")\]/.exec(worker);
    const files = JSON.parse(`[${list?.[1] ?? ''}]`) as string[];
    expect(files).toContain('./');
    expect(files).toContain('./icon-192.png');
    expect(files).toContain('./manifest.webmanifest');
    expect(files.some((file) => /^\.\/assets\/main-.*\.js$/.test(file))).toBe(true);
    expect(files).not.toContain('./sw.js');
    expect(files).not.toContain('./index.html');
  });

  test('the app under test is a production build', () => {
    const assets = join(folder, 'assets');
    const scripts = readdirSync(assets).filter((file) => file.endsWith('.js'));
    const all = scripts.map((file) => readFileSync(join(assets, file), 'utf8')).join('\n');
    expect(scripts.length).toBeGreaterThan(0);
    // React's development build carries this address; so would an app that Vite built inside a test run.
    expect(all).not.toContain('react.dev/link/react-devtools');
  });
});
