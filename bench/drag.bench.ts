import { writeJobFile } from '../src/exchange/jobFile.ts';
import type { FloorShape, Point } from '../src/geometry/floorShape.ts';
import { distance } from '../src/geometry/point.ts';
import { clickFloor, planAtRest } from '../tests/support/planHand.ts';
import { numbersAtRest, openApp, openJob, zoomTo, type DragApp } from './drag/dragApp.ts';
import type { MainTask } from './drag/mainThread.ts';
import { playDrag, recordedWay, type Played } from './drag/playDrag.ts';
import { worldJob } from './worldJob.ts';
import { world } from './worlds.ts';

/** How live the largest floor is under the hand: three recorded drags in a real browser, the app as it is built. */
export const name = 'drag';

const MOVES = 1000;
const REACH_PX = 60;
/** Near enough that a column can be held by its middle, px per mm. */
const NEAR = 0.12;

interface Drag {
  readonly what: string;
  /** A click here picks the item; null: where it is held. */
  readonly pickAt: Point | null;
  readonly holdAt: Point;
  readonly pxPerMm: number | null;
}

export async function run(print: (line: string) => void): Promise<void> {
  const shape = world('W3');
  const app = await openApp();
  if (!app) return print('There is no Chromium on this machine: nothing was dragged. Set CHROMIUM_PATH to one.');
  try {
    await openJob(app.page, 'w3.slabtooth', writeJobFile(worldJob('W3', shape), new Map(), new Map()));
    await numbersAtRest(app.page);
    for (const drag of dragsOf(shape)) {
      // One at a time: they share the screen.
      // oxlint-disable-next-line no-await-in-loop
      print(`${drag.what}: ${said(await dragged(app, drag))}`);
    }
  } finally {
    await app.close();
  }
}

async function dragged({ page }: DragApp, { pickAt, holdAt, pxPerMm }: Drag): Promise<Played> {
  await page.keyboard.press('Escape');
  await page.keyboard.press('0');
  await planAtRest(page);
  if (pxPerMm !== null) await zoomTo(page, holdAt, pxPerMm);
  await clickFloor(page, pickAt ?? holdAt);
  await planAtRest(page);
  await numbersAtRest(page);
  return playDrag(page, holdAt, recordedWay(MOVES, REACH_PX));
}

/** A crack in the open, the column that stands nearest to a wall, so that its place makes a difference, and a corner of the slab. */
function dragsOf(shape: FloorShape): Drag[] {
  const crack = shape.lines[7]?.path ?? [];
  const column = nearestTo(
    shape.walls.map(({ body }) => middleOf(body)),
    shape.solids.map(({ ring }) => middleOf(ring)),
  );
  const corner = shape.slabs[0]?.ring[8] ?? [0, 0];
  return [
    { what: 'a crack point', pickAt: halfWay(crack[0], crack[1]), holdAt: crack[1] ?? [0, 0], pxPerMm: NEAR },
    { what: 'a column', pickAt: null, holdAt: column, pxPerMm: NEAR },
    { what: 'a slab corner, whole floor in sight', pickAt: null, holdAt: corner, pxPerMm: null },
  ];
}

function nearestTo(marks: readonly Point[], places: readonly Point[]): Point {
  const gap = (place: Point): number => Math.min(...marks.map((mark) => distance(mark, place)));
  return places.toSorted((a, b) => gap(a) - gap(b))[0] ?? [0, 0];
}

function middleOf(ring: readonly Point[]): Point {
  const sum = ring.reduce(([x, y], at): Point => [x + at[0], y + at[1]], [0, 0] as Point);
  return [sum[0] / ring.length, sum[1] / ring.length];
}

function halfWay(a: Point = [0, 0], b: Point = [0, 0]): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function said({ delaysMs, figures, tasks }: Played): string {
  const answered = delaysMs.filter((ms) => ms !== null).toSorted((a, b) => a - b);
  const at = (share: number): string => (answered[Math.floor((answered.length - 1) * share)] ?? NaN).toFixed(0);
  const longest = (ms: (task: MainTask) => number): string => Math.max(0, ...tasks.map(ms)).toFixed(0);
  const over = tasks.filter(({ wallMs }) => wallMs > 50).length;
  return [
    `move to numbers on screen p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, max ${at(1)} ms`,
    `${answered.length} of ${delaysMs.length} moves answered, ${figures} different sets of figures`,
    `main-thread tasks over 50 ms: ${over}; longest ${longest((task) => task.wallMs)} ms, of a processor ${longest((task) => task.cpuMs)} ms`,
  ].join('; ');
}
