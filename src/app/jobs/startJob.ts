import type { Cell } from '../../model/cell.ts';
import { cellsFor } from '../../model/doc.ts';
import { keysAfter } from '../../model/order.ts';
import type { Job } from '../../model/records/job.ts';
import { defaultMachine, FIRST_FLEET } from '../../takeoff/fleet.ts';
import { defaultMoneyCells, defaultRateCells } from '../../takeoff/rates/defaults.ts';
import { jobInMemory } from '../keep/openJob.ts';
import { newJob, startOfJob } from '../keep/jobList.ts';
import { newId } from '../plan.ts';
import { say, session } from '../session.ts';
import { today } from '../today.ts';
import { jobText } from '../../words/jobWords.ts';
import { ui } from '../../words/uiWords.ts';
import { dayOnly } from './shortDay.ts';
import { usualCurrency } from './usualCurrency.ts';
import { usualZone, type FleetMachine } from './usualZone.ts';
import { isInMemory, openJobById, showKept, theKeep } from './kept.ts';

export type StartAs = NonNullable<Job['startedAs']>;

/** Machines that each kind of job usually brings; all editable (common practice, no source). */
const FLEETS: Readonly<Record<StartAs, readonly string[]>> = {
  garage: FIRST_FLEET,
  kitchen: FIRST_FLEET,
  showroom: ['grinder_large', ...FIRST_FLEET],
  warehouse: ['grinder_large', 'shot_medium', ...FIRST_FLEET],
  blank: FIRST_FLEET,
};

function fleetOf(startAs: StartAs): FleetMachine[] {
  const machines = FLEETS[startAs].flatMap((method) => defaultMachine(method) ?? []);
  return machines.map((machine) => ({ id: newId('machine'), machine }));
}

function fleetCells(fleet: readonly FleetMachine[]): Cell[] {
  const orders = keysAfter(null, fleet.length);
  return fleet.flatMap(({ id, machine }, index) => cellsFor(id, { ...machine, order: orders[index] ?? '' }));
}

/** Countries that build in feet and inches, by the language the device is set to (common practice, no source). */
function usualUnits(): 'metric' | 'imperial' {
  return /-(US|LR|MM)\b/.test(navigator.language) ? 'imperial' : 'metric';
}

/** Makes a job and opens it at once. A name is not asked for: it can be given at any time. */
export async function startJob(startAs: StartAs, name: string): Promise<void> {
  const keep = await theKeep();
  const floor = newId('floor');
  const fleet = fleetOf(startAs);
  const fields = {
    name: name.trim() === '' ? jobText.unnamed(jobText.startAs[startAs], dayOnly(Date.now())) : name.trim(),
    units: session().units ?? usualUnits(),
    currency: usualCurrency(navigator.language),
    startedAs: startAs,
    startedOn: today(),
    floor,
    floorName: ui.groundFloor,
    more: [...fleetCells(fleet), ...usualZone(startAs, floor, fleet), ...defaultRateCells(), ...defaultMoneyCells()],
  };
  if (isInMemory(keep)) {
    const { id, opened } = startOfJob(keep, fields);
    showKept(await jobInMemory(keep, id, opened));
    return;
  }
  const made = await newJob(keep, fields);
  if (made.ok) {
    await openJobById(made.id);
    return;
  }
  // A full disk must not keep anybody from measuring: the job lives in memory until it is saved as a file.
  const { id, opened } = startOfJob(keep, fields);
  showKept(await jobInMemory(keep, id, opened));
  say(jobText.notKept);
}
