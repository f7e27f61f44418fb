import type { Units } from '../model/units.ts';

/** Sheets of paper, lying on their long side, mm. */
export const SHEETS = {
  A4: { widthMm: 297, heightMm: 210 },
  letter: { widthMm: 279.4, heightMm: 215.9 },
} as const;
export type Sheet = keyof typeof SHEETS;

/**
 * Scales that a plan is read at with an ordinary scale rule, largest first; the last ones only so that a large site can
 * be printed at all. In feet: 1/4, 3/16, 1/8, 3/32, 1/16 and 1/32 in to the foot, then 1 in to 50, 100 and 200 ft.
 */
export const PAPER_SCALES = {
  metric: [50, 75, 100, 150, 200, 250, 500, 1000, 2000],
  imperial: [48, 64, 96, 128, 192, 384, 600, 1200, 2400],
} as const satisfies Record<Units, readonly number[]>;

export interface Room {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What the floor, with its walls, takes up on paper. `aroundMm` does not shrink with the scale. */
export interface FloorExtent {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly aroundMm: number;
}

export function fitsAt(extent: FloorExtent, room: Room, scale: number): boolean {
  return (
    extent.widthMm / scale + 2 * extent.aroundMm <= room.widthMm &&
    extent.heightMm / scale + 2 * extent.aroundMm <= room.heightMm
  );
}

/** The largest scale at which the floor fits: the smallest number after the colon. null: at none. */
export function largestScale(extent: FloorExtent, room: Room, units: Units): number | null {
  return PAPER_SCALES[units].find((scale) => fitsAt(extent, room, scale)) ?? null;
}
