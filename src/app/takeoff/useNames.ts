import { namesIn, type Names } from './names.ts';
import { useDoc, useFloor, useUnits } from '../plan.ts';

export function useNames(): Names {
  const floor = useFloor();
  const units = useUnits();
  return useDoc((doc) => namesIn(doc, floor?.id ?? null, units));
}
