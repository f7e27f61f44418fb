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
import { formRing } from '../../src/geometry/formRing.ts';
import { ringContains } from '../../src/geometry/ring.ts';
import type { RecordId } from '../../src/model/cell.ts';
import { applyCells, cellsFor, recordOf } from '../../src/model/doc.ts';
import { laidOver } from '../../src/model/overlay.ts';
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

describe('a crowded floor', () => {
  /** The hall with thousands of cracks in a far corner of it. */
  const crowd = applyCells(
    hallPlan(),
    Array.from({ length: 3000 }, (_, i) =>
      cellsFor(`crack:crowd${i}`, {
        floor: HALL_FLOOR,
        tag: `${i}`,
        path: [
          [100 + (i % 60), 100 + i / 60],
          [110 + (i % 60), 100 + i / 60],
        ],
        widthMm: null,
        depthMm: null,
        behaviour: 'notJudged',
      }),
    ).flat(),
  );
  const BARE = { ...SHOW_ALL, zones: false, tags: false };
  const COLUMN: Point = [3800, 5200];
  const column = [...crowd.keys()].find((id) => id.startsWith('obstruction:') && isAt(id, COLUMN));

  function isAt(id: RecordId, at: Point): boolean {
    const item = recordOf(crowd, 'obstruction', id);
    return item !== null && ringContains(formRing(item.shape), at);
  }

  test('is drawn aside and shown as a picture; what is carried is in its new place at once, and leaves the old one', async () => {
    show(<Framed plan={planView(crowd, HALL_FLOOR)} showing={BARE} />);
    await expect.poll(() => colourAt(COLUMN), { timeout: 5000 }).toEqual(token('--ink'));
    const to: Point = [12_000, 3000];
    expect(colourAt(to)).toEqual(token('--slab'));
    const moved = laidOver(crowd, [
      [column ?? 'obstruction:none', 'shape', { form: 'rectangle', at: to, widthMm: 600, depthMm: 600, turnDeg: 0 }],
    ]);
    show(<Framed plan={planView(moved, HALL_FLOOR)} showing={BARE} />);
    await drawn();
    expect(colourAt(to)).toEqual(token('--ink'));
    expect(colourAt(COLUMN)).not.toEqual(token('--ink'));
    // At rest it is drawn where it is, and nothing is left of where it was.
    await expect.poll(() => colourAt(COLUMN), { timeout: 5000 }).toEqual(token('--slab'));
    expect(colourAt(to)).toEqual(token('--ink'));
  });

  test('is moved as a picture while the camera moves, and drawn when it rests', async () => {
    const plan = planView(crowd, HALL_FLOOR);
    show(<Framed plan={plan} />);
    await expect.poll(() => colourAt(COLUMN), { timeout: 5000 }).toEqual(token('--ink'));
    const aside: Camera = { ...CAMERA, middle: [10_000, 8000] };
    show(<Framed plan={plan} camera={aside} moving />);
    await drawn();
    expect(colourAt(COLUMN, aside)).toEqual(token('--ink'));
    show(<Framed plan={plan} camera={aside} />);
    await drawn();
    expect(colourAt(COLUMN, aside)).toEqual(token('--ink'));
  });
});
