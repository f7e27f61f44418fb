import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Doc } from '../../src/model/doc.ts';
import type { Line } from '../../src/takeoff/line.ts';
import { orderTable } from '../../src/takeoff/orderTable.ts';
import type { OrderRow } from '../../src/takeoff/orderTable.ts';
import { bookRow } from '../../src/takeoff/rates/book.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  recipeCells,
  rectangle,
  restCells,
  slabCells,
} from '../support/jobPlans.ts';

const RUNS = { numRuns: 40 };
const side = fc.integer({ min: 2_000, max: 40_000 });
const hardness = fc.constantFrom('soft', 'medium', 'hard', 'veryHard');
const method = fc.constantFrom(
  'grinder_small',
  'shot_small',
  'buffer_screen',
  'acid_etch',
  'scarifier_small',
  'detergent_scrub',
);
const times = fc.integer({ min: 1, max: 4 });
const kind = fc.constantFrom('oil_light', 'efflorescence', 'mould', 'thinset', 'gypsum', 'hollow', 'silicone');

interface Ask {
  readonly width: number;
  readonly depth: number;
  readonly hard: 'soft' | 'medium' | 'hard' | 'veryHard';
  readonly by: string;
  readonly over: number;
  readonly found: string;
}

function room({ width, depth, hard, by, over, found }: Ask): Doc {
  return docOf(
    jobCells(),
    slabCells(rectangle(width, depth)),
    recipeCells('a', { method: by, times: over }),
    restCells({ hardness: hard, recipe: 'recipe:a', system: { kind: 'high_build', thicknessMm: 0.5 } }),
    crackCells('crack:C1', [
      [100, 1_000],
      [width - 100, 1_000],
    ]),
    findingCells('finding:F1', found, rectangle(1_500, 1_500, [200, 200])),
  );
}

const ask = fc.record({ width: side, depth: side, hard: hardness, by: method, over: times, found: kind });
const CASES = ['low', 'likely', 'high'] as const;

function rowsOf(doc: Doc): readonly OrderRow[] {
  return orderTable(takeoff(doc, FLOOR)).flatMap((group) => group.rows);
}

function packOf({ item }: OrderRow): number {
  if (item.pack === null) return 1;
  const row = bookRow(item.pack);
  if (!row) throw new Error(item.pack);
  return row.unit === 'mL' ? row.likely / 1000 : row.likely;
}

const used = (row: OrderRow): number => row.used.reduce((sum, line: Line) => sum + line.quantity.likely, 0);

describe('laws of the list to buy and carry', () => {
  test('more floor never needs fewer packs, nor leaves an item out', () => {
    fc.assert(
      fc.property(ask, side, (small, more) => {
        const after = new Map(rowsOf(room({ ...small, width: small.width + more })).map((row) => [row.item.item, row]));
        const before = rowsOf(room(small));
        expect(before.length).toBeGreaterThan(2);
        for (const row of before) {
          const large = after.get(row.item.item)?.order.quantity;
          for (const which of CASES) {
            expect(large?.[which] ?? 0, `${row.item.item} ${which}`).toBeGreaterThanOrEqual(row.order.quantity[which]);
          }
        }
      }),
      RUNS,
    );
  });

  test('packs hold what is used; left over is less than one pack of each kind and the spare ones', () => {
    fc.assert(
      fc.property(ask, (of) => {
        for (const row of rowsOf(room(of))) {
          const { item, order, left, kinds, spare } = row;
          const pack = packOf(row);
          for (const which of CASES) expect(Number.isInteger(order.quantity[which]), order.key).toBe(true);
          expect(order.quantity.likely * pack, order.key).toBeGreaterThanOrEqual(used(row) - 1e-6);
          // A tenth is carried of what is used, not of what is bought.
          const tenth = item.spare === 'tenth' ? used(row) / 10 : 0;
          const most = (Math.max(1, kinds.length) + spare) * pack + tenth;
          expect(left.quantity.likely, left.key).toBeLessThan(most + 1e-6);
          expect(left.quantity.likely, left.key).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });

  test('kinds and spare ones make the item, in each case', () => {
    fc.assert(
      fc.property(ask, (of) => {
        for (const { kinds, order, spare } of rowsOf(room(of))) {
          if (kinds.length === 0) continue;
          for (const which of CASES) {
            const packs = kinds.reduce((sum, each) => sum + each.packs.quantity[which], 0);
            expect(packs + spare, order.key).toBe(order.quantity[which]);
          }
        }
      }),
      RUNS,
    );
  });
});
