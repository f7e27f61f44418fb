import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { writeJobFile } from '../../../src/exchange/jobFile.ts';
import { runTakeoffCommand } from '../../../src/exchange/takeoffCommand.ts';
import { writeCrewCopy } from '../../../src/exchange/crewCopy.ts';
import { richJob } from '../../support/richJob.ts';

const whole = writeJobFile(richJob(), new Map(), new Map());
const crew = writeCrewCopy(richJob(), new Map(), new Map());

async function ran(argv: readonly string[], files: Readonly<Record<string, Uint8Array>> = { 'a.slabtooth': whole }) {
  let [out, err] = ['', ''];
  const code = await runTakeoffCommand(argv, {
    readFile: (path) => {
      const bytes = files[path];
      return bytes ? Promise.resolve(bytes) : Promise.reject(new Error('ENOENT'));
    },
    out: (text) => (out += text),
    err: (text) => (err += text),
  });
  return { code, out, err };
}

describe('the takeoff of a saved job', () => {
  test('as text: the table, why it is not an offer, what to look at', async () => {
    const { code, out, err } = await ran(['a.slabtooth']);
    expect([code, err]).toEqual([0, '']);
    for (const words of ['Ground floor', 'Net floor', 'Machine field', 'Price', 'Not an offer', 'Look at']) {
      expect(out).toContain(words);
    }
  });

  test('as JSON: every line with its working', async () => {
    const { out } = await ran(['a.slabtooth', '--json']);
    const floor = JSON.parse(out).floors[0];
    expect(floor.lines.length).toBeGreaterThan(100);
    expect(floor.lines.every((line: { working?: { terms?: unknown[] } }) => Array.isArray(line.working?.terms))).toBe(
      true,
    );
  });

  test('as CSV: one table', async () => {
    const { out } = await ran(['--csv', 'a.slabtooth']);
    const rows = Papa.parse<string[]>(out.trimEnd()).data;
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(rows.find((row) => row[1] === 'Price')?.[2]).toBe('USD');
  });

  test('a crew copy has hours and not one amount of money', async () => {
    for (const flag of [[], ['--json'], ['--csv']]) {
      // One run at a time: each says what it read.
      // oxlint-disable-next-line no-await-in-loop
      const { code, out } = await ran(['c.slabtooth', ...flag], { 'c.slabtooth': crew });
      expect(code).toBe(0);
      expect(out.toLowerCase()).toMatch(/hours/);
      expect(out.match(/money|price|wage|margin|USD/gi)).toBeNull();
    }
  });
});

describe('bad input gets a sentence and the exit code 1', () => {
  test.each([
    [[], 'Name one job file'],
    [['a.slabtooth', 'b.slabtooth'], 'Name one job file'],
    [['a.slabtooth', '--xml'], 'Name one job file'],
    [['none.slabtooth'], 'no file to read at "none.slabtooth"'],
    [['bad.slabtooth'], 'is not a Slabtooth file'],
  ])('%j', async (argv, sentence) => {
    const { code, out, err } = await ran(argv, { 'a.slabtooth': whole, 'bad.slabtooth': new Uint8Array([1, 2, 3]) });
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(sentence);
  });
});
