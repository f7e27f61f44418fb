import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { writeJobFile } from '../../src/exchange/jobFile.ts';
import { runTakeoffCommand } from '../../src/exchange/takeoffCommand.ts';
import type { Doc } from '../../src/model/doc.ts';
import { docOf, jobCells, rectangle, slabCells } from '../support/jobPlans.ts';
import { richJob } from '../support/richJob.ts';
import { kitchen, showroom, warehouse } from '../support/wholeJobs.ts';

/* Takeoffs as text, written anew by `npm run golden`. Read the difference before it is committed. */
const HERE = fileURLToPath(new URL('takeoffs/', import.meta.url));
const DEMO = fileURLToPath(new URL('../../public/demo/', import.meta.url));

const file = (doc: Doc) => (): Uint8Array => writeJobFile(doc, new Map(), new Map());
const jobs: Record<string, () => Uint8Array> = {
  hall: file(richJob()),
  room: file(docOf(jobCells(), slabCells(rectangle(6_700, 6_500)))),
  warehouse: file(warehouse()),
  kitchen: file(kitchen()),
  showroom: file(showroom()),
};
for (const name of (existsSync(DEMO) ? readdirSync(DEMO) : []).filter((each) => each.endsWith('.slabtooth'))) {
  jobs[`demo-${name.replace('.slabtooth', '')}`] = () => new Uint8Array(readFileSync(join(DEMO, name)));
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
