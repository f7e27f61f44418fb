import { namesIn, type Names } from './names.ts';
import { useDoc, useFloor } from '../plan.ts';

export function useNames(): Names {
  const floor = useFloor();
  return useDoc((doc) => namesIn(doc, floor?.id ?? null));
}
