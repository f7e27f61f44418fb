import { onFloor, recordsOf, type Doc, type Held } from '../model/doc.ts';
import type { RecordId } from '../model/cell.ts';
import { restOf } from './restOf.ts';
import { defaultMachine, FIRST_EDGE_METHOD, FIRST_MACHINE, FIRST_TIMES } from './fleet.ts';
import type { Machine } from '../model/records/machine.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';

/** One pass as it will be worked, whether a record says so or the first fleet does. */
export interface PlannedPass {
  /** null: nobody has planned it, the first fleet stands in. */
  readonly record: RecordId | null;
  readonly method: string;
  readonly machine: PlannedMachine | null;
  readonly abrasive: string | null;
  readonly times: number;
  readonly edgeMethod: string | null;
  readonly edgeAbrasive: string | null;
  readonly edgeTimes: number;
}

/** A machine with an id to ask the engine for: its record's, or that of the stand-in. */
export interface PlannedMachine extends Machine {
  readonly id: string;
}

export type ZoneId = RecordId | 'rest';

/** What a zone, or the rest of the slab, gets. */
export interface ZonePrep {
  readonly zone: ZoneId;
  readonly record: Held<'zone'> | null;
  readonly passes: readonly PlannedPass[];
  /** Machine whose reach splits the zone: that of the first pass; null when all of it is hand work. */
  readonly machine: PlannedMachine | null;
  /** False: no recipe names it, so the first fleet stands in. */
  readonly planned: boolean;
}

/** Zones of a floor, the ones drawn and then the rest of the slab. */
export function prepOfFloor(doc: Doc, floor: string): ZonePrep[] {
  const zones = onFloor(doc, 'zone', floor);
  const drawn = zones.filter((zone) => zone.covers === 'ring');
  return [...drawn.map((zone) => prepOf(doc, zone.id, zone)), prepOf(doc, 'rest', restOf(doc, floor))];
}

function prepOf(doc: Doc, zone: ZoneId, record: Held<'zone'> | null): ZonePrep {
  const recorded = record?.recipe ? passesOf(doc, record.recipe) : [];
  const passes = recorded.length > 0 ? recorded : [firstPass(doc)];
  return { zone, record, passes, machine: passes[0]?.machine ?? null, planned: recorded.length > 0 };
}

function passesOf(doc: Doc, recipe: RecordId): PlannedPass[] {
  return recordsOf(doc, 'pass')
    .filter((pass) => pass.recipe === recipe)
    .map((pass) => ({
      record: pass.id,
      method: pass.method,
      machine: machineOf(doc, pass.machine, pass.method),
      abrasive: pass.abrasive ?? null,
      times: pass.times,
      edgeMethod: pass.edgeMethod,
      edgeAbrasive: pass.edgeAbrasive ?? null,
      edgeTimes: pass.edgeTimes,
    }));
}

/** The machine that is named; else one of the fleet that does the method; else the book's. Hand methods have none. */
function machineOf(doc: Doc, id: RecordId | null, method: string): PlannedMachine | null {
  const row = methodOf(method);
  if (row && isHandMethod(row)) return null;
  const fleet = recordsOf(doc, 'machine');
  const named = fleet.find((machine) => machine.id === id) ?? fleet.find((machine) => machine.method === method);
  return named ?? standIn(method);
}

const standIns = new Map<string, PlannedMachine | null>();

/** The book does not change: a stand-in is the same object each time. */
function standIn(method: string): PlannedMachine | null {
  const known = standIns.get(method);
  if (known !== undefined) return known;
  const machine = defaultMachine(method);
  const stand = machine ? { ...machine, id: `book:${method}` } : null;
  standIns.set(method, stand);
  return stand;
}

function firstPass(doc: Doc): PlannedPass {
  const driven = recordsOf(doc, 'machine').find((machine) => {
    const row = methodOf(machine.method);
    return row !== null && !isHandMethod(row);
  });
  const method = driven?.method ?? FIRST_MACHINE;
  return {
    record: null,
    method,
    machine: driven ?? standIn(method),
    abrasive: null,
    times: FIRST_TIMES.passes,
    edgeMethod: FIRST_EDGE_METHOD,
    edgeAbrasive: null,
    edgeTimes: FIRST_TIMES.edge,
  };
}

/** Times over of all passes together. */
export function timesOver(prep: ZonePrep): number {
  return prep.passes.reduce((sum, pass) => sum + pass.times, 0);
}

/** Edge passes of all passes together. */
export function edgeTimesOver(prep: ZonePrep): number {
  return prep.passes.reduce((sum, pass) => sum + (pass.edgeMethod === null ? 0 : pass.edgeTimes), 0);
}
