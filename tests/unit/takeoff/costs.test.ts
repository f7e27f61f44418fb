import { describe, expect, test } from 'vitest';
import type { Json } from '../../../src/model/cell.ts';
import type { Doc } from '../../../src/model/doc.ts';
import type { Pricing } from '../../../src/model/records/pricing.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import { ORDERED } from '../../../src/takeoff/orders.ts';
import { defaultMoneyCells } from '../../../src/takeoff/rates/defaults.ts';
import { samplePrices } from '../../../src/takeoff/rates/samplePrices.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  restCells,
  set,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';

/* Costs worked out by hand from invented prices; the structure is common practice, no source. Amounts in cents. */
const room = docOf(
  jobCells(),
  slabCells(rectangle(12_000, 8_000)),
  recipeCells('large', { method: 'grinder_large' }),
  restCells({ recipe: 'recipe:large' }),
  defaultMoneyCells(),
);

function priced(doc: Doc, pricing: Partial<Pricing> = {}): readonly Line[] {
  const cells = Object.entries(pricing).flatMap(([slot, value]) => set('pricing:job', slot, value as Json));
  return takeoff(withCells(doc, cells), FLOOR).lines;
}

function likely(lines: readonly Line[], key: string): number | null {
  return lines.find((line) => line.key === `${key}|floor` || line.key === key)?.quantity.likely ?? null;
}

const days = likely(priced(room), 'days') ?? Number.NaN;
/** 32 an hour and 30 % burden. */
const HOUR = 3_200 * 1.3;

describe('equipment', () => {
  test('on hire is paid for its least days, once for its delivery; our own by its days', () => {
    const lines = priced(room, { leastHireDays: 9, hired: ['grinder_large'] });
    expect(days).toBeLessThan(9);
    expect(likely(lines, 'money.equipment|floor|grinder_large')).toBe(9 * 32_000);
    expect(likely(lines, 'money.equipment|floor|hand_grinder')).toBe(days * 3_500);
    expect(likely(lines, 'money.delivery')).toBe(6_000);
    expect(likely(priced(room, { hired: [] }), 'money.delivery')).toBeNull();
  });

  test('a generator stands there all days, with its fuel', () => {
    expect(likely(priced(room, { power: 'generator' }), 'money.power')).toBe(days * (11_000 + 4_000));
    expect(likely(priced(room), 'money.power')).toBeNull();
  });
});

describe('travel', () => {
  test('home each night: the whole crew, every day and every return', () => {
    const lines = priced(room, { travelHours: 1.5, travelKm: 40, vehicles: 2, returnVisits: 1 });
    expect(likely(lines, 'money.travel')).toBe(Math.round((days + 1) * 1.5 * 2 * HOUR));
    expect(likely(lines, 'money.driving')).toBe((days + 1) * 2 * 40 * 70);
    expect(likely(lines, 'money.lodging')).toBeNull();
  });

  test('lodging: one way a visit, and a night between two days', () => {
    const lines = priced(room, { stay: 'lodging', travelHours: 4 });
    expect(likely(lines, 'money.travel')).toBe(4 * 2 * HOUR);
    expect(likely(lines, 'money.lodging')).toBe((days - 1) * 2 * 11_000);
  });

  test('by the mile: 40 km are 24.85 miles of 1.609344 km', () => {
    const byMile = withCells(room, set('price:distance', 'unit', 'per mile'));
    expect(likely(priced(byMile), 'money.driving')).toBe(Math.round((days * 40 * 70) / 1.609344));
  });

  test('each phase and each return after the first visit is a re-mobilisation', () => {
    const phased = withCells(
      room,
      record('phase:a', { name: 'Night 1', floor: FLOOR }),
      zoneCells('zone:a', rectangle(6_000, 8_000), { phase: 'phase:a', recipe: 'recipe:large' }),
    );
    expect(likely(priced(room), 'money.remobilisation')).toBeNull();
    expect(likely(priced(phased), 'money.mobilisation')).toBe(15_000);
    expect(likely(priced(phased, { returnVisits: 2 }), 'money.remobilisation')).toBe(3 * 15_000);
    // A phase of another floor is no visit to this one: its hours know none either.
    const elsewhere = withCells(phased, set('phase:a', 'floor', 'floor:other'));
    expect(likely(priced(elsewhere), 'money.remobilisation')).toBeNull();
  });
});

describe('waste', () => {
  test('haul by the trip, tip fee by the tonne of dust, tests by number', () => {
    const lines = priced(room, { haulTrips: 2, wasteTests: 3 });
    const dustKg = lines
      .filter(({ code }) => code === 'dustMass' || code === 'rubbleMass')
      .reduce((sum, line) => sum + line.quantity.likely, 0);
    expect(likely(lines, 'money.haul')).toBe(16_000);
    expect(likely(lines, 'money.tip')).toBe(Math.round((dustKg / 1_000) * 12_000));
    expect(likely(lines, 'money.wasteTests')).toBe(27_000);
  });
});

describe('what is done beside the floor', () => {
  const zone = zoneCells('zone:a', rectangle(12_000, 8_000), {
    recipe: 'recipe:large',
    tests: ['rh', 'pull'],
    mockUpM2: 4,
    maskWalls: true,
  });
  const lines = priced(withCells(room, zone));
  const count = (code: string): number => lines.find((line) => line.code === code)?.quantity.likely ?? Number.NaN;

  test('material of tests and mock-up by what is counted; masking once, by the roll of film', () => {
    expect(likely(lines, 'money.tests')).toBe(count('tests.rh') * 4_500 + count('tests.pull') * 1_500);
    expect(likely(lines, 'money.mockUp')).toBe(4 * 1_500);
    expect(likely(lines, 'money.goods.maskFilm')).toBe(count('order.maskFilm') * 1_200);
    expect(
      lines.filter(
        ({ code, working }) =>
          code.startsWith('money.') && working.terms.some(({ from }) => from?.startsWith('masked|')),
      ),
    ).toEqual([]);
  });
});

describe('labour', () => {
  test('the night premium is on the hours of zones that are worked at night, and on no other', () => {
    const night = withCells(
      room,
      zoneCells('zone:a', rectangle(6_000, 8_000), { recipe: 'recipe:large', time: 'night' }),
    );
    const lines = priced(night, { nightPremiumPct: 20 });
    const hours = lines.find((line) => line.code === 'hours.zonePerson' && line.zone === 'zone:a')?.quantity.likely;
    expect(likely(lines, 'money.night')).toBe(Math.round((hours ?? Number.NaN) * HOUR * 0.2));
    expect(likely(priced(room, { nightPremiumPct: 20 }), 'money.night')).toBeNull();
  });
});

describe('tooling and goods', () => {
  const cracked = withCells(
    room,
    crackCells('crack:C1', [
      [1_000, 1_000],
      [9_000, 1_000],
    ]),
  );
  const lines = priced(cracked);

  test('tooling by what is worn off, single-use goods by whole packs', () => {
    const wear = lines
      .filter(({ code }) => code === 'diamondWear')
      .reduce((sum, line) => sum + line.quantity.likely, 0);
    expect(likely(lines, 'money.goods.diamondSet')).toBe(Math.round(wear * 18_000));
    const cartridges = likely(lines, 'order.crackFiller') ?? Number.NaN;
    expect(Number.isInteger(cartridges)).toBe(true);
    expect(likely(lines, 'money.goods.crackFiller')).toBe(cartridges * 2_400);
  });

  test('every item that may be ordered has a sample price to be replaced', () => {
    const codes = new Set(samplePrices.map(({ code }) => code));
    expect(codes.size).toBe(samplePrices.length);
    expect(ORDERED.filter(({ priceCode }) => priceCode !== null && !codes.has(priceCode))).toEqual([]);
  });
});

describe('price', () => {
  test('no less than the least charge', () => {
    const dear = withCells(room, set('price:leastCharge', 'amount', 9_000_000));
    expect(likely(priced(dear), 'money.price')).toBe(9_000_000);
  });

  test('overhead by the crew day stands in the place of the share, not beside it', () => {
    expect(likely(priced(room, { overheadBy: 'crewDay' }), 'money.overhead')).toBe(days * 12_000);
  });

  test('tax on the price: the total ends on the unit, and price and tax make it', () => {
    const lines = priced(room, { taxPct: 8.25, taxOn: 'total', roundUpTo: 500 });
    const total = likely(lines, 'money.priceWithTax') ?? Number.NaN;
    expect(total % 500).toBe(0);
    expect(likely(lines, 'money.price')).toBe(Math.round(total / 1.0825));
    expect((likely(lines, 'money.price') ?? 0) + (likely(lines, 'money.tax') ?? 0)).toBe(total);
  });

  test('tax on materials: on goods at cost alone', () => {
    const lines = priced(room, { taxPct: 10, taxOn: 'materials' });
    const goods = lines
      .filter(({ code }) => code.startsWith('money.goods.'))
      .reduce((sum, line) => sum + line.quantity.likely, 0);
    expect(likely(lines, 'money.tax')).toBe(Math.round(goods * 0.1));
  });

  test('a job of before, without the newer settings, is not charged for them', () => {
    const old = docOf(
      jobCells(),
      slabCells(rectangle(12_000, 8_000)),
      record('pricing:job', {
        overheadPct: 12,
        marginPct: 25,
        burdenPct: 30,
        contingencyPct: { measured: 5, photo: 10, unknown: 20 },
        certainty: 'measured',
        minimumCrewDays: 0.5,
        crew: 2,
        hoursADay: 8,
      }),
    );
    const codes = new Set(priced(old).map(({ code }) => code.split('.').slice(0, 2).join('.')));
    for (const code of ['travel', 'driving', 'mobilisation', 'haul', 'tip', 'delivery', 'night', 'tax', 'power']) {
      expect(codes.has(`money.${code}`), code).toBe(false);
    }
    expect(codes.has('money.labour')).toBe(true);
  });
});

describe('extras', () => {
  test('are in no sum', () => {
    const lines = priced(room);
    const used = new Set(lines.flatMap(({ working }) => working.terms.map(({ from }) => from)));
    const extras = lines.filter(({ code }) => code.startsWith('extra.'));
    expect(extras.length).toBeGreaterThan(4);
    expect(extras.filter(({ key }) => used.has(key))).toEqual([]);
  });

  test('waiting: the crew for an hour, through contingency, overhead and margin', () => {
    expect(likely(priced(room), 'extra.waitingHour')).toBe(Math.round((2 * HOUR * 1.05 * 1.12) / 0.75));
  });

  test('a metre of crack by hand: hours 1/18 + 1/60 + 1/25 + 1/35, 72 mL and 10 % of a 600 mL cartridge', () => {
    const direct = (1 / 18 + 1 / 60 + 1 / 25 + 1 / 35) * HOUR + ((6 * 12 * 1.1) / 600) * 2_400;
    expect(likely(priced(room), 'extra.crackMetre')).toBe(Math.round((direct * 1.05 * 1.12) / 0.75));
  });

  test('nothing that cuts or drills has a rate while what lies in the slab is not located', () => {
    const held = priced(withCells(room, set('job:test', 'inSlab', { answer: 'yes' })));
    expect(likely(held, 'extra.crackMetre')).toBeNull();
    expect(likely(held, 'extra.probe')).toBeNull();
    expect(likely(held, 'extra.waitingHour')).not.toBeNull();
  });
});
