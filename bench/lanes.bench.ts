import type { LaneJob } from '../src/geometry/lanes/lane.ts';
import { lanePlan } from '../src/geometry/lanes/lanePlan.ts';
import { measureFloor } from '../src/geometry/measureFloor.ts';
import { timed } from './timed.ts';
import { type WorldName, world } from './worlds.ts';

/**
 * Lanes of a whole floor as one field: twelve directions, and the runs of the best in order. A 500 mm head with a
 * tenth of overlap at 25 m2/h. Goal: W3 in 400 ms, one thread.
 */
export const name = 'lanes';

const JOB: LaneJob = {
  usefulWidthMm: 450,
  speedMmPerS: 15.4,
  turnS: 18,
  moveS: 60,
  directions: Array.from({ length: 12 }, (_, i) => (i * Math.PI) / 12),
};

export async function run(print: (line: string) => void): Promise<void> {
  const worlds: readonly WorldName[] = ['W1', 'W2', 'W3'];
  for (const each of worlds) {
    // Without zones all that the machine works is one field: that of the rest.
    const [rest] = measureFloor({ ...world(each), zones: [] }).zones;
    if (!rest) throw new Error(`${each} has no field`);
    const { field, fieldM2 } = rest;
    const plan = lanePlan(field, JOB);
    if (!plan) throw new Error(`${each} has no lanes`);
    // oxlint-disable-next-line no-await-in-loop
    const fresh = await timed(() => lanePlan(field, JOB));
    // oxlint-disable-next-line no-await-in-loop
    const turning = await timed(() => lanePlan(field, { ...JOB, turningRadiusMm: 1500 }));
    const counts = plan.tried.map(({ lanes }) => lanes);
    const worst = Math.max(...plan.tried.map(({ travelM }) => Math.abs((travelM * 0.45) / fieldM2 - 1)));
    const corners = field.flat(2).length;
    print(
      `${each}: 12 directions median ${fresh.medianMs.toFixed(1)} ms (with a turning circle ${turning.medianMs.toFixed(1)} ms), field ${fieldM2.toFixed(0)} m2, ${corners} corners, ` +
        `${Math.min(...counts)} to ${Math.max(...counts)} lanes, best ${((plan.directionRad * 180) / Math.PI).toFixed(0)} degrees: ` +
        `${plan.runs} runs, ${plan.turns} turns, ${plan.betweenM.toFixed(0)} m between; travel x width off the field by ${(worst * 100).toFixed(2)} % at worst`,
    );
  }
}
