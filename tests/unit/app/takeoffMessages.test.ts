import { expect, test } from 'vitest';
import { answerReader, answerSender, type FromWorker } from '../../../src/app/takeoffMessages.ts';
import { measureMemory } from '../../../src/geometry/measureMemory.ts';
import { recordsOf, type Doc } from '../../../src/model/doc.ts';
import type { Answer } from '../../../src/takeoff/port.ts';
import { takeoff, takeoffTotals } from '../../../src/takeoff/takeoff.ts';
import { FLOOR, set, withCells } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

/** What goes over a real channel is copied, and lists of numbers are handed over. */
function channel() {
  const sent: FromWorker[] = [];
  const heard: Answer[] = [];
  const read = answerReader();
  const send = answerSender((message, load) => {
    sent.push(message);
    const copy = structuredClone(message, { transfer: load });
    const answer = copy.kind === 'totals' ? null : read(copy);
    if (answer) heard.push(answer);
  });
  return { sent, heard, send };
}

const memory = measureMemory();
const answerTo = (doc: Doc, ask: number): Answer => ({
  ask,
  tick: ask,
  preview: false,
  totals: takeoffTotals(doc, FLOOR, memory),
  takeoff: takeoff(doc, FLOOR, memory),
});

test('an answer comes out of its pieces as it went in', () => {
  const { sent, heard, send } = channel();
  const answer = answerTo(richJob(), 1);
  const before = structuredClone(answer);
  send(answer);
  expect(heard).toEqual([before]);
  // Packing takes nothing from the worker's own answer.
  expect(answer).toEqual(before);
  expect(sent.filter(({ kind }) => kind === 'zone').length).toBe(answer.takeoff.measure.zones.length);
  expect(sent.at(-1)?.kind).toBe('answer');
});

test('outlines that have not changed are not sent again, and are the very same ones on the page', () => {
  const { sent, heard, send } = channel();
  const doc = richJob();
  send(answerTo(doc, 1));
  const first = sent.splice(0);
  const priced = withCells(doc, set('job:test', 'name', 'Another name'));
  send(answerTo(priced, 2));
  const outlines = (messages: readonly FromWorker[]) =>
    messages.flatMap((message) => (message.kind === 'zone' && message.zone.outlines ? [message.zone.outlines] : []));
  expect(outlines(first).length).toBeGreaterThan(0);
  expect(outlines(sent)).toEqual([]);
  const [was, now] = heard.map(({ takeoff: { measure } }) => measure.zones);
  expect(now?.map(({ net }) => net)).toEqual(was?.map(({ net }) => net));
  for (const [i, zone] of (now ?? []).entries()) expect(zone.net).toBe(was?.[i]?.net);
});

test('a zone that comes back after it was gone has its outlines again', () => {
  const { heard, send } = channel();
  const doc = richJob();
  const zone = recordsOf(doc, 'zone')[0]?.id ?? 'zone:none';
  const without = withCells(doc, set(zone, 'gone', true));
  for (const [i, plan] of [doc, without, doc].entries()) send(answerTo(plan, i + 1));
  expect(heard[2]?.takeoff).toEqual(heard[0]?.takeoff);
});
