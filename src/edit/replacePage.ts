import type { RecordId } from '../model/cell.ts';
import { recordOf } from '../model/doc.ts';
import type { Command } from './command.ts';
import { pageScale } from './pageMap.ts';

export type ReplacePageArgs = {
  readonly id: RecordId;
  readonly name: string;
  readonly image: string;
  readonly widthPx: number;
  readonly heightPx: number;
};

/**
 * Puts a revision under what is drawn. An image of the same pixel size lies exactly where the old one
 * lay and stays trued; any other is fitted to the same width and must be trued again, and truing it
 * moves the page, not what is drawn.
 */
export const replacePage: Command<ReplacePageArgs> = {
  name: 'replacePage',
  refuse(doc, { id, widthPx, heightPx }) {
    if (!recordOf(doc, 'page', id)) return 'unknownRecord';
    return widthPx > 0 && heightPx > 0 ? null : 'noSize';
  },
  write(doc, { id, name, image, widthPx, heightPx }) {
    const page = recordOf(doc, 'page', id);
    if (!page) return [];
    const cells = [
      [id, 'name', name],
      [id, 'image', image],
    ] as const;
    if (page.widthPx === widthPx && page.heightPx === heightPx) return cells;
    return [
      ...cells,
      [id, 'widthPx', widthPx],
      [id, 'heightPx', heightPx],
      [id, 'guessMmPerPx', (pageScale(page) * page.widthPx) / widthPx],
      [id, 'dimensions', []],
      [id, 'levelLine', undefined],
      [id, 'drawnBefore', true],
    ];
  },
};
