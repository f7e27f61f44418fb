import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import { minus } from '../geometry/point.ts';
import { compose, invert, mapPoint } from '../geometry/transform.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { onFloor, recordOf, type Doc, type Held } from '../model/doc.ts';
import type { Page } from '../model/records/page.ts';
import type { Command } from './command.ts';
import { cellsFollowing } from './followPage.ts';
import { fitOf, isTrued, pageMatrix, pageScale, type Trueable } from './pageMap.ts';

export type DimensionArgs = {
  /** Pixels of the page. */
  readonly from: Point;
  readonly to: Point;
  readonly lengthMm: number;
  readonly by: 'mouse' | 'pen' | 'finger';
};

export type TruePageArgs = {
  readonly id: RecordId;
  /** All known lengths, not only the new one. None: the page is no longer trued. */
  readonly dimensions: readonly DimensionArgs[];
  /** Null takes it away; not given, it stays. */
  readonly levelLine?: { readonly from: Point; readonly to: Point } | null;
  /** Where pixel 0,0 lies; not given, the first dimension's first end stays where it is. */
  readonly origin?: Point;
  /** Whether what is drawn on the floor is carried along; see `carriesFloor`. */
  readonly follow?: boolean;
};

/**
 * A page trued for the first time carries what was traced on it while its scale was a guess. Not so when
 * something stood on the floor before the page came, or another page there is trued: then the floor is right
 * and only the page moves.
 */
export function carriesFloor(doc: Doc, page: Held<'page'>): boolean {
  if (isTrued(page) || page.drawnBefore) return false;
  return !onFloor(doc, 'page', page.floor).some((other) => other.id !== page.id && isTrued(other));
}

export const truePage: Command<TruePageArgs> = {
  name: 'truePage',
  passesLocks: true,
  refuse(doc, args) {
    const page = recordOf(doc, 'page', args.id);
    if (!page) return 'unknownRecord';
    const line = args.levelLine;
    if (line && line.from[0] === line.to[0] && line.from[1] === line.to[1]) return 'picksTooNear';
    if (args.dimensions.length === 0) return null;
    const result = fitOf(trued(page, args));
    return result.ok ? null : FAULTS[result.fault];
  },
  write(doc, args) {
    const page = recordOf(doc, 'page', args.id);
    if (!page) return [];
    const next = { ...trued(page, args), guessMmPerPx: pageScale(page) };
    const origin = pointToGrid(args.origin ?? keptOrigin(page, next));
    const cells: Cell[] = [
      [args.id, 'dimensions', args.dimensions],
      [args.id, 'origin', origin],
    ];
    if (args.levelLine !== undefined) cells.push([args.id, 'levelLine', args.levelLine]);
    // A page that loses its last length stays as large as it was, as a guess.
    if (args.dimensions.length === 0) cells.push([args.id, 'guessMmPerPx', next.guessMmPerPx]);
    const back = invert(pageMatrix(page));
    if (back && (args.follow ?? carriesFloor(doc, page))) {
      cells.push(...cellsFollowing(doc, page.floor, compose(pageMatrix({ ...next, origin }), back)));
    }
    return cells;
  },
};

const FAULTS = {
  noDimension: 'pageNotTrued',
  zeroLength: 'picksTooNear',
  notALength: 'noSize',
  impossible: 'dimensionsDisagree',
} as const;

type Trued = Trueable & Pick<Page, 'origin' | 'guessMmPerPx'>;

function trued(page: Held<'page'>, { dimensions, levelLine }: TruePageArgs): Trued {
  const { origin, guessMmPerPx } = page;
  return { dimensions, levelLine: levelLine === undefined ? page.levelLine : levelLine, origin, guessMmPerPx };
}

/** The origin that leaves one pixel where it is: that of the first dimension, or the page's own corner. */
function keptOrigin(page: Held<'page'>, next: Trued): Point {
  const pixel = next.dimensions[0]?.from ?? [0, 0];
  return minus(mapPoint(pageMatrix(page), pixel), mapPoint(pageMatrix({ ...next, origin: [0, 0] }), pixel));
}
