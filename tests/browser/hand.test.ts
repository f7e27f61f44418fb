import { afterEach, beforeEach, expect, test } from 'vitest';
import { measureFloor, setReadOnly, showJob } from '../../src/app/plan.ts';
import { arm, restSession, session, showFloor } from '../../src/app/session.ts';
import { send, sendMove, useHand } from '../../src/app/survey/hand.ts';
import type { Point } from '../../src/geometry/floorShape.ts';
import { recordsOf } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import type { Answer } from '../../src/takeoff/port.ts';
import { docOf, FLOOR, jobCells } from '../support/jobPlans.ts';

/** The hand, the plan and the takeoff together, without a screen. */
let store: PlanStore;
let answers: Answer[];

beforeEach(() => {
  store = planStore({ doc: docOf(jobCells()) });
  const port = takeoffInline();
  answers = [];
  port.listen((answer) => answers.push(answer));
  showJob({ id: 'test', store, port, readOnly: null });
  showFloor(FLOOR);
  measureFloor(FLOOR);
  arm('slab');
});
afterEach(() => {
  showJob(null);
  restSession();
});

function point(kind: 'tap' | 'move', at: Point): void {
  sendMove({ kind, at, shift: false, pxPerMm: 0.1, reachPx: 4, off: true, gridMm: null }, false);
}
const square: readonly Point[] = [
  [0, 0],
  [4000, 0],
  [4000, 3000],
  [0, 3000],
];
const slabs = () => recordsOf(store.getState(), 'slab').length;
const frame = () => new Promise((resolve) => requestAnimationFrame(() => resolve(null)));

test('a line that may not be written now stays in hand, and is written when it may', () => {
  for (const at of square) point('tap', at);
  setReadOnly('otherTab');
  send({ kind: 'finish' });
  expect(slabs()).toBe(0);
  expect(session().notice?.text).toContain('Nothing was changed');
  expect(session().toolState).not.toBeNull();
  setReadOnly(null);
  send({ kind: 'finish' });
  expect(slabs()).toBe(1);
  expect(session().toolState).toBeNull();
});

test('the preview of a line ends with it: cancelled or drawn, the last answer is of the plan', async () => {
  for (const at of square) point('tap', at);
  await frame();
  expect(answers.at(-1)?.preview).toBe(true);
  send({ kind: 'cancel' });
  await frame();
  expect(answers.at(-1)?.preview).toBe(false);

  for (const at of square) point('tap', at);
  // Asked for before the line is done, to be answered after it.
  point('move', [100, 2900]);
  send({ kind: 'finish' });
  await frame();
  await frame();
  expect(answers.at(-1)).toMatchObject({ preview: false, tick: store.tick() });
  expect(answers.at(-1)?.takeoff.measure.grossM2).toBeCloseTo(12, 6);
  expect(useHand.getState().draft?.cells).toEqual([]);
});

test('another tool taken with a line in hand leaves no preview behind', async () => {
  for (const at of square) point('tap', at);
  await frame();
  expect(answers.at(-1)?.preview).toBe(true);
  arm('pick');
  await frame();
  expect(answers.at(-1)?.preview).toBe(false);
});
