import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { writeJobFile } from '../../src/exchange/jobFile.ts';
import { runTakeoffCommand } from '../../src/exchange/takeoffCommand.ts';
import { docOf, jobCells, rectangle, slabCells } from '../support/jobPlans.ts';
import { richJob } from '../support/richJob.ts';

/* Takeoffs as text, written anew by `npm run golden`. Read the difference before it is committed. */
const HERE = fileURLToPath(new URL('takeoffs/', import.meta.url));
const DEMO = fileURLToPath(new URL('../../public/demo/', import.meta.url));

const jobs: Record<string, () => Uint8Array> = {
  hall: () => writeJobFile(richJob(), new Map(), new Map()),
  room: () => writeJobFile(docOf(jobCells(), slabCells(rectangle(6_700, 6_500))), new Map(), new Map()),
};
for (const file of (existsSync(DEMO) ? readdirSync(DEMO) : []).filter((name) => name.endsWith('.slabtooth'))) {
  jobs[`demo-${file.replace('.slabtooth', '')}`] = () => new Uint8Array(readFileSync(join(DEMO, file)));
}

async function textOf(bytes: Uint8Array): Promise<string> {
  let text = '';
  const io = { readFile: () => Promise.resolve(bytes), out: (more: string) => (text += more), err: () => '' };
  expect(await runTakeoffCommand(['job.slabtooth'], io)).toBe(0);
  return text;
}

describe('takeoff as text', () => {
  test('the demo jobs are among them', () => {
    expect(Object.keys(jobs)).toEqual(expect.arrayContaining(['demo-garage', 'demo-workshop']));
  });

  test.each(Object.keys(jobs))('%s', async (name) => {
    const text = await textOf(jobs[name]?.() ?? new Uint8Array());
    const path = join(HERE, `${name}.txt`);
    if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(path, text);
    expect(existsSync(path), `${path}: run npm run golden`).toBe(true);
    expect(text).toBe(readFileSync(path, 'utf8'));
  });
});
