import type { Browser, BrowserContextOptions, Page } from 'playwright';
import { plainFiles } from './planHand.ts';

/** One person before a fresh browser, and everything the page complained of on the way. */
export interface Journey {
  readonly page: Page;
  readonly faults: string[];
  end(): Promise<void>;
}

/** Opens the address in a browser that has kept nothing yet. `before` it is opened, the ground can be prepared. */
export async function setOut(
  browser: Browser,
  address: string,
  as: BrowserContextOptions,
  before?: (page: Page) => Promise<unknown>,
): Promise<Journey> {
  const context = await browser.newContext({ locale: 'en-GB', ...as });
  await plainFiles(context);
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  await before?.(page);
  await page.goto(address);
  return { page, faults, end: () => context.close() };
}

/** What sticks out of the window or makes a part of it scroll sideways. Only a table and a sheet of paper may, in their frames. */
export function sticksOut(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const found: string[] = [];
    for (const element of document.querySelectorAll('html, body, body *')) {
      const { left, right, width, height } = element.getBoundingClientRect();
      if (width === 0 || height === 0 || element.closest('.forReaders, svg')) continue;
      const frame = element.closest('table')?.parentElement ?? element.closest('figure');
      const scrolls =
        element.scrollWidth > element.clientWidth + 1 && isFrame(element) && !element.matches(':has(table), figure');
      const leaves = (left < -0.5 || right > wide + 0.5) && !(frame && isFrame(frame));
      if (!scrolls && !leaves) continue;
      const words = (element.textContent ?? '').slice(0, 40);
      found.push(`${element.tagName} "${words}" ${scrolls ? 'scrolls' : 'reaches'} to ${Math.round(right)}`);
    }
    return found;

    function isFrame(element: Element): boolean {
      return element === document.documentElement || /auto|scroll/.test(getComputedStyle(element).overflowX);
    }
  });
}

const LEAST_TARGET_PX = 44;

/** What can be pressed but is smaller than a fingertip, with its size. */
export function smallTargets(page: Page): Promise<readonly string[]> {
  return page.evaluate((least) => {
    const found: string[] = [];
    for (const target of document.querySelectorAll<HTMLElement>(
      'button, a, [role="tab"], [role="checkbox"], summary',
    )) {
      const { width, height } = target.getBoundingClientRect();
      if (width === 0 || height === 0 || target.closest('.forReaders')) continue;
      if (width >= least - 0.5 && height >= least - 0.5) continue;
      const name = target.getAttribute('aria-label') ?? target.textContent ?? '';
      found.push(`${name.trim().slice(0, 40)} ${Math.round(width)} x ${Math.round(height)}`);
    }
    return found;
  }, LEAST_TARGET_PX);
}
