/**
 * How exactly the laws must hold, as shares of the net floor (geometry of the whole plan in m2).
 * The engine that measures by rings on a grid holds them to SHARE = 1e-4 only.
 */
/** field + strip + tight = net, zones + rest = net: the rounding of sums. */
export const SUM_SHARE = 1e-4;
/** The same floor drawn otherwise. */
export const SAME_SHARE = 1e-4;
/** Against other engines, areas without arcs. */
export const ORACLE_SHARE = 1e-4;
/** Against other engines where there are arcs, which they have as chords. */
export const ORACLE_ARC_SHARE = 1e-2;
/** Outlines for the eye, with chords for arcs. */
export const OUTLINE_SHARE = 1e-4;
/** Of length, for lines and faces. */
export const LENGTH_SHARE = 1e-3;
/** What no share may go below: an area of nothing, m2, and a length, m. */
export const NOTHING_M2 = 1e-5;
export const NOTHING_M = 1e-5;
