/**
 * An invented two-car garage as a tape gives it, drawn by finger in one test and by keyboard in another: the same
 * lengths and turns have to give the same floor.
 *
 *        0      5.20
 *     0  +---------+            a closet takes the upper right corner
 *        |         | 0.90
 *        |         +----+ 6.40
 *        |   1.20       |
 *   5.80 |              | 4.90
 *        +--+========+--+
 *       0.80   4.80   0.80      the garage door: a doorway, where the work stops
 */
export interface Leg {
  readonly lengthM: string;
  /** Degrees from the last edge, clockwise; the first from the right. */
  readonly turnDeg: string;
}

/** From the upper left corner round, the last edge closes it. */
export const WALLS: readonly Leg[] = [
  { lengthM: '5.20', turnDeg: '0' },
  { lengthM: '0.90', turnDeg: '90' },
  { lengthM: '1.20', turnDeg: '-90' },
  { lengthM: '4.90', turnDeg: '90' },
  { lengthM: '0.80', turnDeg: '90' },
  { lengthM: '4.80', turnDeg: '0' },
  { lengthM: '0.80', turnDeg: '0' },
];
/** The sixth edge is the garage door. */
export const DOOR_EDGE = 6;

export const CRACK: readonly Leg[] = [
  { lengthM: '2.40', turnDeg: '30' },
  { lengthM: '1.60', turnDeg: '90' },
];

/** An oil stain of one metre by one. */
export const STAIN: readonly Leg[] = [
  { lengthM: '1.00', turnDeg: '0' },
  { lengthM: '1.00', turnDeg: '90' },
  { lengthM: '1.00', turnDeg: '90' },
];

/** A wall 0.20 thick that stands free on the slab, with an opening of 0.90 at its beginning. */
export const INNER_WALL: readonly Leg[] = [{ lengthM: '1.50', turnDeg: '0' }];

/** Sums done by hand from the sketch above. */
export const BY_HAND = {
  /** 6.40 x 5.80 less the closet, 1.20 x 0.90. */
  netM2: 36.04,
  /** All walls round: 5.20 + 0.90 + 1.20 + 4.90 + 0.80 + 0.80 + 5.80; at the door no edge is worked. */
  edgeM: 19.6,
  /** The same with the 4.80 m of the door, before it is known to be one. */
  roundM: 24.4,
  /** 2.40 + 1.60. */
  crackM: 4,
  stainM2: 1,
  /** 0.60 of the wall is left beside the opening: 0.20 x 0.60 less floor, and that much more face to work along. */
  netWithWallM2: 35.92,
  edgeWithWallM: 21.2,
  /**
   * Ten centimetres less along all sides: 6.20 x 5.60 less 1.20 x 0.90, as the closet moves in with the walls: 33.6400.
   * Less what a round head of 500 mm, 50 mm off both walls, leaves beyond the strip in five corners: 1131 mm2 each, the
   * integral of 200 - sqrt(250^2 - u^2) over u from 150 to 200. And the strip is round about the closet's corner:
   * (1 - pi / 4) x 100 x 100 = 2146 mm2 more field. 33.6400 - 0.0057 + 0.0021 = 33.6365.
   */
  fieldM2: 33.64,
  /** Those five corners: hand work, 0.0057. */
  cornersM2: '0.01',
} as const;
