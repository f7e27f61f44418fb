import type { RecordId } from '../model/cell.ts';
import { recordOf } from '../model/doc.ts';
import type { Command } from './command.ts';

export const QUESTIONS = ['builtBefore1981', 'coatingOrTile', 'inSlab', 'gasAppliance'] as const;

export type AnswerQuestionArgs = {
  readonly job: RecordId;
  readonly question: (typeof QUESTIONS)[number];
  /** "Don't know" counts as open; null takes the answer back. */
  readonly answer: 'yes' | 'no' | 'unknown' | null;
  readonly by?: string;
  readonly on?: string;
};

export const answerQuestion: Command<AnswerQuestionArgs> = {
  name: 'answerQuestion',
  refuse(doc, { job, question }) {
    if (!recordOf(doc, 'job', job)) return 'unknownRecord';
    return QUESTIONS.includes(question) ? null : 'unknownQuestion';
  },
  write(_doc, { job, question, answer, by, on }) {
    if (answer === null) return [[job, question, undefined]];
    return [[job, question, { answer, ...(by ? { by } : {}), ...(on ? { on } : {}) }]];
  },
};
