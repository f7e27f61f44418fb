import type { FloorShape } from '../floorShape.ts';
import { bandWidths } from '../faces.ts';
import type { Cascades } from './cells.ts';
import type { CascadeEdge } from './edging.ts';
import type { CoverItem } from './floorItems.ts';
import { machineSizes } from './machineSizes.ts';
import type { MachineAt } from './reach.ts';

/*
 * Machines that follow each other: the first works what it gets to, the next what is left, and so on.
 *
 *     first    |   ###############            |
 *     second   | ##               #########   |       a place is the first one's whose head covers it
 *     strip    |#                           ##|       along faces everywhere as wide as the last and smallest leaves it
 */
export interface CascadePlan {
  readonly machines: readonly MachineAt[];
  /** Machine numbers of each cascade. */
  readonly sequences: readonly (readonly number[])[];
  readonly edges: readonly CascadeEdge[];
  readonly ofRest: number;
  /** Cascade of a zone record, -1 when all of it is hand work. */
  readonly ofZone: (id: string) => number;
  /** Same for floors whose machines and cascades are the same. */
  readonly key: string;
}

export function cascadePlan(shape: FloorShape): CascadePlan {
  const machines = shape.machines.map((machine, number) => ({ shape: machine, number, sizes: machineSizes(machine) }));
  const sequences: number[][] = [];
  const cascadeOf = (first: string | null, then: readonly string[] = []): number => {
    const asked = first === null ? [] : [first, ...then];
    const numbers = asked.flatMap((id) => machines.find((one) => one.shape.id === id)?.number ?? []);
    if (numbers.length === 0) return -1;
    const known = sequences.findIndex((other) => other.join() === numbers.join());
    return known >= 0 ? known : sequences.push(numbers) - 1;
  };
  const ofRest = cascadeOf(shape.restMachine, shape.restFollowedBy);
  const zones = new Map(shape.zones.map((zone) => [zone.id, cascadeOf(zone.machine, zone.followedBy)]));
  const edges = sequences.map((sequence): CascadeEdge => {
    const last = machines[sequence.at(-1) as number] as MachineAt;
    return { widths: bandWidths(last.shape), bodyMm: last.sizes.bodyMm };
  });
  return {
    machines,
    sequences,
    edges,
    ofRest,
    ofZone: (id) => zones.get(id) ?? -1,
    key: JSON.stringify([shape.machines, sequences, ofRest]),
  };
}

export function cascadesOf(plan: CascadePlan, zones: readonly CoverItem[]): Cascades {
  return {
    machinesOf: plan.sequences,
    ofZone: new Map(zones.map((zone) => [zone.number, plan.ofZone(zone.id)])),
    ofRest: plan.ofRest,
    machineCount: plan.machines.length,
  };
}
