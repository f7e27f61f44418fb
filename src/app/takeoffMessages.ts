import type { Cell } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import type { Answer } from '../takeoff/port.ts';

/** What the page says to the takeoff worker. */
export type ToWorker =
  | { readonly kind: 'load'; readonly doc: Doc; readonly floor: string; readonly tick: number }
  | { readonly kind: 'change'; readonly cells: readonly Cell[]; readonly tick: number }
  | { readonly kind: 'preview'; readonly cells: readonly Cell[] | null; readonly tick: number };

/** What it says back. */
export type FromWorker = Answer;
