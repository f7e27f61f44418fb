import { describe, expect, test } from 'vitest';
import type { Doc } from '../../../src/model/doc.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { faultWords, holdWords, lineTitleOf, notAnOfferWords } from '../../../src/words/takeoffWords.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const room = docOf(jobCells(), slabCells(rectangle(10_000, 10_000)));
const faults = (doc: Doc): string[] => takeoff(doc, FLOOR).faults.map(({ record: id, code }) => `${id} ${code}`);
const ok = { recipe: 'recipe:a', csp: { min: 2, max: 3 } } as const;

describe('faults', () => {
  test('a sound room has none', () => {
    expect(faults(withCells(room, recipeCells('a'), zoneCells('zone:1', rectangle(5_000, 5_000), ok)))).toEqual([]);
  });

  test.each([
    ['zone outside', zoneCells('zone:1', rectangle(1_000, 1_000, [20_000, 0]), ok), 'zone:1 zoneOutsideSlab'],
    ['zone without a profile', zoneCells('zone:1', rectangle(1_000, 1_000)), 'zone:1 profileMissing'],
    ['zone without a recipe', zoneCells('zone:1', rectangle(2_000, 2_000), { csp: ok.csp }), 'zone:1 recipeMissing'],
    [
      'profile that a grinder does not reach',
      zoneCells('zone:1', rectangle(2_000, 2_000), { ...ok, csp: { min: 5, max: 6 } }),
      'zone:1 profileNotReached',
    ],
    [
      'finding outside',
      findingCells('finding:F1', 'dirt', rectangle(500, 500, [30_000, 0])),
      'finding:F1 findingOutsideSlab',
    ],
    [
      'crack outside',
      crackCells('crack:C1', [
        [20_000, 0],
        [21_000, 0],
      ]),
      'crack:C1 crackOutsideSlab',
    ],
    [
      'obstruction outside',
      record('obstruction:b', {
        floor: FLOOR,
        tag: 'B1',
        kind: 'column',
        shape: { form: 'circle', at: [20_000, 0], diameterMm: 400 },
        under: 'none',
      }),
      'obstruction:b obstructionOutsideSlab',
    ],
    [
      'isolation joint filled',
      record('joint:J1', {
        floor: FLOOR,
        tag: 'J1',
        kind: 'isolation',
        treat: 'filled',
        path: [
          [1_000, 1_000],
          [2_000, 1_000],
        ],
      }),
      'joint:J1 isolationFilled',
    ],
    [
      'slab that crosses itself',
      slabCells(
        [
          [20_000, 0],
          [25_000, 5_000],
          [25_000, 0],
          [20_000, 3_000],
        ],
        [],
        'slab:b',
      ),
      'slab:b slabCrossesItself',
    ],
  ])('%s', (_, cells, fault) => {
    expect(faults(withCells(room, recipeCells('a'), cells))).toContain(fault);
  });

  test('two zones that overlap are told apart by order and said once', () => {
    const doc = withCells(
      room,
      recipeCells('a'),
      zoneCells('zone:1', rectangle(5_000, 5_000), { ...ok, order: '1' }),
      zoneCells('zone:2', rectangle(3_000, 3_000), { ...ok, order: '2' }),
    );
    expect(faults(doc)).toEqual(['zone:1 zonesOverlap']);
  });

  test('a broken slab never breaks the rest of the floor', () => {
    const bow = slabCells(
      [
        [20_000, 0],
        [25_000, 5_000],
        [25_000, 0],
        [20_000, 3_000],
      ],
      [],
      'slab:b',
    );
    expect(takeoff(withCells(room, bow), FLOOR).measure.netM2).toBeCloseTo(100, 6);
  });

  test('a fix that is offered undoes the fault', () => {
    const doc = withCells(
      room,
      record('joint:J1', {
        floor: FLOOR,
        tag: 'J1',
        kind: 'isolation',
        treat: 'filled',
        path: [
          [1_000, 1_000],
          [2_000, 1_000],
        ],
      }),
    );
    const result = takeoff(doc, FLOOR);
    expect(result.faults[0]?.fix).toEqual({
      name: 'setField',
      args: { id: 'joint:J1', slot: 'treat', value: 'carried' },
    });
    expect(result.lines.some((line) => line.code.startsWith('jointFiller'))).toBe(false);
  });
});

describe('words', () => {
  test('every code of a full job has words of its own', () => {
    const { lines, faults: all, holds, notAnOffer } = takeoff(richJob(), FLOOR);
    for (const { code } of lines)
      expect(
        lineTitleOf(code, (kind) => `kind ${kind}`),
        code,
      ).not.toBe(code);
    for (const { code } of all) expect(faultWords[code], code).toBeDefined();
    for (const { kind, reason } of holds) expect(holdWords[`${kind}.${reason}`]).toBeDefined();
    for (const code of notAnOffer) expect(notAnOfferWords[code], code).toBeDefined();
  });
});
