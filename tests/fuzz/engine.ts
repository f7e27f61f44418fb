import type { FloorMeasure, FloorShape } from '../../src/geometry/floorShape.ts';
import { type FloorTotals, type ZoneTotals, floorTotals } from '../../src/geometry/floorTotals.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { type MeasureMemory, measureMemory } from '../../src/geometry/measureMemory.ts';

/** An answer in numbers; an answer with outlines will do as well. */
export interface Numbers extends Omit<FloorTotals, 'zones'> {
  readonly zones: readonly ZoneNumbers[];
}
/** What is cut off is known where outlines are made. */
export type ZoneNumbers = Omit<ZoneTotals, 'hiddenFaces'> & { readonly cutOffM2?: number };

/** The engine that all plans go through, in one place: numbers alone. A throw is told as such. */
export function measured(shape: FloorShape, memory?: MeasureMemory): Numbers {
  return orTold(() => floorTotals(shape, memory));
}

/** The same with outlines. */
export function outlined(shape: FloorShape): FloorMeasure {
  return orTold(() => measureFloor(shape));
}

export function freshMemory(): MeasureMemory {
  return measureMemory();
}

function orTold<T>(answer: () => T): T {
  try {
    return answer();
  } catch (error) {
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    throw new Error(`the engine threw: ${what}`, { cause: error });
  }
}
