import { useMemo } from 'react';
import { useTakeoff } from '../plan.ts';
import { useNames } from '../takeoff/useNames.ts';
import type { Priced } from '../../takeoff/rates/rateBook.ts';
import { rateBookText as text } from '../../words/rateWords.ts';
import { tableOf } from './rateTables.ts';

const MOST_NAMED = 3;

/** What a rate goes into: lines of the takeoff on the screen by name; if none, what it is for. */
export function useRateUses(): (rate: Priced) => string {
  const { takeoff } = useTakeoff();
  const names = useNames();
  const titles = useMemo(() => {
    const found = new Map<string, Set<string>>();
    for (const line of takeoff?.lines ?? []) {
      for (const { from } of line.working.terms) {
        if (!from?.startsWith('rate:')) continue;
        const those = found.get(from) ?? new Set<string>();
        found.set(from, those.add(names.line(line)));
      }
    }
    return found;
  }, [takeoff, names]);
  return (rate) => {
    const here = [...(titles.get(rate.record ?? '') ?? [])];
    if (here.length === 0) return text.usedFor[tableOf(rate)];
    const named = here.slice(0, MOST_NAMED).join('; ');
    return text.usedHere(here.length > MOST_NAMED ? `${named} ${text.andMore(here.length - MOST_NAMED)}` : named);
  };
}
