import type { Point, Region } from '../../geometry/floorShape.ts';

/** Names of inks, resolved to a colour by the theme on screen and to black on paper. No hex in painters. */
export type Ink =
  | 'ink'
  | 'ink2'
  | 'rule'
  | 'border'
  | 'slab'
  | 'ground'
  | 'board'
  | 'chalk'
  | 'chalkWash'
  | 'onChalk'
  | 'zone1'
  | 'zone2'
  | 'zone3'
  | 'zone4'
  | 'page';

/** What painters answer: plain data, drawn by konva on screen and as SVG or PDF on paper. Floor millimetres; `px` are screen pixels (paper: see look.ts). */
export type Prim =
  | { readonly kind: 'area'; readonly region: Region; readonly fill: Ink | null; readonly hatchCsp?: number; readonly opacity?: number }
  | {
      readonly kind: 'line';
      readonly path: readonly Point[];
      readonly closed?: boolean;
      readonly ink: Ink;
      readonly px: number;
      readonly dashPx?: readonly number[];
      /** Halo in the slab's colour, each side. */
      readonly haloPx?: number;
      /** Shift to the left of the path's direction, px: wall bodies drawn outside the floor. */
      readonly shiftPx?: number;
      readonly cap?: 'butt' | 'round';
    }
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly text: string;
      readonly px: number;
      readonly weight: 500 | 600 | 700 | 800;
      readonly ink: Ink;
      readonly align?: 'left' | 'middle' | 'right';
      readonly turnDeg?: number;
      /** Plate behind it: outlined board, or solid ink (zone numbers). */
      readonly plate?: 'outlined' | 'solid' | 'chalk';
      readonly offsetPx?: readonly [number, number];
    }
  /** A small mark in screen px about a point: strokes as paths. */
  | { readonly kind: 'mark'; readonly at: Point; readonly paths: readonly (readonly Point[])[]; readonly ink: Ink; readonly px: number; readonly turnDeg?: number; readonly filled?: boolean }
  | { readonly kind: 'image'; readonly hash: string; readonly matrix: readonly [number, number, number, number, number, number]; readonly widthPx: number; readonly heightPx: number; readonly opacity: number };

export interface Look {
  readonly pxPerMm: number;
  readonly picked: boolean;
  readonly print: boolean;
}

/** Painters take the record and what the view has measured of it (children, outlines), and draw nothing themselves. */
export type Paint<R, V = undefined> = (record: R, view: V, look: Look) => readonly Prim[];
