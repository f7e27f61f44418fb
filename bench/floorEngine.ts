import type { FloorMeasure, FloorShape } from '../src/geometry/floorShape.ts';
import { type FloorTotals, floorTotals } from '../src/geometry/floorTotals.ts';
import { measureFloor } from '../src/geometry/measureFloor.ts';
import { type MeasureMemory, measureMemory } from '../src/geometry/measureMemory.ts';

/** The engine as the benches see it. */
export interface FloorEngine {
  /** Every number of a floor, from nothing. */
  full(shape: FloorShape): FloorTotals;
  /** Numbers and outlines, from nothing. */
  drawn(shape: FloorShape): FloorMeasure;
  memory(): MeasureMemory;
  /** Every number, with what the memory knows of the shape before. */
  edit(shape: FloorShape, memory: MeasureMemory): FloorTotals;
}

export const floorEngine: FloorEngine = {
  full: (shape) => floorTotals(shape),
  drawn: (shape) => measureFloor(shape),
  memory: () => measureMemory(),
  edit: (shape, memory) => floorTotals(shape, memory),
};
