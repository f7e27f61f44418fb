import { describe, expect, test } from 'vitest';
import { orderedItem, ORDERED } from '../../../src/takeoff/orders.ts';
import { orderTable, toppingRows } from '../../../src/takeoff/orderTable.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import { bookRow } from '../../../src/takeoff/rates/book.ts';
import { consumables } from '../../../src/takeoff/rates/consumables.ts';
import { rateRecordId } from '../../../src/takeoff/rates/defaults.ts';
import { rateBook } from '../../../src/takeoff/rates/rateBook.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { itemWords, orderGroupWords, orderTitleOf } from '../../../src/words/orderWords.ts';
import { lineTitleOf } from '../../../src/words/takeoffWords.ts';
import { everyUse } from '../../support/everyUse.ts';
import {
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  recipeCells,
  rectangle,
  restCells,
  set,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const all = takeoff(everyUse(), FLOOR);

function of(lines: readonly Line[], code: string): Line {
  const found = lines.find((line) => line.code === code);
  if (!found) throw new Error(`no line ${code}`);
  return found;
}

describe('the table of what is bought and carried', () => {
  test('names each item once, in words, with a pack that the book knows', () => {
    expect(new Set(ORDERED.map(({ item }) => item)).size).toBe(ORDERED.length);
    for (const row of ORDERED) {
      expect(itemWords[row.item], row.item).toBeDefined();
      expect(orderGroupWords[row.group]).not.toBe('');
      expect(orderedItem(row.code)).toBe(row);
      expect(row.pack === null ? row.packUnit === row.unit : bookRow(row.pack) !== null, row.item).toBe(true);
    }
    expect(orderedItem('dustMass')).toBeNull();
  });

  test('has a sample price for each that costs something, and only water costs nothing', () => {
    const book = rateBook(docOf(jobCells()));
    const priced = ORDERED.flatMap(({ priceCode }) => priceCode ?? []);
    expect(priced.filter((code) => book.price(code) === null)).toEqual([]);
    expect(ORDERED.filter(({ priceCode }) => priceCode === null).map(({ item }) => item)).toEqual(['water']);
  });
});

describe('a hall on which everything is used up', () => {
  const { lines } = all;

  test('takes every rate of the table of consumables', () => {
    const from = new Set(lines.flatMap(({ working }) => working.terms.map((term) => term.from)));
    expect(consumables.filter(({ code }) => !from.has(rateRecordId(code))).map(({ code }) => code)).toEqual([]);
  });

  test('orders every item, in whole packs that are never fewer than what is used', () => {
    for (const row of orderTable(all).flatMap((group) => group.rows)) {
      const { item, order, left, used } = row;
      const pack = item.pack === null ? 1 : inUnit(item.pack, item.unit);
      const likely = used.reduce((sum, line) => sum + line.quantity.likely, 0);
      for (const value of Object.values(order.quantity)) expect(Number.isInteger(value), order.key).toBe(true);
      expect(order.quantity.likely * pack, order.key).toBeGreaterThanOrEqual(likely - 1e-6);
      expect(left.quantity.likely, left.key).toBeCloseTo(order.quantity.likely * pack - likely, 6);
    }
    expect(new Set(orderTable(all).flatMap((group) => group.rows.map(({ item }) => item.item))).size).toBe(
      ORDERED.length,
    );
  });

  test('says each line of it in words of its own', () => {
    const codes = new Set(
      lines.filter(({ trade }) => trade === 'material' || trade === 'dust').map(({ code }) => code),
    );
    for (const code of codes)
      expect(
        lineTitleOf(code, (kind) => kind),
        code,
      ).not.toBe(code);
    for (const { code } of ORDERED) expect(orderTitleOf(code), code).not.toBeNull();
  });

  test('all lines that use one item are in its unit', () => {
    for (const { usedBy, unit } of ORDERED) {
      for (const line of lines.filter(({ code }) => usedBy.includes(code))) expect(line.unit, line.key).toBe(unit);
    }
  });
});

/** What one pack holds, in the unit of the item: cartridges are printed in mL. */
function inUnit(code: string, unit: string): number {
  const row = bookRow(code);
  if (!row) throw new Error(code);
  return row.unit === 'mL' && unit === 'L' ? row.likely / 1000 : row.likely;
}

describe('spare ones (common practice, no source)', () => {
  test('one set for each machine, one of a tool that breaks, a tenth of shot, none of what any shop has', () => {
    const { lines } = takeoff(richJob(), FLOOR);
    const spare = (code: string) => of(lines, code).working.terms.map(({ name, value }) => `${name} ${value.likely}`);
    expect(spare('order.diamondSet')).toContain('spare for each machine 1');
    expect(spare('order.cup')).toContain('spare 1');
    expect(spare('orderPacks.shot')).toContain('spare, of what is used 10');
    expect(spare('order.dustBag').some((term) => term.includes('spare'))).toBe(false);
  });

  test('a set of another grit or bond is a set of its own, and one of the same is not', () => {
    const job = (second: string, hardness: 'hard' | 'medium') =>
      docOf(
        jobCells(),
        slabCells(rectangle(6_000, 12_000)),
        recipeCells('a', { abrasive: 'd16', times: 1 }),
        recipeCells('b', { abrasive: second, times: 1 }),
        zoneCells('zone:1', rectangle(6_000, 6_000), { recipe: 'recipe:a' }),
        restCells({ recipe: 'recipe:b', hardness }),
      );
    const kinds = (second: string, hardness: 'hard' | 'medium' = 'medium') =>
      takeoff(job(second, hardness), FLOOR).lines.filter(({ code }) => code === 'orderPacks.diamondSet').length;
    expect(kinds('d16')).toBe(1);
    expect(kinds('d80')).toBe(2);
    expect(kinds('d16', 'hard')).toBe(2);
  });
});

describe('a held zone', () => {
  test('orders nothing and uses nothing', () => {
    const found = { result: 'found', on: '2030-01-01', by: 'Tester' } as const;
    const held = takeoff(withCells(richJob(), set('finding:F2', 'leadTest', found)), FLOOR);
    const orders = held.lines.filter(({ code }) => orderedItem(code) !== null);
    expect(orders.length).toBeGreaterThan(5);
    for (const { key, working } of orders) {
      expect(
        working.terms.some(({ name, from }) => `${name} ${from}`.includes('zone:hall')),
        key,
      ).toBe(false);
    }
  });
});

describe('what the layer of the topping needs', () => {
  const doc = docOf(jobCells(), slabCells(rectangle(10_000, 10_000)));
  const laid = (system: string, thicknessMm: number, csp: number) =>
    toppingRows(
      takeoff(withCells(doc, restCells({ system: { kind: system, thicknessMm }, csp: { min: csp, max: csp } })), FLOOR),
    );

  test('a thin film over a rough profile is said to show through, a thick one is not', () => {
    expect(laid('thin_film', 0.2, 3)[0]?.thin).toBe(true);
    expect(laid('trowel_mortar', 5, 5)[0]?.thin).toBe(false);
  });

  test('nothing where it is not known what is laid, or it soaks in', () => {
    expect(toppingRows(takeoff(doc, FLOOR))).toEqual([]);
    expect(laid('penetrating_sealer', 0.05, 2)).toEqual([]);
  });
});

describe('chemicals that must not meet', () => {
  const job = (...kinds: readonly string[]) =>
    docOf(
      jobCells(),
      slabCells(rectangle(10_000, 10_000)),
      ...kinds.map((kind, i) =>
        findingCells(`finding:F${i}`, kind, rectangle(2_000, 2_000, [1_000, 1_000 + i * 3_000])),
      ),
    );
  const cautions = (...kinds: readonly string[]) =>
    orderTable(takeoff(job(...kinds), FLOOR)).find(({ group }) => group === 'chemicals')?.cautions ?? [];

  test('acid and hypochlorite on one list come first of all cautions', () => {
    expect(cautions('mould', 'efflorescence')[0]).toBe('acidAndHypochlorite');
    expect(cautions('mould')).not.toContain('acidAndHypochlorite');
    expect(cautions('mould')[0]).toBe('hypochlorite');
    expect(cautions('efflorescence')).not.toContain('hypochlorite');
  });
});
