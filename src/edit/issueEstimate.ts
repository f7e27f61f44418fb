import type { Json, RecordId } from '../model/cell.ts';
import { recordsOf, type Doc } from '../model/doc.ts';
import { typeOf } from '../model/cell.ts';
import { QUESTIONS } from './answerQuestion.ts';
import type { Command } from './command.ts';
import { newRecordCells, refuseNewId, type Slots } from './newItem.ts';

export type IssueEstimateArgs = {
  readonly id: RecordId;
  /** Day of issue. */
  readonly on: string;
  /** Codes of what keeps the price from being an offer; there may be none. */
  readonly open: readonly string[];
  /** All else that an estimate keeps, as it stands now. A command prices nothing. */
  readonly frozen: { readonly [slot: string]: Json };
};

/** Writes an estimate once and for all. A new one gets the next number; an issued one is never written to again. */
export const issueEstimate: Command<IssueEstimateArgs> = {
  name: 'issueEstimate',
  refuse(doc, { id, open, frozen }) {
    const taken = refuseNewId(doc, id, 'estimate');
    if (taken) return taken;
    if (open.length > 0 || hasOpenQuestion(doc)) return 'notAnOffer';
    const { lines, totalMinor } = frozen;
    const priced = Array.isArray(lines) && lines.length > 0 && Number.isInteger(totalMinor);
    return priced ? null : 'nothingToIssue';
  },
  write(doc, { id, on, frozen }) {
    const next = nextEstimate(doc);
    const slots: Slots = { ...frozen, ...next, issuedOn: on };
    return newRecordCells(doc, id, slots);
  },
};

/** Asked of the plan itself as well: whoever calls may have looked at an older one. */
function hasOpenQuestion(doc: Doc): boolean {
  const job = recordsOf(doc, 'job')[0];
  return QUESTIONS.some((question) => {
    const answer = job?.[question]?.answer;
    return answer === undefined || answer === 'unknown';
  });
}

/** Number of the next estimate: that of the job, and one more than any estimate it ever had. */
export function nextEstimate(doc: Doc): { readonly number: string; readonly running: number } {
  let running = 1;
  for (const [id, fields] of doc) {
    if (typeOf(id) !== 'estimate') continue;
    const other = fields['running'];
    running = Math.max(running, (typeof other === 'number' ? other : 1) + 1);
  }
  const job = recordsOf(doc, 'job')[0]?.number?.trim();
  return { number: `${job ? job : 'E'}-${String(running)}`, running };
}
