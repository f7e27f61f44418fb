import { measureFloor } from '../src/geometry/measureFloor.ts';
import { measureMemory } from '../src/geometry/measureMemory.ts';
import { planShape } from '../src/takeoff/planShape.ts';
import { takeoff } from '../src/takeoff/takeoff.ts';
import { lineTable } from '../src/takeoff/lineTable.ts';
import { timed } from './timed.ts';
import { WORLD_FLOOR, worldJob } from './worldJob.ts';
import { type WorldName, world } from './worlds.ts';

/**
 * What comes after the geometry: quantities, hours, materials and price of a whole floor, from a memory that has measured
 * it. Goals: W2 20 ms, W3 100 ms.
 */
export const name = 'takeoff';

const WORLDS: readonly WorldName[] = ['W1', 'W2', 'W3'];

export async function run(print: (line: string) => void): Promise<void> {
  for (const one of WORLDS) {
    const doc = worldJob(one, world(one));
    const memory = measureMemory();
    const first = takeoff(doc, WORLD_FLOOR, memory);
    const geometryMs = async (): Promise<number> => {
      const { medianMs } = await timed(() => measureFloor(planShape(doc, WORLD_FLOOR), memory));
      return medianMs;
    };
    // One at a time: two at once would slow each other.
    // oxlint-disable-next-line no-await-in-loop
    const asked = await geometryMs();
    // oxlint-disable-next-line no-await-in-loop
    const whole = await timed(() => takeoff(doc, WORLD_FLOOR, memory));
    // oxlint-disable-next-line no-await-in-loop
    const table = await timed(() => lineTable(first));
    print(
      `${one}: ${first.lines.length} lines, ${(whole.medianMs - asked).toFixed(1)} ms after the geometry ` +
        `(${whole.medianMs.toFixed(1)} ms with what is asked of a memory that has measured it, p95 ${whole.p95Ms.toFixed(1)}); table ${table.medianMs.toFixed(1)} ms`,
    );
  }
}
