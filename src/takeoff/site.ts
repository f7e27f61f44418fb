import type { FloorMeasure, ZoneMeasure } from '../geometry/floorShape.ts';
import type { Doc } from '../model/doc.ts';
import type { Hold, HoldKind, Line } from './line.ts';
import type { ZonePrep } from './prep.ts';
import type { RateBook } from './rates/rateBook.ts';

/** One zone with what was measured of it and what it gets. */
export interface ZoneWork {
  readonly measure: ZoneMeasure;
  readonly prep: ZonePrep;
  /** The hold that stands on the whole zone, or null. */
  readonly held: HoldKind | null;
}

/** Everything that the steps from quantities to price read. */
export interface Site {
  readonly doc: Doc;
  readonly floor: string;
  readonly measure: FloorMeasure;
  readonly zones: readonly ZoneWork[];
  readonly book: RateBook;
  readonly holds: readonly Hold[];
  /** What lies in the slab has not been located: nothing may be cut. */
  readonly noCutting: boolean;
  /** Quantities off the plan by key, once they are made: what hours and material are worked out from. */
  readonly quantities: ReadonlyMap<string, Line>;
}
