import { recordsOf, type Doc } from '../model/doc.ts';
import type { Job } from '../model/records/job.ts';

/** The four questions asked on site before a price may be called an offer. */
export const QUESTIONS = ['builtBefore1981', 'coatingOrTile', 'inSlab', 'gasAppliance'] as const;
export type Question = (typeof QUESTIONS)[number];

/** `open`: nobody has answered yet. It counts as "don't know" wherever work could hurt. */
export type Answered = 'yes' | 'no' | 'unknown' | 'open';

export type Answers = Readonly<Record<Question, Answered>>;

/** The record of the job itself; null in an empty plan. */
export function jobOf(doc: Doc): Job | null {
  return recordsOf(doc, 'job')[0] ?? null;
}

/** What has been answered to the four questions; `open` where nobody has. */
export function answersOf(doc: Doc): Answers {
  const job = jobOf(doc);
  const answered = (question: Question): Answered => job?.[question]?.answer ?? 'open';
  return {
    builtBefore1981: answered('builtBefore1981'),
    coatingOrTile: answered('coatingOrTile'),
    inSlab: answered('inSlab'),
    gasAppliance: answered('gasAppliance'),
  };
}

/** "Don't know" and no answer are the same to safety. */
export function isNotKnown(answer: Answered): boolean {
  return answer === 'unknown' || answer === 'open';
}
