import { describe, expect, test } from 'vitest';
import { takeoffCsv } from '../../../src/exchange/csv.ts';
import { takeoffText } from '../../../src/exchange/takeoffText.ts';
import type { Answer } from '../../../src/model/records/base.ts';
import type { Doc } from '../../../src/model/doc.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  rectangle,
  set,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const said = (answer: Answer['answer']): Answer => ({ answer, by: 'Tester', on: '2030-01-01' });
const clear = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;
const found = { result: 'found', on: '2030-01-01', by: 'Tester' } as const;

function hall(kind: string, job: Parameters<typeof jobCells>[0] = {}): Doc {
  return docOf(
    jobCells(job),
    slabCells(rectangle(10_000, 10_000)),
    zoneCells('zone:1', rectangle(5_000, 10_000)),
    findingCells('finding:F1', kind, rectangle(1_000, 1_000, [1_000, 1_000])),
    crackCells('crack:C1', [
      [6_000, 1_000],
      [6_000, 5_000],
    ]),
  );
}

const kinds = (doc: Doc): string[] =>
  takeoff(doc, FLOOR).holds.map((hold) => `${hold.kind} ${hold.zone} ${hold.reason}`);

describe('asbestos (29 CFR 1926.1101 (g)(8)(i)(I): flooring and mastic of 1980 and earlier count as asbestos)', () => {
  test('black mastic holds its whole zone until tested, whatever the year', () => {
    expect(kinds(hall('mastic_black', { builtBefore1981: said('no') }))).toEqual(['asbestos zone:1 finding']);
  });

  test.each(['adhesive', 'tile_sheet', 'ceramic', 'levelling'])('%s holds unless the building is later', (kind) => {
    expect(kinds(hall(kind))).toEqual([]);
    expect(kinds(hall(kind, { builtBefore1981: said('yes') }))).toEqual(['asbestos zone:1 finding']);
    expect(kinds(hall(kind, { builtBefore1981: said('unknown') }))).toEqual(['asbestos zone:1 finding']);
  });

  test('a clear result lifts it, a result of "found" does not', () => {
    const doc = hall('mastic_black');
    expect(kinds(withCells(doc, set('finding:F1', 'asbestosTest', clear)))).toEqual([]);
    expect(kinds(withCells(doc, set('finding:F1', 'asbestosTest', found)))).toEqual(['asbestos zone:1 finding']);
  });

  test('an old building with a covering that nobody has drawn holds every zone', () => {
    const doc = withCells(
      hall('oil_light', { builtBefore1981: said('yes'), coatingOrTile: said('unknown') }),
      set('crack:C1', 'gone', true),
    );
    expect(kinds(doc)).toEqual(['asbestos zone:1 building', 'asbestos rest building']);
    expect(kinds(withCells(doc, set('job:test', 'coatingOrTile', said('no'))))).toEqual([]);
  });
});

describe('lead (29 CFR 1926.62: no year; test any paint)', () => {
  test.each(['paint', 'elastomer', 'tyre_lifted', 'tape'])('%s holds its zone until it is tested', (kind) => {
    expect(kinds(hall(kind))).toEqual(['lead zone:1 finding']);
    expect(kinds(withCells(hall(kind), set('finding:F1', 'leadTest', clear)))).toEqual([]);
  });
});

describe('what lies in the slab (common practice, no source)', () => {
  const doc = hall('oil_light', { inSlab: said('unknown') });

  test('not located: cracks keep their metres and lose chase, fill and filler', () => {
    const { lines, holds, notAnOffer } = takeoff(doc, FLOOR);
    expect(holds).toEqual([{ kind: 'inSlab', zone: null, records: ['crack:C1'], reason: 'cutting' }]);
    expect(lines.find((line) => line.code === 'crack.static.ordinary')).toMatchObject({ held: 'inSlab' });
    expect(lines.filter((line) => /[cC]rack[A-Z]|bladeWear/.test(line.code))).toEqual([]);
    expect(notAnOffer).toEqual(['inSlab', 'hold.inSlab']);
  });

  test('located and cleared, or nothing there: they are worked', () => {
    const located = withCells(doc, set('job:test', 'inSlab', said('yes')), set('job:test', 'inSlabLocated', clear));
    for (const each of [located, hall('oil_light')]) {
      const codes = takeoff(each, FLOOR).lines.map((line) => line.code);
      expect(codes).toContain('hours.crackChase');
      expect(codes).toContain('order.crackFiller');
    }
  });
});

describe('not an offer', () => {
  test('no answer and "don\'t know" both count as open', () => {
    const open = docOf(jobCells(), slabCells(rectangle(5_000, 5_000)), set('job:test', 'gasAppliance', undefined));
    expect(takeoff(open, FLOOR).notAnOffer).toEqual(['gasAppliance']);
    expect(takeoff(withCells(open, set('job:test', 'gasAppliance', said('unknown'))), FLOOR).notAnOffer).toEqual([
      'gasAppliance',
    ]);
    const yes = takeoff(withCells(open, set('job:test', 'gasAppliance', said('yes'))), FLOOR);
    expect(yes.notAnOffer).toEqual([]);
    expect(yes.notices).toContain('gasAppliance');
  });

  test('a covering that is said to be there and is not drawn', () => {
    const doc = docOf(jobCells({ coatingOrTile: said('yes') }), slabCells(rectangle(5_000, 5_000)));
    expect(takeoff(doc, FLOOR).notAnOffer).toEqual(['coveringNotDrawn']);
  });
});

describe('no rate, hour or price of a held zone exists anywhere', () => {
  const held = withCells(richJob(), set('finding:F2', 'leadTest', found));
  const result = takeoff(held, FLOOR);
  const OF_WORK = ['hours', 'material', 'dust', 'money'];

  test('its lines are quantities, and none of them names a rate', () => {
    const lines = result.lines.filter((line) => line.zone === 'zone:hall');
    expect(lines.length).toBeGreaterThan(10);
    for (const line of lines) {
      expect(OF_WORK, line.key).not.toContain(line.trade);
      expect(line.held, line.key).toBe('lead');
      for (const term of line.working.terms) expect(['m2', 'm', 'mm', 'number'], term.name).toContain(term.unit);
    }
  });

  test('the bytes of JSON hold no work, hour or share of it, not even inside another line', () => {
    const free = takeoff(richJob(), FLOOR).lines;
    const ofHall = free.filter((line) => line.zone === 'zone:hall' && OF_WORK.includes(line.trade));
    // A film 1 mm thick takes as many litres as its zone has square metres: what is measured may be said.
    const elsewhere = JSON.stringify(free.filter((line) => line.zone !== null && !ofHall.includes(line)));
    const figures = ofHall
      .map((line) => String(line.quantity.likely))
      .filter((figure) => figure.length > 8 && !elsewhere.includes(figure));
    expect(figures.length).toBeGreaterThan(12);
    const [bytes, freeBytes] = [JSON.stringify(result.lines), JSON.stringify(free)];
    for (const wanted of [...ofHall.map((line) => `"${line.key}"`), ...figures]) {
      // The same search finds it in the job that is not held: it can fail.
      expect(freeBytes.includes(wanted), wanted).toBe(true);
      expect(bytes.includes(wanted), wanted).toBe(false);
    }
  });

  test('CSV and text say "held" where hours and price would stand', () => {
    const csv = takeoffCsv(held, result, 'USD');
    const price = csv.split('\r\n').find((row) => row.startsWith('Money,Price,')) ?? '';
    const free = takeoffCsv(richJob(), takeoff(richJob(), FLOOR), 'USD');
    expect(price).toContain('held');
    expect(free.split('\r\n').find((row) => row.startsWith('Money,Price,'))).not.toContain('held');
    expect(takeoffText(held, result, 'USD')).toContain('held');
  });

  test('with every zone held there is no set-up, no day and no price at all', () => {
    const all = docOf(
      jobCells(),
      slabCells(rectangle(5_000, 5_000)),
      findingCells('finding:F1', 'mastic_black', rectangle(1_000, 1_000, [1_000, 1_000])),
    );
    const { lines } = takeoff(all, FLOOR);
    expect(lines.some((line) => OF_WORK.includes(line.trade))).toBe(false);
  });
});

test('a crew copy, which has no currency, has hours and no money', () => {
  const crew = withCells(richJob(), set('job:test', 'currency', undefined));
  const trades = new Set(takeoff(crew, FLOOR).lines.map((line) => line.trade));
  expect(trades.has('hours')).toBe(true);
  expect(trades.has('money')).toBe(false);
});
