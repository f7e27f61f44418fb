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

/** What sticks out of the window: the page itself may not scroll sideways, and nothing that shows may be cut off by it. */
export function sticksOut(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const found: string[] = [];
    if (document.documentElement.scrollWidth > wide) found.push(`page ${document.documentElement.scrollWidth}`);
    for (const element of document.querySelectorAll<HTMLElement>('body *')) {
      const box = element.getBoundingClientRect();
      if (box.width === 0 || box.height === 0 || (box.left >= -0.5 && box.right <= wide + 0.5)) continue;
      if (scrolledWithin(element) || element.closest('.forReaders, svg')) continue;
      found.push(
        `${element.tagName} ${element.className} "${(element.textContent ?? '').slice(0, 40)}" to ${box.right}`,
      );
    }
    return found;

    /** A wide table may scroll in its own frame. */
    function scrolledWithin(element: Element): boolean {
      for (let up = element.parentElement; up; up = up.parentElement) {
        if (/auto|scroll/.test(getComputedStyle(up).overflowX) && up.scrollWidth > up.clientWidth) return true;
      }
      return false;
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
