import type { FloorMeasure, GeometryFault } from './floorShape.ts';
import type { MachineWork } from './machineWork.ts';
import type { NetFloor } from './netFloor.ts';

/**
 * What stays the same from one measure to the next: while a crack or a zone is dragged, the net floor and
 * the reach of each machine do; while rates or answers change, all of it does. Hand the same memory to each call; answers do not change, only their time.
 */
export interface MeasureMemory {
  readonly wholes: Map<string, Kept<FloorMeasure>>;
  readonly floors: Map<string, Kept<NetFloor>>;
  readonly works: Map<string, Kept<MachineWork>>;
}

interface Kept<T> {
  readonly value: T;
  readonly faults: readonly GeometryFault[];
}

/** Enough for a few floors with a few machines each. */
const MOST = 12;

export function measureMemory(): MeasureMemory {
  return { wholes: new Map(), floors: new Map(), works: new Map() };
}

/** The value kept under a key, or a fresh one that is then kept; its faults are reported either way. */
export function recalled<T>(
  kept: Map<string, Kept<T>> | undefined,
  key: () => string,
  make: (faults: GeometryFault[]) => T,
  faults: GeometryFault[],
): T {
  if (!kept) return make(faults);
  const name = key();
  const known = kept.get(name);
  const own: GeometryFault[] = [];
  const entry = known ?? { value: make(own), faults: own };
  kept.delete(name);
  kept.set(name, entry);
  const [oldest] = kept.keys();
  if (kept.size > MOST && oldest !== undefined) kept.delete(oldest);
  faults.push(...entry.faults);
  return entry.value;
}
