import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { Command } from './command.ts';
import { newItemCells, refuseNewItem, type NewItem } from './newItem.ts';

/** The words may follow later: the note is placed first, then written. */
export type PlaceNoteArgs = NewItem & { readonly at: Point; readonly text: string };

export const placeNote: Command<PlaceNoteArgs> = {
  name: 'placeNote',
  refuse: (doc, args) => refuseNewItem(doc, args, 'note'),
  write: (doc, args) => newItemCells(doc, args, 'note', { at: pointToGrid(args.at), text: args.text }),
};
