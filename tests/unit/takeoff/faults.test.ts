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
  set,
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

  describe('a door of 0.70 m, which the small grinder does not pass (methods.csv: at least 0.80 m)', () => {
    const wall = record('wall:w1', {
      floor: FLOOR,
      tag: 'W1',
      path: [
        [6_000, 0],
        [6_000, 10_000],
      ],
      thicknessMm: 200,
    });
    const door = record('opening:d1', { wall: 'wall:w1', tag: 'D1', atMm: 4_000, widthMm: 700, heightMm: 2_000 });
    const zones = [
      ...recipeCells('a'),
      ...zoneCells('zone:1', rectangle(6_000, 10_000), ok),
      ...zoneCells('zone:2', rectangle(4_000, 10_000, [6_000, 0]), ok),
    ];
    const wayIn = (id: `entrance:${string}`, x: number): ReturnType<typeof record> =>
      record(id, { floor: FLOOR, tag: 'M', at: [x, 0], widthMm: 3_000, heightMm: 3_000 });

    test('is said while floor lies behind it', () => {
      const doc = withCells(room, wall, door, zones, wayIn('entrance:m1', 2_000));
      expect(faults(doc)).toEqual(['opening:d1 gapTooNarrow']);
    });

    test('is not said where the zone behind has a machine that passes: the floor inside the wall is no place behind it', () => {
      const wider = set('opening:d1', 'widthMm', 900);
      const large = recipeCells('b', { method: 'grinder_large' });
      const doc = withCells(room, wall, door, zones, wider, large, set('zone:1', 'recipe', 'recipe:b'));
      const answer = takeoff(withCells(doc, wayIn('entrance:m1', 2_000)), FLOOR);
      expect(answer.faults.map(({ code }) => code)).toEqual([]);
    });
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
