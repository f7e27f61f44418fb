import type { CDPSession, Page } from 'playwright';
import type { Point } from '../../src/geometry/floorShape.ts';

/** Fingers on the glass of a page: real touch points, as the browser gets them from a screen. */
export interface Fingers {
  /** One finger that is held and slid: the point that is meant stands above it. */
  slide(from: Point, to: Point): Promise<void>;
  /** Two fingers, moved apart or together in a few steps. Places in window pixels. */
  pinch(from: readonly [Point, Point], to: readonly [Point, Point]): Promise<void>;
}

const STEPS = 6;
const SLIP_PX = 15;

export async function fingersOn(page: Page): Promise<Fingers> {
  const session = await page.context().newCDPSession(page);
  return {
    slide: (from, to) => move(session, [from], [to]),
    pinch: (from, to) => move(session, from, to),
  };
}

async function move(session: CDPSession, from: readonly Point[], to: readonly Point[]): Promise<void> {
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: readonly Point[]): Promise<unknown> =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: at.map(([x, y], id) => ({ x, y, id })) });
  // Two fingers never land at once: the first has slid a little, and begun to aim, before the second is there.
  const [first] = from;
  if (first && from.length > 1) {
    await send('touchStart', [[first[0] - SLIP_PX, first[1]]]);
    await send('touchMove', [first]);
  }
  await send('touchStart', from);
  for (let step = 1; step <= STEPS; step++) {
    const part = step / STEPS;
    await send(
      'touchMove',
      from.map(([x, y], index) => alongTo([x, y], to[index] ?? [x, y], part)),
    );
  }
  await send('touchEnd', []);
}

const alongTo = ([x, y]: Point, [u, v]: Point, part: number): Point => [x + (u - x) * part, y + (v - y) * part];
