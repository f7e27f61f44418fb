import { useMemo } from 'react';
import type { Cell } from '../../model/cell.ts';
import type { Doc } from '../../model/doc.ts';
import { laidOver } from '../../model/overlay.ts';
import { useDoc } from '../plan.ts';
import { useHand } from './hand.ts';

const NO_CELLS: readonly Cell[] = [];
const drafted = new WeakMap<readonly Cell[], { readonly doc: Doc; readonly shown: Doc }>();

/** A plan with cells of a draft laid over it, made once for all who show it. */
function withDraft(doc: Doc, cells: readonly Cell[]): Doc {
  const known = drafted.get(cells);
  if (known?.doc === doc) return known.shown;
  const shown = laidOver(doc, cells);
  drafted.set(cells, { doc, shown });
  return shown;
}

function useDraftCells(): readonly Cell[] {
  return useHand((now) => now.draft?.cells) ?? NO_CELLS;
}

/** The plan with what the hand is changing laid over it. What is only being drawn is the live line's to show. */
export function useShownDoc(): Doc {
  const doc = useDoc((now) => now);
  const cells = useDraftCells();
  return useMemo(() => {
    const changed = cells.some(isDrawn) ? cells.filter((cell) => !isDrawn(cell)) : cells;
    return withDraft(doc, changed);
  }, [doc, cells]);
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
