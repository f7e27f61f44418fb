import type { Point } from '../../geometry/floorShape.ts';
import { MM_PER_FT } from '../../model/units.ts';
import type { Prim } from './prim.ts';

const PARTS = 5;
const METRIC = [0.5, 1, 2, 5, 10, 20, 50, 100, 200].map((metres) => ({ mm: metres * 1000, text: `${metres} m` }));
const IMPERIAL = [1, 2, 5, 10, 20, 50, 100, 200, 500].map((feet) => ({ mm: feet * MM_PER_FT, text: `${feet} ft` }));

/** The longest round length that fits into `widthPx`. */
export function scaleBarLength(
  pxPerMm: number,
  widthPx: number,
  units: 'metric' | 'imperial',
): { readonly mm: number; readonly text: string } {
  const lengths = units === 'metric' ? METRIC : IMPERIAL;
  const [shortest] = lengths;
  return lengths.findLast(({ mm }) => mm * pxPerMm <= widthPx) ?? shortest ?? { mm: 1000, text: '1 m' };
}

function box(x: number, y: number, w: number, h: number): readonly Point[] {
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
}

/** A scale bar as marks about its left end: lengths in px, whatever it is drawn on. */
export function scaleBar(
  at: Point,
  pxPerMm: number,
  widthPx: number,
  units: 'metric' | 'imperial',
  letterPx = 14,
): Prim[] {
  const { mm, text } = scaleBarLength(pxPerMm, widthPx, units);
  const part = (mm * pxPerMm) / PARTS;
  const words = (letters: string, x: number): Prim => ({
    kind: 'text',
    at,
    text: letters,
    px: letterPx,
    weight: 700,
    ink: 'ink',
    halo: 'ground',
    offsetPx: [x, -letterPx],
  });
  return [
    ...Array.from({ length: PARTS }, (_, i): Prim[] => [
      { kind: 'mark', at, paths: [box(i * part, 0, part, 8)], ink: i % 2 === 0 ? 'ink' : 'board', px: 0, filled: true },
      { kind: 'mark', at, paths: [[...box(i * part, 0, part, 8), [i * part, 0]]], ink: 'ink', px: 1.5 },
    ]).flat(),
    words('0', 0),
    words(text, part * PARTS),
  ];
}

/** North, as an arrow; the letter stands under it whatever way it points. */
export function northArrow(at: Point, northDeg: number, letterPx = 15): Prim[] {
  return [
    {
      kind: 'mark',
      at,
      paths: [
        [
          [0, -17],
          [9, 17],
          [0, 10],
          [-9, 17],
        ],
      ],
      ink: 'ink',
      px: 0,
      filled: true,
      turnDeg: northDeg,
    },
    {
      kind: 'text',
      at,
      text: 'N',
      px: letterPx,
      weight: 700,
      ink: 'ink',
      halo: 'ground',
      offsetPx: [0, 17 + letterPx],
    },
  ];
}
