import { useMemo } from 'react';
import type { Cell } from '../../model/cell.ts';
import { applyCells, type Doc } from '../../model/doc.ts';
import { useDoc } from '../plan.ts';
import { useHand } from './hand.ts';

const NO_CELLS: readonly Cell[] = [];
const laidOver = new WeakMap<readonly Cell[], { readonly doc: Doc; readonly shown: Doc }>();

/** A plan with cells of a draft laid over it, made once for all who show it. */
export function withDraft(doc: Doc, cells: readonly Cell[]): Doc {
  const known = laidOver.get(cells);
  if (known?.doc === doc) return known.shown;
  const shown = applyCells(doc, cells);
  laidOver.set(cells, { doc, shown });
  return shown;
}

export function useDraftCells(): readonly Cell[] {
  return useHand((now) => now.draft?.cells) ?? NO_CELLS;
}

/** What the hand changes of what is there. What is only being drawn is the live line's to show. */
export function useChangedCells(): readonly Cell[] {
  const cells = useDraftCells();
  return useMemo(() => (cells.some(isDrawn) ? cells.filter((cell) => !isDrawn(cell)) : cells), [cells]);
}

function isDrawn([id]: Cell): boolean {
  return id.endsWith(':draft');
}

/** The plan with all that the hand is doing. */
export function useDraftedDoc(): Doc {
  const doc = useDoc((now) => now);
  const cells = useDraftCells();
  return useMemo(() => withDraft(doc, cells), [doc, cells]);
}
