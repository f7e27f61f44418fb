import type { LaneJob, LanePlan } from '../../geometry/lanes/lane.ts';
import type { FieldPiece } from '../../geometry/lanes/fieldPieces.ts';

/** What the page asks the worker of lanes, one field at a time. */
export interface LanesWanted {
  readonly pieces: readonly FieldPiece[];
  readonly job: LaneJob;
}

/** Null: there is nothing to drive. */
export type LanesFound = LanePlan | null;
