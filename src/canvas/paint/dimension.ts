import type { Point } from '../../geometry/floorShape.ts';
import { along, between, distance, minus, quarterTurn, times, unit } from '../../geometry/point.ts';
import type { Held } from '../../model/doc.ts';
import { LETTERS } from '../look.ts';
import type { Ink, Look, Paint, Prim } from './prim.ts';
import { degreesOf } from './spot.ts';
import { textWidth } from './textWidth.ts';

const LINE_PX = 1.2;
const LEAST_OFF_PX = 22;
const SLASH: readonly Point[] = [
  [-5, 5],
  [5, -5],
];

/** Letters along a line are never upside down. */
function readableTurn(degrees: number): number {
  if (degrees > 90) return degrees - 180;
  return degrees <= -90 ? degrees + 180 : degrees;
}

export interface DimensionLine {
  readonly from: Point;
  readonly to: Point;
  /** Floor mm to the left of the direction, and screen px on top of that. */
  readonly offsetMm: number;
  readonly offsetPx: number;
  readonly text: string;
  readonly halo: Ink;
}

/** Far out a line that was put beside the floor still stands clear of its wall. */
function standOff({ offsetMm, offsetPx }: DimensionLine, { pxPerMm, print }: Pick<Look, 'pxPerMm' | 'print'>): number {
  const off = offsetMm + offsetPx / pxPerMm;
  if (off === 0 || print) return off;
  return Math.sign(off) * Math.max(Math.abs(off), LEAST_OFF_PX / pxPerMm);
}

/** A measured line beside the floor: thin, with slashes at its ends and the figure in its middle. None where the figure would not fit. */
export function dimensionPrims(line: DimensionLine, look: Pick<Look, 'pxPerMm' | 'print'>): Prim[] {
  const letterPx = LETTERS[look.print ? 'paper' : 'screen'].dimension;
  if (distance(line.from, line.to) * look.pxPerMm < textWidth(line.text, letterPx) + 20) return [];
  const run = unit(minus(line.to, line.from));
  const left = times(quarterTurn(run), -1);
  const off = standOff(line, look);
  const from = along(line.from, left, off);
  const to = along(line.to, left, off);
  const gap = 5 * Math.sign(off);
  const witness = (at: Point): Prim[] =>
    Math.abs(off) * look.pxPerMm < 12
      ? []
      : [
          {
            kind: 'line',
            path: [along(at, left, gap / look.pxPerMm), along(at, left, off + gap / look.pxPerMm)],
            ink: 'ink',
            px: 0.8,
          },
        ];
  return [
    ...witness(line.from),
    ...witness(line.to),
    { kind: 'line', path: [from, to], ink: 'ink', px: LINE_PX },
    { kind: 'mark', at: from, paths: [SLASH], ink: 'ink', px: 2, turnDeg: degreesOf(run) },
    { kind: 'mark', at: to, paths: [SLASH], ink: 'ink', px: 2, turnDeg: degreesOf(run) },
    {
      kind: 'text',
      at: between(from, to, 0.5),
      text: line.text,
      px: letterPx,
      weight: 700,
      ink: 'ink',
      turnDeg: readableTurn(degreesOf(run)),
      halo: line.halo,
    },
  ];
}

export const paintDimension: Paint<Held<'dimension'>, { readonly lengthText: (mm: number) => string }> = (
  dimension,
  { lengthText },
  look,
) =>
  dimensionPrims(
    {
      from: dimension.from,
      to: dimension.to,
      offsetMm: dimension.offsetMm ?? 0,
      offsetPx: 0,
      text: lengthText(distance(dimension.from, dimension.to)),
      halo: (dimension.offsetMm ?? 0) === 0 ? 'slab' : 'ground',
    },
    look,
  );
