import type { FaceMetres, FloorMeasure, FloorShape, MachineField, ZoneMeasure } from './floorShape.ts';
import { floorSums } from './ledger/floorSums.ts';
import type { ZoneSums } from './ledger/sumsMemory.ts';
import { type MeasureMemory, measureMemory } from './measureMemory.ts';

/** Faces beside floor that no machine works, metres by kind; together they are the `hidden` of all faces. */
export type HiddenFaces = Omit<FaceMetres, 'hidden'>;

/** One zone in numbers alone: what can be said before any outline is drawn. Areas in m2, lengths in m. */
export interface ZoneTotals extends Omit<
  ZoneMeasure,
  'net' | 'field' | 'strip' | 'tight' | 'faceLines' | 'fields' | 'solids' | 'cutOffM2'
> {
  readonly fields?: readonly Omit<MachineField, 'region'>[];
  readonly hiddenFaces: HiddenFaces;
}

export interface FloorTotals extends Omit<FloorMeasure, 'zones'> {
  readonly zones: readonly ZoneTotals[];
}

/**
 * The numbers of a floor without its outlines, for a hand that moves. Never throws; the same numbers as `measureFloor`
 * of the same shape. What of the tight floor is cut off is told with the outlines only.
 */
export function floorTotals(shape: FloorShape, memory: MeasureMemory = measureMemory()): FloorTotals {
  const { state: _state, zones, ...sums } = floorSums(shape, memory);
  return { ...sums, zones: zones.map(zoneTotals) };
}

function zoneTotals({ number: _number, ...zone }: ZoneSums): ZoneTotals {
  return zone;
}
