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

/**
 * Light textures of findings: dots soak in, bricks lie on top, nicks are lost material, crosses mean keep out. Bars are
 * the field of a machine that follows: one for the second, two for the third, three for all after it.
 */
export type Texture = 'dots' | 'bricks' | 'nicks' | 'crosses' | 'slant' | 'bar' | 'twoBars' | 'threeBars';

/** Small strokes repeated along a line: bars of a stop line, triangles of a drop, barbs of a working crack. */
export interface Teeth {
  readonly shape: 'bar' | 'triangle' | 'barb';
  readonly everyPx: number;
  /** How far they stand off the line, to the left of its direction (a barb crosses it). */
  readonly reachPx: number;
  readonly px: number;
}

export interface TextLine {
  readonly text: string;
  readonly px: number;
  readonly weight: 500 | 600 | 700 | 800;
}

export interface AreaPrim {
  readonly kind: 'area';
  readonly region: Region;
  readonly fill: Ink | null;
  readonly hatchCsp?: number;
  readonly texture?: Texture;
  readonly opacity?: number;
}

export interface LinePrim {
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
  readonly teeth?: Teeth;
}

export interface TextPrim {
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
  /** Further lines under the first, on the same plate. */
  readonly more?: readonly TextLine[];
  /** Lines in an outlined plate of their own, right beside the first: a zone's name and profile. */
  readonly beside?: readonly TextLine[];
  /** A line from `at` to the plate, which stands off by `offsetPx`. */
  readonly leader?: boolean;
  /** Halo round bare letters, in this ink. */
  readonly halo?: Ink;
}

/** A small mark in screen px about a point: strokes as paths, or filled outlines. */
export interface MarkPrim {
  readonly kind: 'mark';
  readonly at: Point;
  readonly paths: readonly (readonly Point[])[];
  readonly ink: Ink;
  readonly px: number;
  readonly turnDeg?: number;
  readonly filled?: boolean;
  readonly dashPx?: readonly number[];
  readonly opacity?: number;
}

export interface ImagePrim {
  readonly kind: 'image';
  readonly hash: string;
  /** Pixels to floor mm, as [a b c d e f]: x' = a x + c y + e, y' = b x + d y + f. */
  readonly matrix: readonly [number, number, number, number, number, number];
  readonly widthPx: number;
  readonly heightPx: number;
  readonly opacity: number;
}

/** What painters answer: plain data, drawn by konva on screen and as SVG or PDF on paper. Floor millimetres; `px` are screen pixels (paper: see look.ts). */
export type Prim = AreaPrim | LinePrim | TextPrim | MarkPrim | ImagePrim;

export interface Look {
  readonly pxPerMm: number;
  readonly picked: boolean;
  readonly print: boolean;
}

/** Painters take the record and what the view has measured of it (children, outlines), and draw nothing themselves. */
export type Paint<R, V = undefined> = (record: R, view: V, look: Look) => readonly Prim[];
