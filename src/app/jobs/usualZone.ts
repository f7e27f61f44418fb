import type { Cell } from '../../model/cell.ts';
import { cellsFor } from '../../model/doc.ts';
import { keysAfter } from '../../model/order.ts';
import type { Job } from '../../model/records/job.ts';
import type { Machine } from '../../model/records/machine.ts';
import { FIRST_EDGE_METHOD, FIRST_MACHINE, FIRST_TIMES } from '../../takeoff/fleet.ts';
import { systems } from '../../takeoff/rates/systems.ts';
import { newId } from '../plan.ts';
import { jobText } from '../../words/jobWords.ts';
import { abrasiveTerm } from '../prep/passName.ts';

type MachineId = `machine:${string}`;
type FloorId = `floor:${string}`;

export interface FleetMachine {
  readonly id: MachineId;
  readonly machine: Machine;
}

/** 30 grit metal and a double-row cup: both give the profile of a flake broadcast (common practice, no source). */
const GRIT = 'd30';
const EDGE_CUP = 'cup_double';

/**
 * A garage floor is nearly always a flake broadcast, ground twice by the small grinder and once along the edges, so a
 * sketch has a profile and a price at once. What a warehouse, a showroom or a kitchen gets differs too much from job
 * to job: a guess would look like an answer, so Prep asks. (Common practice, no source.)
 */
export function usualZone(startAs: Job['startedAs'], floor: FloorId, fleet: readonly FleetMachine[]): Cell[] {
  if (startAs !== 'garage') return [];
  const row = systems.find(({ id }) => id === 'flake_broadcast');
  const grinder = fleet.find(({ machine }) => machine.method === FIRST_MACHINE);
  if (!row || !grinder) return [];
  const [order = ''] = keysAfter(null, 1);
  const zone = newId('zone');
  const recipe = newId('recipe');
  const [least, most] = row.thicknessMm;
  return [
    ...cellsFor(recipe, { name: abrasiveTerm(GRIT) ?? GRIT, order }),
    ...cellsFor(newId('pass'), {
      recipe,
      order,
      method: FIRST_MACHINE,
      machine: grinder.id,
      abrasive: GRIT,
      times: FIRST_TIMES.passes,
      edgeMethod: FIRST_EDGE_METHOD,
      edgeAbrasive: EDGE_CUP,
      edgeTimes: FIRST_TIMES.edge,
    }),
    ...cellsFor(zone, {
      floor,
      order,
      tag: 'Z1',
      name: jobText.garageFloor,
      covers: 'rest',
      system: { kind: row.id, thicknessMm: (least + most) / 2 },
      place: 'indoor',
      wetAllowed: false,
      hardness: 'medium',
      recipe,
    }),
  ];
}
