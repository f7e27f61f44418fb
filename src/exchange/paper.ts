/** Sheets of paper, lying on their long side, mm. */
export const SHEETS = {
  A4: { widthMm: 297, heightMm: 210 },
  letter: { widthMm: 279.4, heightMm: 215.9 },
} as const;
export type Sheet = keyof typeof SHEETS;

/** Scales that a plan is read at with an ordinary scale rule; the last two only so that a large site can be printed at all. */
export const PAPER_SCALES = [50, 75, 100, 150, 200, 250, 500, 1000, 2000] as const;
export type PaperScale = (typeof PAPER_SCALES)[number];

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
export function largestScale(extent: FloorExtent, room: Room): PaperScale | null {
  return PAPER_SCALES.find((scale) => fitsAt(extent, room, scale)) ?? null;
}
