import type { BrowserContext, Page } from 'playwright';
import type { Point } from '../../src/geometry/floorShape.ts';
import { toScreen } from '../../src/canvas/camera.ts';
import { type Matrix, mapPoint } from '../../src/geometry/transform.ts';

/** Files go by download and by input, as in a browser that has no file dialogs of its own to drive. */
export async function plainFiles(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    Reflect.deleteProperty(window, 'showSaveFilePicker');
    Reflect.deleteProperty(window, 'showOpenFilePicker');
  });
}

/** Where a floor point stands in the browser's window, from what the canvas says of its camera. */
export async function inWindow(page: Page, at: Point): Promise<Point> {
  const seen = await page.locator('[data-px-per-mm]').evaluate((element) => {
    const box = element.getBoundingClientRect();
    const { middle, pxPerMm } = (element as HTMLElement).dataset;
    return {
      left: box.x,
      top: box.y,
      width: box.width,
      height: box.height,
      middle: middle ?? '',
      pxPerMm: Number(pxPerMm),
    };
  });
  const [x, y] = seen.middle.split(',').map(Number);
  const camera = { middle: [x ?? 0, y ?? 0] as const, pxPerMm: seen.pxPerMm, turnDeg: 0 };
  const [left, top] = toScreen(camera, { widthPx: seen.width, heightPx: seen.height }, at);
  return [seen.left + left, seen.top + top];
}

/** Moves the mouse to a floor point and clicks, as a hand does. */
export async function clickFloor(page: Page, at: Point): Promise<void> {
  const [x, y] = await inWindow(page, at);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.up();
}

/** Drags the mouse from one floor point to another in a few steps. */
export async function dragFloor(page: Page, from: Point, to: Point): Promise<void> {
  const [x, y] = await inWindow(page, from);
  const [u, v] = await inWindow(page, to);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + (u - x) / 3, y + (v - y) / 3);
  await page.mouse.move(x + ((u - x) * 2) / 3, y + ((v - y) * 2) / 3);
  await page.mouse.move(u, v);
  await page.mouse.up();
}

/** Clicks a pixel of a page that lies under the plan. */
export async function clickPixel(page: Page, matrix: Matrix, pixel: Point): Promise<void> {
  await clickFloor(page, mapPoint(matrix, pixel));
}

/** Until docks have opened and the camera has arrived: the plan looks the same for three frames on end. */
export async function planAtRest(page: Page): Promise<void> {
  await page.locator('[data-px-per-mm]').evaluate(async (element) => {
    const look = (): string => {
      const { x, y, width, height } = element.getBoundingClientRect();
      const { middle, pxPerMm } = (element as HTMLElement).dataset;
      return [x, y, width, height, middle, pxPerMm].join();
    };
    let was = '';
    for (let same = 0; same < 3;) {
      await new Promise(requestAnimationFrame);
      same = look() === was ? same + 1 : 0;
      was = look();
    }
  });
}

/** Taps a floor point with a finger. */
export async function tapFloor(page: Page, at: Point): Promise<void> {
  await planAtRest(page);
  const [x, y] = await inWindow(page, at);
  await page.touchscreen.tap(x, y);
}

/** The figure under a label of the sill, as a number; NaN while there is none. */
export async function sillFigure(page: Page, label: string): Promise<number> {
  const sill = await page.getByRole('region', { name: 'Totals of this floor' }).innerText();
  const lines = sill.split('\n').map((line) => line.trim());
  const figure = lines[lines.findIndex((line) => line.startsWith(label)) + 1] ?? '';
  return Number.parseFloat(figure.replaceAll(',', '').replace(/^[^\d-]+/, ''));
}
