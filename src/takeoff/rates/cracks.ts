/** Under it a crack is a hairline and is not chased, mm; common practice, no source. */
export const HAIRLINE_MM = 0.3;
/** Above it the edges are sawn and the fill is sand-filled, mm; common practice, no source. */
export const WIDE_MM = 6;
/** Chase of a static crack, width and depth, mm; common practice, no source. */
export const CHASE_MM = { width: 6, depth: 12 } as const;
/** A wide crack is opened by so much on either side, and to this depth, mm; common practice, no source. */
export const WIDE_CHASE_MM = { eachSide: 3, depth: 19 } as const;
/** Joints without measured width and depth, mm: a saw cut of 3 to 6 mm, its usual depth; common practice, no source. */
export const JOINT_MM = { controlWidth: 4.5, controlDepth: 25, constructionWidth: 6, constructionDepth: 15.5 } as const;
