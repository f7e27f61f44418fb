import { onFloor, recordOf, recordsOf, type Doc, type Held } from '../model/doc.ts';
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
  /** Machines that work what the ones before them leave, in their order; none without a first one. */
  readonly followers: readonly PlannedMachine[];
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
  const machine = passes[0]?.machine ?? null;
  const followers = machine && recorded.length > 0 ? followersOf(doc, record?.recipe ?? null, machine) : [];
  return { zone, record, passes, machine, followers, planned: recorded.length > 0 };
}

/** Followers of a recipe that are on the list of machines; each works once, and never after itself. */
function followersOf(doc: Doc, recipe: RecordId | null, first: PlannedMachine): PlannedMachine[] {
  const ids = new Set<string>(recordOf(doc, 'recipe', recipe)?.followedBy ?? []);
  return [...ids]
    .filter((id) => id !== first.id)
    .flatMap((id) => recordOf(doc, 'machine', id) ?? [])
    .filter(({ method }) => {
      const row = methodOf(method);
      return row !== null && !isHandMethod(row);
    });
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

/** Begins the id of a machine that stands in without a record. */
export const OF_BOOK = 'book:';

/** The method of a machine that stands in without a record; null for any other id. */
export function standInMethod(id: string): string | null {
  return id.startsWith(OF_BOOK) ? id.slice(OF_BOOK.length) : null;
}

const standIns = new Map<string, PlannedMachine | null>();

/** The book does not change: a stand-in is the same object each time. */
function standIn(method: string): PlannedMachine | null {
  const known = standIns.get(method);
  if (known !== undefined) return known;
  const machine = defaultMachine(method);
  const stand = machine ? { ...machine, id: `${OF_BOOK}${method}` } : null;
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

/** The machines of a zone in the order they work, biggest first. */
export function cascadeOf({ machine, followers }: ZonePrep): readonly PlannedMachine[] {
  return machine ? [machine, ...followers] : [];
}

/** The machine whose clearance and lap make the edge strip: the last, smallest one, everywhere in the zone. */
export function edgeMachine(prep: ZonePrep): PlannedMachine | null {
  return cascadeOf(prep).at(-1) ?? null;
}
