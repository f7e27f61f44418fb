import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { csvText, takeoffCsv } from '../../../src/exchange/csv.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { lineTable } from '../../../src/takeoff/lineTable.ts';
import { docOf, FLOOR, jobCells, record, rectangle, restCells, slabCells, zoneCells } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

// CWE-1236: cells that begin with = + - @, tab or return run as formulas in spreadsheets.
test.each(['=1+1', '+1', '-1+2', '@SUM(A1)', '\t=1', '\r=1', '=HYPERLINK("http://example.invalid","x")'])(
  'text %j cannot be taken for a formula',
  (text) => {
    const rows = Papa.parse<string[]>(csvText([[text, 'plain', -3]])).data;
    expect(rows[0]?.[0]).toBe(`'${text}`);
    expect(rows[0]?.slice(1)).toEqual(['plain', '-3']);
  },
);

test('a zone with a formula for a name is made safe in the file', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(8_000, 8_000)),
    zoneCells('zone:1', rectangle(4_000, 8_000), { tag: '=2+2', name: 'x' }),
  );
  const csv = takeoffCsv(doc, takeoff(doc, FLOOR), 'USD');
  const head = Papa.parse<string[]>(csv).data[0] ?? [];
  expect(head.filter((cell) => /^[=+\-@]/.test(cell))).toEqual([]);
  expect(head).toContain("'=2+2 x, likely");
});

test('commas, quotes and line ends come back as they were (RFC 4180)', () => {
  const rows = [['a,b', 'say "c"', 'd\ne', 1.5]];
  expect(Papa.parse<string[]>(csvText(rows)).data).toEqual([['a,b', 'say "c"', 'd\ne', '1.5']]);
});

test('has the rows and totals of the table on screen', () => {
  const doc = richJob();
  const result = takeoff(doc, FLOOR);
  const [, ...rows] = Papa.parse<string[]>(takeoffCsv(doc, result, 'USD')).data;
  const shown = lineTable(result).groups.flatMap((group) => group.rows);
  expect(rows.length).toBe(shown.length);
  for (const [i, row] of shown.entries()) {
    const scale = row.unit === 'minor' ? 100 : 1;
    expect(Number(rows[i]?.at(-2)), row.key).toBeCloseTo((row.total?.quantity?.likely ?? 0) / scale, 3);
  }
});

test('what is taken off is one row, the net floor of the slab its own row with the zones, the rest by its name', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(8_000, 8_000)),
    restCells({ tag: 'Z9', name: 'Yard' }),
    ...[1, 2].map((n) =>
      record(`obstruction:b${n}`, {
        floor: FLOOR,
        tag: `B${n}`,
        kind: 'column',
        shape: { form: 'rectangle', at: [2_000 * n, 4_000], widthMm: 500, depthMm: 500, turnDeg: 0 },
        under: 'none',
      }),
    ),
  );
  const [head = [], ...rows] = Papa.parse<string[]>(takeoffCsv(doc, takeoff(doc, FLOOR), 'USD')).data;
  expect(head).toContain('Z9 Yard, likely');
  expect(rows.slice(0, 3).map((row) => [row[1], row.at(-2)])).toEqual([
    ['Slab, inside its outlines', '64'],
    ['Less walls, columns, out of scope', '0.5'],
    ['Net floor', '63.5'],
  ]);
});
