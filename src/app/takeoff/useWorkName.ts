import { useNames } from './useNames.ts';
import type { WorkRow } from '../../takeoff/workList.ts';

/** What a row of the list of work is called: its line, or its code where it adds several up. */
export function useWorkName(): (row: Pick<WorkRow, 'line' | 'code'>) => string {
  const names = useNames();
  return ({ line, code }) => names.work(line ?? { key: code, code });
}
