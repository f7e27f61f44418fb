import { useMemo } from 'react';
import type { ViewNotes } from '../../canvas/paint/view.ts';
import { SHOW_ALL, type Showing } from '../../canvas/paint/paintFloor.ts';
import { typeOf } from '../../model/cell.ts';
import { viewNotes } from '../../exchange/viewNotes.ts';
import type { Doc } from '../../model/doc.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { useTakeoff } from '../plan.ts';
import { useSession, type Units } from '../session.ts';
import { litOf } from './litOf.ts';
import { whyLine } from '../takeoff/whyLine.ts';

/** What painting needs and the plan does not say: measured outlines, profiles, holds, lengths in the user's units. Paper asks the same. */
export function usePlanNotes(doc: Doc, floor: string, takeoff: Takeoff | null, units: Units): ViewNotes {
  return useMemo(() => viewNotes(doc, floor, takeoff, units), [doc, floor, takeoff, units]);
}

/** What of the floor this stage shows: Survey the bare floor, Prep and Takeoff its zones, Why only what is lit. */
export function useShowing(): Showing {
  const stage = useSession((now) => now.stage);
  const picked = useSession((now) => now.picked);
  const pickedEdges = useSession((now) => now.pickedEdges);
  const litKey = useSession((now) => now.lit);
  const { takeoff } = useTakeoff();
  const line = useMemo(() => (takeoff && litKey !== null ? whyLine(takeoff, litKey) : null), [takeoff, litKey]);
  return useMemo(() => {
    const zone = picked.find((id) => typeOf(id) === 'zone');
    return {
      ...SHOW_ALL,
      zones: stage !== 'survey' || zone !== undefined,
      reach: stage === 'prep' && zone ? zone : 'none',
      picked,
      pickedEdges,
      lit: line ? litOf(line) : null,
    };
  }, [stage, picked, pickedEdges, line]);
}
