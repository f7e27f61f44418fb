import type { FloorMeasure, FloorShape } from '../../src/geometry/floorShape.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { type MeasureMemory, measureMemory } from '../../src/geometry/measureMemory.ts';

/** The engine that all plans go through, in one place. Throws are told as such, with what was thrown. */
export function measured(shape: FloorShape, memory?: MeasureMemory): FloorMeasure {
  try {
    return measureFloor(shape, memory);
  } catch (error) {
    throw new Error(`the engine threw: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`, {
      cause: error,
    });
  }
}

export function freshMemory(): MeasureMemory {
  return measureMemory();
}
