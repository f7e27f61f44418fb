import { expect, test } from 'vitest';
import { workerPort } from '../../src/app/workerPort.ts';
import type { Answer } from '../../src/takeoff/port.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FLOOR, set } from '../support/jobPlans.ts';
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
