import type { Point } from '../floorShape.ts';

/*
 * How a machine drives over its field: lanes side by side, to and fro.
 *
 *   +-----------------------+     lane   one straight run, a useful width from the next
 *   | >------------------>  |     turn   from a lane to its neighbour
 *   |  <--------+ 1 +----<  |     run    lanes driven one after the other with nothing but turns
 *   | >----> ## |   | >-->  |     move   from the end of a run to the start of the next
 *   |  <--2< ## +-3-+ <--<  |
 *   +-----------------------+     ## a column splits the lanes into runs
 *
 * Which way the lanes run changes how many turns and moves there are, and hardly how far the machine travels: every
 * direction is tried, and the one that takes least time is taken.
 */

/** What driving costs. Lengths in mm, times in seconds. */
export interface LaneJob {
  /** Cut width less the overlap of neighbouring lanes. */
  readonly usefulWidthMm: number;
  readonly speedMmPerS: number;
  readonly turnS: number;
  readonly moveS: number;
  /** Radius of the circle that must fit into a piece of the field to turn in it; absent or 0: on the spot. */
  readonly turningRadiusMm?: number;
  /** Directions to try, radians; absent: along and across the long edges of the field. */
  readonly directions?: readonly number[];
  /** Where the machine comes from; absent: the first run is begun at one of its corners. */
  readonly startAt?: Point;
}

/** What one direction comes to. */
export interface DirectionCost {
  /** From x towards y, 0 up to pi. */
  readonly directionRad: number;
  readonly lanes: number;
  /** Lanes driven one after the other, with nothing but turns between them, are one run. */
  readonly runs: number;
  /** Lanes less runs. */
  readonly turns: number;
  /** Those of the turns that are made where the turning circle does not fit: they cost double. */
  readonly backingTurns: number;
  readonly travelM: number;
  readonly seconds: number;
}

export interface LaneRun {
  /** Lanes from where each is begun to where it is left, in the order they are driven. */
  readonly lanes: readonly (readonly [from: Point, to: Point])[];
  /** The machine cannot turn here: it backs out of every lane. */
  readonly backsOut: boolean;
}

export interface LanePlan extends DirectionCost {
  /** In the order they are driven. */
  readonly order: readonly LaneRun[];
  /** Straight from run to run, walls not minded. */
  readonly betweenM: number;
  /** Every direction that was tried, in the order it was tried in. */
  readonly tried: readonly DirectionCost[];
}
