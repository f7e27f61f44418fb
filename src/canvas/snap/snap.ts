import type { RecordId } from '../../model/cell.ts';
import type { Point } from '../../geometry/floorShape.ts';

/** In order of rank: the first wins, however near another one is. */
export const SNAP_KINDS = [
  'corner',
  'crossing',
  'middle',
  'square',
  'parallel',
  'extension',
  'edge',
  'axis',
  'pageLine',
  'grid',
  'free',
] as const;
export type SnapKind = (typeof SNAP_KINDS)[number];

export interface SnapQuery {
  readonly at: Point;
  /** The point the live line starts from. */
  readonly from: Point | null;
  readonly pxPerMm: number;
  /** Larger for a finger. */
  readonly reachPx: number;
  /** The kind that holds now keeps 1.5 times the reach, so that nothing flickers. */
  readonly held: SnapKind | null;
  readonly off: boolean;
  /** Records being moved. */
  readonly skip: ReadonlySet<RecordId>;
}

export interface Snap {
  readonly at: Point;
  readonly kind: SnapKind;
  readonly on: RecordId | null;
  /** The line that was met, for the chalk tick: drawn across it. */
  readonly along: Point | null;
  readonly guides: readonly (readonly [Point, Point])[];
}

export interface SnapSource {
  readonly kind: SnapKind;
  find(query: SnapQuery): Iterable<Snap>;
}
