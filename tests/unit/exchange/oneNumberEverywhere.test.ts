/**
 * A number of the takeoff is the same on screen, in a file, on the clipboard and at the command line, in metres and in
 * feet. 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, 1 gal = 3.785411784 L (NIST SP 811) stand in src/model/units.ts.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { showInRow, unitOnScreen, unitShown } from '../../../src/app/takeoff/showQuantity.ts';
import { csvText, takeoffCsv } from '../../../src/exchange/csv.ts';
import { readJobFile, writeJobFile } from '../../../src/exchange/jobFile.ts';
import { runTakeoffCommand } from '../../../src/exchange/takeoffCommand.ts';
import { takeoffRows } from '../../../src/exchange/takeoffRows.ts';
import { takeoffSheet } from '../../../src/exchange/takeoffSheet.ts';
import { workSheet } from '../../../src/exchange/workSheet.ts';
import { applyCells, recordsOf, type Doc } from '../../../src/model/doc.ts';
import type { Units } from '../../../src/model/units.ts';
import { lineTable } from '../../../src/takeoff/lineTable.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { workList } from '../../../src/takeoff/workList.ts';
import { orderText } from '../../../src/words/orderWords.ts';

const ROOT = join(import.meta.dirname, '..', '..', '..');

function demo(name: 'workshop' | 'garage', units: Units): Doc {
  const answer = readJobFile(new Uint8Array(readFileSync(join(ROOT, `public/demo/${name}.slabtooth`))));
  if (!answer.ok) throw new Error(answer.fault);
  const job = recordsOf(answer.opened.doc, 'job')[0];
  if (!job) throw new Error('no job');
  return applyCells(answer.opened.doc, [[job.id, 'units', units]]);
}

/** A figure of the screen as a number, and the half of its last place that rounding may take. */
function onScreen(figure: string): { readonly value: number; readonly half: number } {
  if (figure === orderText.under) return { value: 0.005, half: 0.005 };
  const text = figure.replaceAll(/[^\d.-]/g, '');
  return { value: Number(text), half: 0.5 / 10 ** (text.split('.')[1]?.length ?? 0) };
}

/** Files have four decimals. */
const FILE_HALF = 0.5e-4;

const JOBS = (['workshop', 'garage'] as const).flatMap((name) =>
  (['metric', 'imperial'] as const).map((units) => [name, units] as const),
);

describe.each(JOBS)('the demo %s, %s', (name, units) => {
  const doc = demo(name, units);
  const floor = recordsOf(doc, 'floor')[0]?.id ?? '';
  const currency = recordsOf(doc, 'job')[0]?.currency ?? '';
  const result = takeoff(doc, floor);
  const rows = Papa.parse<string[]>(takeoffCsv(doc, result, currency)).data;

  const table = lineTable(result);
  const shown = table.groups.flatMap((group) => group.rows);
  const cellsOf = (row: (typeof shown)[number]) => [
    ...table.zones.map(({ id }) => row.cells.get(id) ?? null),
    row.total,
  ];

  test('every figure of the screen is that of the file', () => {
    expect(rows.length - 1).toBe(shown.length);
    const compared = shown.flatMap((row, i) =>
      cellsOf(row).flatMap((cell, column) =>
        (['low', 'likely', 'high'] as const).flatMap((which, at) => {
          if (!cell?.quantity) return [];
          const screen = onScreen(showInRow(cell.quantity[which], row.unit, units, currency));
          const file = Number(rows[i + 1]?.[3 + column * 3 + at]);
          return [{ what: `${row.key} ${which}`, off: Math.abs(file - screen.value) - screen.half }];
        }),
      ),
    );
    expect(compared.length).toBeGreaterThan(200);
    expect(compared.filter(({ off }) => !(off <= FILE_HALF + 1e-9))).toEqual([]);
  });

  test('the file has the words of the screen for units, and for what is held', () => {
    const unitsShown = shown.filter(({ unit }) => unit !== 'minor').map(({ unit }) => unitShown(unit, units));
    const inFile = rows.slice(1).map((row) => unitOnScreen(row[2] ?? ''));
    expect(inFile.filter((unit) => unit !== currency).map((unit) => (unit === 'number' ? '' : unit))).toEqual(
      unitsShown,
    );
    const held = shown.flatMap((row) => cellsOf(row).filter((cell) => cell !== null && !cell.quantity));
    expect(rows.flat().filter((cell) => cell === 'held').length).toBe(held.length * 3);
  });

  test('the command line writes the same file', async () => {
    let out = '';
    const io = {
      readFile: () => Promise.resolve(writeJobFile(doc, new Map(), new Map())),
      out: (text: string) => (out += text),
      err: (text: string) => (out += text),
    };
    expect(await runTakeoffCommand(['job.slabtooth', '--csv'], io)).toBe(0);
    expect(out.trimEnd()).toBe(takeoffCsv(doc, result, currency).trimEnd());
  });

  test('the text of the command line has the numbers of the file', async () => {
    let out = '';
    const io = {
      readFile: () => Promise.resolve(writeJobFile(doc, new Map(), new Map())),
      out: (text: string) => (out += text),
      err: (text: string) => (out += text),
    };
    await runTakeoffCommand(['job.slabtooth'], io);
    const lines = out.split('\n');
    const missing = takeoffRows(doc, result, currency).rows.filter(({ work, total }) => {
      const likely = total?.held === null ? total.likely.toFixed(2) : '';
      return !lines.some((line) => line.startsWith(`  ${work}  `) && line.includes(likely));
    });
    expect(missing).toEqual([]);
  });

  test('the clipboard has the cells of the file', () => {
    const cells = takeoffSheet(doc, result, currency);
    expect(Papa.parse(csvText(cells, '\t'), { delimiter: '\t' }).data).toEqual(rows);
  });

  test('the list of work has the hours and amounts of its lines', () => {
    const groups = workList(result, 'zone');
    const sheet = workSheet(doc, result, groups, currency);
    const price = result.lines.find(({ code }) => code === 'money.price');
    expect(sheet.length).toBe(1 + groups.reduce((sum, group) => sum + 1 + group.rows.length, 0) + 2);
    expect(sheet.at(-1)?.slice(4)).toEqual([
      ...(['low', 'likely', 'high'] as const).map((which) => (price?.quantity[which] ?? 0) / 100),
      currency,
    ]);
    const net = result.lines.find(({ code }) => code === 'netFloor');
    const inUnits = (net?.quantity.likely ?? 0) / (units === 'metric' ? 1 : 0.3048 ** 2);
    expect(sheet[1]?.slice(2, 4)).toEqual([expect.closeTo(inUnits, 3), units === 'metric' ? 'm2' : 'ft2']);
  });

  test('no name keeps a measure in the other units', () => {
    const names = rows.slice(1).map((row) => row[1] ?? '');
    const other = units === 'metric' ? /\d (?:ft|in)\b/ : /\d mm\b|\d m2\b/;
    expect(names.filter((each) => other.test(each))).toEqual([]);
  });
});
