import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOT } from '../../scripts/runTool.mjs';
import { runTakeoffCommand } from '../../src/exchange/takeoffCommand.ts';

/* docs/takeoff.md is worked by hand: each of its sums is one that the program prints of the demo garage. */
const PAGE = readFileSync(join(ROOT, 'docs/takeoff.md'), 'utf8');
const SUMS = [...PAGE.matchAll(/^ {4}= (.*)$/gm)].map(([, line = '']) => line.split(/ {3,}/)[0] ?? '');

async function workingOf(file: string): Promise<string> {
  let text = '';
  const io = {
    readFile: () => Promise.resolve(new Uint8Array(readFileSync(join(ROOT, file)))),
    out: (more: string) => (text += more),
    err: () => '',
  };
  expect(await runTakeoffCommand([file, '--why'], io)).toBe(0);
  return text;
}

test('every sum of the page is printed for the demo garage', async () => {
  const printed = new Set((await workingOf('public/demo/garage.slabtooth')).split('\n').map((line) => line.trim()));
  expect(SUMS.length).toBeGreaterThan(20);
  expect(SUMS.filter((sum) => !printed.has(`= ${sum}`))).toEqual([]);
});
