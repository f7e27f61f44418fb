import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { RecordId } from '../model/cell.ts';
import { recordOf } from '../model/doc.ts';
import type { Command } from './command.ts';
import { isAnythingDrawn } from './itemsOnFloor.ts';
import { newRecordCells, refuseNewId } from './newItem.ts';

export type PlacePageArgs = {
  readonly id: RecordId;
  readonly floor: RecordId;
  readonly name: string;
  /** SHA-256 of the image file, in hex. */
  readonly image: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly origin?: Point;
  /** Only makes the page visible until it is trued. */
  readonly guessMmPerPx?: number;
};

/** About a building 20 m wide: a page that nobody has trued yet fills the view and gives no quantity. */
const GUESSED_WIDTH_MM = 20_000;

export const placePage: Command<PlacePageArgs> = {
  name: 'placePage',
  refuse(doc, { id, floor, widthPx, heightPx }) {
    if (!recordOf(doc, 'floor', floor)) return 'unknownFloor';
    if (!(widthPx > 0) || !(heightPx > 0)) return 'noSize';
    return refuseNewId(doc, id, 'page');
  },
  write: (doc, { id, floor, name, image, widthPx, heightPx, origin, guessMmPerPx }) =>
    newRecordCells(doc, id, {
      floor,
      name,
      image,
      widthPx,
      heightPx,
      origin: pointToGrid(origin ?? [0, 0]),
      guessMmPerPx: guessMmPerPx ?? GUESSED_WIDTH_MM / widthPx,
      dimensions: [],
      // What was sketched in true lengths before the page came must not be stretched when it is trued.
      drawnBefore: isAnythingDrawn(doc, floor) ? true : undefined,
    }),
};
