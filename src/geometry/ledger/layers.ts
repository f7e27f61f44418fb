/*
 * The questions that are asked of every place of a floor, each answered by the outlines of one layer. A place is in a
 * layer when the winding number of any outline of that layer is not zero there.
 *
 *   slab  scope  solid  wall      what is net floor
 *   apron  back  way              where else a machine may or may not stand
 *   band  lead                    how near to hard faces; where the body has come by
 *   zone  finding                 whose floor it is, what lies on it
 *   edged, strip, reach           one each a cascade or a machine: see `edgedLayer` and so on
 */
export const SLAB = 0;
export const SCOPE = 1;
export const SOLID = 2;
export const WALL_BODY = 3;
export const WALL_GAP = 4;
/** How many layers say what is net floor: those above. */
export const HARD_LAYERS = 5;
export const APRON = 5;
export const BACK = 6;
export const WAY = 7;
export const BAND = 8;
export const LEAD = 9;
export const ZONE = 10;
export const FINDING = 11;
export const FIRST_FREE = 12;

/** Nearer to any hard face than the strip of cascade k is wide. */
export function edgedLayer(cascade: number): number {
  return FIRST_FREE + 3 * cascade;
}

/** Nearer than that to a face that the cascade works along. */
export function stripLayer(cascade: number): number {
  return FIRST_FREE + 3 * cascade + 1;
}

/** What the head of machine k covers. */
export function reachLayer(machine: number): number {
  return FIRST_FREE + 3 * machine + 2;
}

export function layerCount(cascades: number, machines: number): number {
  return FIRST_FREE + 3 * Math.max(cascades, machines);
}
