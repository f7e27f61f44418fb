import type { Page } from 'playwright';
import type { Point } from '../../src/geometry/floorShape.ts';
import { inWindow } from '../../tests/support/planHand.ts';
import { numbersAtRest } from './dragApp.ts';
import { watchMainThread, type MainTask } from './mainThread.ts';
import type { Watched } from './watchPage.ts';

export interface Played extends Watched {
  /** From the first move until all numbers of the dropped thing have come. */
  readonly tasks: readonly MainTask[];
}

/** A hand does not wait for the screen: one move each sixtieth of a second, whatever has been answered. */
const MOVE_MS = 1000 / 60;

/** A wandering way about a place, px, the same every time; it ends where it began. Neighbouring moves are some px apart. */
export function recordedWay(moves: number, reachPx: number): Point[] {
  return Array.from({ length: moves }, (_, i): Point => {
    const turn = (i / moves) * 2 * Math.PI;
    return [reachPx * Math.sin(7 * turn), reachPx * Math.sin(11 * turn) * Math.cos(2 * turn)];
  });
}

/** Takes hold at a floor point and plays the moves about it. */
export async function playDrag(page: Page, from: Point, way: readonly Point[]): Promise<Played> {
  const [x, y] = await inWindow(page, from);
  const session = await page.context().newCDPSession(page);
  const send = (type: 'mouseMoved' | 'mousePressed' | 'mouseReleased', dx: number, dy: number): Promise<unknown> =>
    session.send('Input.dispatchMouseEvent', {
      type,
      x: x + dx,
      y: y + dy,
      button: 'left',
      buttons: type === 'mouseReleased' ? 0 : 1,
      clickCount: type === 'mouseMoved' ? 0 : 1,
    });
  await page.mouse.move(x, y);
  await send('mousePressed', 0, 0);
  // Past the few px that make a press a drag.
  await send('mouseMoved', 9, 0);
  const mainThread = await watchMainThread(page);
  await page.evaluate(() => window.dragWatch.start());
  const sent: Promise<unknown>[] = [];
  const startMs = performance.now();
  for (const [i, [dx, dy]] of way.entries()) {
    // oxlint-disable-next-line no-await-in-loop
    await until(startMs + i * MOVE_MS);
    sent.push(send('mouseMoved', dx, dy));
  }
  await Promise.all(sent);
  await send('mouseReleased', 0, 0);
  await session.detach();
  await page.waitForTimeout(500);
  await numbersAtRest(page);
  await page.waitForTimeout(1000);
  const watched = await page.evaluate(() => window.dragWatch.stop());
  return { ...watched, tasks: await mainThread.stop() };
}

async function until(timeMs: number): Promise<void> {
  const leftMs = timeMs - performance.now();
  if (leftMs > 0) await new Promise((resolve) => setTimeout(resolve, leftMs));
}
