import { useMemo } from 'react';
import type { ViewNotes } from '../../canvas/paint/view.ts';
import { SHOW_ALL, type Showing } from '../../canvas/paint/paintFloor.ts';
import { typeOf } from '../../model/cell.ts';
import { viewNotes } from '../../exchange/viewNotes.ts';
import type { Doc } from '../../model/doc.ts';
import type { RecordType } from '../../model/records/all.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { useTakeoff } from '../plan.ts';
import { useSession, type Stage, type Units } from '../session.ts';
import { litOf } from './litOf.ts';
import { whyLine } from '../takeoff/whyLine.ts';
import { useLanesShown } from '../lanes/useLanes.ts';

/** What painting needs and the plan does not say: measured outlines, profiles, holds, lengths in the user's units. Paper asks the same. */
export function usePlanNotes(doc: Doc, floor: string, takeoff: Takeoff | null, units: Units): ViewNotes {
  return useMemo(() => viewNotes(doc, floor, takeoff, units), [doc, floor, takeoff, units]);
}

/** Prep shows what the machine of the picked zone gets to, the crew what is left for their hands. */
function reachShown(stage: Stage, zone: string | null): Showing['reach'] {
  if (stage === 'crew') return 'spots';
  return stage === 'prep' && zone ? zone : 'none';
}

/** Which items have their tag on the plan: in Survey all, later those that the stage speaks of. */
const TAGS: Readonly<Record<Stage, ReadonlySet<RecordType> | null>> = {
  survey: null,
  prep: new Set(['crack', 'finding', 'opening']),
  takeoff: new Set([]),
  crew: new Set(['crack', 'finding', 'opening']),
  handover: new Set(['reading', 'note', 'photo']),
};

/** What of the floor this stage shows: Survey the bare floor, Prep and Takeoff its zones, Why only what is lit. */
export function useShowing(): Showing {
  const stage = useSession((now) => now.stage);
  const picked = useSession((now) => now.picked);
  const pickedEdges = useSession((now) => now.pickedEdges);
  const litKey = useSession((now) => now.lit);
  const truing = useSession((now) => now.truing !== null);
  const { takeoff } = useTakeoff();
  const lanes = useLanesShown();
  const line = useMemo(() => (takeoff && litKey !== null ? whyLine(takeoff, litKey) : null), [takeoff, litKey]);
  return useMemo(() => {
    const zone = picked.find((id) => typeOf(id) === 'zone');
    return {
      ...SHOW_ALL,
      zones: stage !== 'survey' || zone !== undefined,
      pages: stage === 'survey',
      pageAlone: truing,
      tagsOf: TAGS[stage],
      cornerNumbers: stage !== 'crew',
      reach: reachShown(stage, zone ?? null),
      lanes,
      picked,
      pickedEdges,
      lit: line ? litOf(line) : null,
    };
  }, [stage, picked, pickedEdges, line, truing, lanes]);
}
