import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page as browserPage } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import { toScreen, type Camera, type View } from '../../src/canvas/camera.ts';
import { pageImages } from '../../src/canvas/layers/pageImages.ts';
import { PlanStage, type PlanStageProps } from '../../src/canvas/layers/PlanStage.tsx';
import { liveLine } from '../../src/canvas/paint/guides.ts';
import { SHOW_ALL } from '../../src/canvas/paint/paintFloor.ts';
import { planView } from '../../src/canvas/paint/view.ts';
import type { Point } from '../../src/geometry/floorShape.ts';
import { applyCells } from '../../src/model/doc.ts';
import { hallPlan, HALL_FLOOR } from '../support/paintedPlan.ts';

const VIEW: View = { widthPx: 800, heightPx: 600 };
const CAMERA: Camera = { middle: [12_000, 8000], pxPerMm: 0.03, turnDeg: 0 };
const NONE: readonly never[] = [];

const props: PlanStageProps = {
  plan: planView(hallPlan(), HALL_FLOOR),
  showing: SHOW_ALL,
  camera: CAMERA,
  hand: NONE,
  images: null,
  scale: 'metric',
  moving: false,
};

function Framed(more: Partial<PlanStageProps>): React.ReactElement {
  return (
    <div style={{ position: 'fixed', left: 0, top: 0, width: VIEW.widthPx, height: VIEW.heightPx }}>
      <PlanStage {...props} {...more} />
    </div>
  );
}

type Colour = readonly [red: number, green: number, blue: number];

/** What the eye sees at a floor point: all layers, one over the other. */
function colourAt(at: Point, camera = CAMERA): Colour {
  const canvases = [...document.querySelectorAll('canvas')];
  const eye = document.createElement('canvas');
  eye.width = 1;
  eye.height = 1;
  const context = eye.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('no canvas');
  const [x, y] = toScreen(camera, VIEW, at);
  for (const canvas of canvases) {
    const ratio = canvas.width / VIEW.widthPx;
    context.drawImage(canvas, -Math.round(x * ratio), -Math.round(y * ratio));
  }
  const [red = 0, green = 0, blue = 0] = context.getImageData(0, 0, 1, 1).data;
  return [red, green, blue];
}

function token(name: string): Colour {
  const [red = 0, green = 0, blue = 0] = (
    getComputedStyle(document.documentElement)
      .getPropertyValue(name)
      .match(/[0-9a-f]{2}/gi) ?? []
  ).map((part) => Number.parseInt(part, 16));
  return [red, green, blue];
}

let root: Root | null = null;

function show(element: React.ReactElement): void {
  if (!root) {
    const place = document.createElement('div');
    document.body.append(place);
    root = createRoot(place);
  }
  root.render(element);
}

const frame = (): Promise<unknown> =>
  new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 20))));

async function drawn(): Promise<void> {
  await document.fonts.ready;
  // React, the size observer, konva's batch: each takes a frame of its own.
  await frame().then(frame).then(frame);
}

beforeEach(async () => {
  await browserPage.viewport(VIEW.widthPx, VIEW.heightPx);
});

afterEach(() => {
  root?.unmount();
  root = null;
  document.documentElement.dataset['theme'] = 'light';
});

describe('the plan on the screen', () => {
  test('a column is ink, the wall outside the floor is ink, bare ground is bare', async () => {
    show(<Framed />);
    await drawn();
    expect(colourAt([3800, 5200])).toEqual(token('--ink'));
    // The wall of 8 px lies outside the floor: half of that at 0.03 px a mm is 133 mm.
    expect(colourAt([12_000, -133])).toEqual(token('--ink'));
    expect(colourAt([12_000, -1700])).toEqual([0, 0, 0]);
    // The threshold of the doorway that stops shows the floor's colour where no tooth stands.
    expect(colourAt([5600 + 24 * 33.34, 16_190])).toEqual(token('--slab'));
  });

  test("the live line is chalk, and only the hand's canvas is drawn again for it", async () => {
    show(<Framed />);
    await drawn();
    const at: Point = [5000, 7000];
    expect(colourAt(at)).not.toEqual(token('--chalk'));
    const canvases = [...document.querySelectorAll('canvas')];
    const calls = canvases.map(() => 0);
    const contexts = canvases.map((canvas) => canvas.getContext('2d'));
    for (const [i, context] of contexts.entries()) {
      const clear = context?.clearRect.bind(context);
      if (context && clear) context.clearRect = (...box) => ((calls[i] = (calls[i] ?? 0) + 1), clear(...box));
    }
    show(
      <Framed
        hand={liveLine([
          [3000, 7000],
          [7000, 7000],
        ])}
      />,
    );
    await drawn();
    expect(colourAt(at)).toEqual(token('--chalk'));
    expect(calls.slice(0, -1)).toEqual(canvases.slice(0, -1).map(() => 0));
    expect(calls.at(-1)).toBeGreaterThan(0);
  });

  test('another theme is read and drawn', async () => {
    show(<Framed />);
    await drawn();
    document.documentElement.dataset['theme'] = 'dark';
    await drawn();
    const [red] = colourAt([3800, 5200]);
    expect(red).toBeGreaterThan(200);
    expect(colourAt([3800, 5200])).toEqual(token('--ink'));
  });

  test('the camera moves, turns and zooms the floor', async () => {
    const camera: Camera = { middle: [3800, 5200], pxPerMm: 0.1, turnDeg: 90 };
    show(<Framed camera={camera} showing={{ ...SHOW_ALL, tags: false }} />);
    await drawn();
    expect(colourAt([3800, 5200], camera)).toEqual(token('--ink'));
    expect(colourAt([3800 + 150, 5200], camera)).toEqual(token('--ink'));
    expect(colourAt([3800 + 260, 5200], camera)).not.toEqual(token('--ink'));
  });

  test('the element takes touches itself, is hidden from screen readers, and tells its size', async () => {
    const sizes: View[] = [];
    let element: HTMLDivElement | null = null;
    const keep = (now: HTMLDivElement | null): void => {
      element ??= now;
    };
    show(<Framed onElement={keep} onSize={(size) => sizes.push(size)} />);
    await drawn();
    const got = element as HTMLDivElement | null;
    expect(got?.getAttribute('aria-hidden')).toBe('true');
    expect(got && getComputedStyle(got).touchAction).toBe('none');
    expect(sizes[0]).toEqual(VIEW);
  });
});

test('a page image comes when it is read, and lies where its page says', async () => {
  const canvas = document.createElement('canvas');
  canvas.width = 100;
  canvas.height = 50;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  context.fillStyle = 'rgb(200, 30, 40)';
  context.fillRect(0, 0, 100, 50);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done));
  const page = {
    floor: HALL_FLOOR,
    name: 'P',
    image: 'abc',
    widthPx: 100,
    heightPx: 50,
    origin: [1000, -1900],
    guessMmPerPx: 20,
    dimensions: [],
  };
  const doc = applyCells(
    hallPlan(),
    Object.entries(page).map(([slot, value]) => ['page:p', slot, value] as const),
  );
  const images = pageImages(async () => blob);
  show(<Framed plan={planView(doc, HALL_FLOOR)} images={images} />);
  await expect.poll(() => colourAt([2000, -1400])).toEqual([200, 30, 40]);
  expect(colourAt([900, -1400])).toEqual([0, 0, 0]);
  images.close();
});
