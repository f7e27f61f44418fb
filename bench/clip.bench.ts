// How clipping grows with the plan: many columns taken out of one slab, and overlapping zones joined.
// Invented plans on a regular raster; common practice, no source.
import { type ClipResult, subtract, union } from '../src/geometry/clip.ts';
import type { Region, Ring } from '../src/geometry/floorShape.ts';
import { timed } from './timed.ts';

const BAY_MM = 6000;
const COLUMN_MM = 400;

const square = (x: number, y: number, side: number): Ring => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
];

/** One square of the given side in each bay of a raster of `count` by `count`. */
function raster(count: number, side: number): Region {
  return Array.from({ length: count * count }, (_, i) => {
    const x = (i % count) * BAY_MM;
    const y = Math.floor(i / count) * BAY_MM;
    return [square(x + 100, y + 100, side)];
  });
}

const slab = (count: number): Region => [[square(0, 0, count * BAY_MM)]];

interface Measure {
  readonly what: string;
  readonly size: number;
  readonly run: () => void;
}

/** A failed clip is quick, and its time would be a lie. */
function sound(answer: ClipResult): void {
  if (!answer.ok) throw new Error(`The clip failed: ${answer.code}.`);
}

function columns(count: number): Measure {
  const solids = raster(count, COLUMN_MM);
  return { what: 'columns out of a slab', size: solids.length, run: () => sound(subtract(slab(count), solids)) };
}

function overlapping(count: number): Measure {
  const zones = raster(count, BAY_MM + 250);
  return { what: 'overlapping zones joined', size: zones.length, run: () => sound(union(zones.map((zone) => [zone]))) };
}

export async function run(print: (line: string) => void): Promise<void> {
  for (const { what, size, run: once } of [5, 10, 20].flatMap((count) => [columns(count), overlapping(count)])) {
    // One at a time: two measures at once would slow each other.
    // oxlint-disable-next-line no-await-in-loop
    const { medianMs, fastestMs, runs } = await timed(once);
    print(`${what}, ${size}: median ${medianMs.toFixed(2)} ms, fastest ${fastestMs.toFixed(2)} ms, ${runs} runs`);
  }
}
