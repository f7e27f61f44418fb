import { recordsOf } from '../../model/doc.ts';
import { useDoc } from '../plan.ts';

/** Takeoff and price are of one floor; where the job has more of them, that has to be said. */
export function useSeveralFloors(): boolean {
  return useDoc((doc) => recordsOf(doc, 'floor').length > 1);
}
