import type { RecordId } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import type { Units } from '../model/units.ts';
import type { Takeoff } from '../takeoff/port.ts';
import type { Sheet } from './paper.ts';

export interface ZoneMapInput {
  readonly doc: Doc;
  readonly floor: RecordId;
  readonly takeoff: Takeoff;
  readonly units: Units;
  readonly sheet: Sheet;
  /** The number after the colon; null: the largest scale that fits. */
  readonly scale: number | null;
}

/** One sheet, ready to be printed at 100 %. */
export interface ZoneMapPage {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
}
