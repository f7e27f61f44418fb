import { say } from '../session.ts';
import { jobText } from '../../words/jobWords.ts';

let busy = false;

/**
 * What opens a job takes a moment. A second tap meanwhile is the same wish again: it would make a second job, or open
 * the first one twice, and then as if another tab had it. What goes wrong is said.
 */
export async function oneAtATime(work: () => Promise<unknown>): Promise<void> {
  if (busy) return;
  busy = true;
  try {
    await work();
  } catch (fault) {
    say(jobText.notOpened(fault instanceof Error ? fault.message : String(fault)));
  } finally {
    busy = false;
  }
}
