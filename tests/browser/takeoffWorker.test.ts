import { expect, test } from 'vitest';
import { workerPort } from '../../src/app/workerPort.ts';
import type { Answer, Answered } from '../../src/takeoff/port.ts';
import { takeoff, takeoffTotals } from '../../src/takeoff/takeoff.ts';
import { FLOOR, record, set, withCells } from '../support/jobPlans.ts';
import { richJob } from '../support/richJob.ts';

test('the worker says what the page itself would say, drops a preview, and the newest tick wins', async () => {
  const port = workerPort();
  const answers: Answer[] = [];
  port.listen((answer) => answers.push(answer));
  const last = async (tick: number, preview: boolean): Promise<Answer> => {
    const find = (): Answer | undefined => answers.findLast((each) => each.tick === tick && each.preview === preview);
    await expect.poll(find, { timeout: 10_000 }).toBeDefined();
    return find() as Answer;
  };

  const doc = richJob();
  port.load(doc, FLOOR, 1);
  const first = await last(1, false);
  expect(first.takeoff).toEqual(takeoff(doc, FLOOR));

  port.preview(set('crack:C1', 'widthMm', 10), 1);
  const drag = await last(1, true);
  expect(drag.takeoff.lines).not.toEqual(first.takeoff.lines);

  port.change(set('crack:C3', 'gone', true), 2);
  const after = await last(2, false);
  expect(after.takeoff.lines.some((line) => line.code.startsWith('crack.working'))).toBe(false);
  expect(after.takeoff.lines.find((line) => line.code === 'crackFiller')).toEqual(
    first.takeoff.lines.find((line) => line.code === 'crackFiller'),
  );
  port.close();
});

test('of a plan with thousands of records areas and lengths come from a worker of their own, ahead of the rest', async () => {
  const notes = Array.from({ length: 3000 }, (_, i) =>
    record(`note:n${i}`, { floor: FLOOR, tag: `N${i}`, at: [i, 0], text: 'Invented', by: 'Tester' }),
  );
  const doc = withCells(richJob(), notes.flat());
  const port = workerPort();
  const heard: string[] = [];
  let totals: Answered | null = null;
  let whole: Answer | null = null;
  port.listen(
    (answer) => {
      heard.push(`answer ${answer.ask}`);
      whole = answer;
    },
    (answered) => {
      heard.push(`totals ${answered.ask}`);
      totals = answered;
    },
  );
  const first = port.load(doc, FLOOR, 1);
  await expect
    .poll(() => heard, { timeout: 10_000 })
    .toEqual(expect.arrayContaining([`totals ${first}`, `answer ${first}`]));

  const cells = set('crack:C1', 'path', [[0, 0], [3000, 0]]); // prettier-ignore
  const drag = port.preview(cells, 1);
  await expect
    .poll(() => heard, { timeout: 10_000 })
    .toEqual(expect.arrayContaining([`totals ${drag}`, `answer ${drag}`]));
  const shown = withCells(doc, cells);
  expect(totals).toEqual({ ask: drag, tick: 1, preview: true, totals: takeoffTotals(shown, FLOOR) });
  expect(whole).toEqual({
    ask: drag,
    tick: 1,
    preview: true,
    totals: takeoffTotals(shown, FLOOR),
    takeoff: takeoff(shown, FLOOR),
  });
  port.close();
});
