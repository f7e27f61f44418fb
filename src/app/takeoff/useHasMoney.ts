import { useJob } from '../plan.ts';

/** A crew copy has no currency, and with it nothing of money on any screen: not even the samples of the book. */
export function useHasMoney(): boolean {
  return useJob()?.currency !== undefined;
}
