/** How exactly the laws must hold, as shares of the net floor. */

/** field + strip + tight = net, zones + rest = net: the rounding of sums. */
export const SUM_SHARE = 1e-12;
/**
 * Gross floor and what is taken off it come from other sweeps than net floor. Each takes heights 1e-9 mm apart for one,
 * and that moves an edge of 10 m by 1e-11 m2.
 */
export const GROSS_SHARE = 1e-10;
/** The same floor drawn otherwise; and areas without arcs, by others. */
export const SAME_SHARE = 1e-9;
export const ORACLE_SHARE = 1e-9;
/** Against other engines where there are arcs, which they have as chords. */
export const ORACLE_ARC_SHARE = 1e-6;
/** Outlines for the eye, with chords for arcs. */
export const OUTLINE_SHARE = 1e-4;
/** Of length, for lines: one that leaves the floor at a shallow angle is told for 0.05 mm beside it too. And for faces, of which slits and skins thinner than a hair have none. */
export const LENGTH_SHARE = 1e-9;
export const LINE_M = 5e-4;
export const FACE_SHARE = 1e-8;
export const FACE_M = 1e-4;
/** What no share may go below: an area of nothing, m2, and a length, m. */
export const NOTHING_M2 = 1e-12;
export const NOTHING_M = 1e-9;
