import { describe, expect, it } from 'vitest';
import type { FloorMeasure, FloorShape, ZoneMeasure } from '../../src/geometry/floorShape.ts';
import { LAP, NET, STRIP, TIGHT } from '../../src/geometry/ledger/cells.ts';
import { column, floorOf, machine, rectangle, slab, zoneNamed } from '../support/floors.ts';
import { diceOf } from './dice.ts';
import { freshMemory, measured, outlined } from './engine.ts';
import { type Parts, brokenLaws, difference, partsFault, partsOfFloor, sum } from './laws.ts';
import { sampledFaults } from './sampler.ts';
import { SAME_SHARE, SUM_SHARE } from './tolerances.ts';
import { loadJury, oracleVerdict, plainOf } from './oracleVotes.ts';
import { slowAreas } from './slowAreas.ts';
import { outlineFaults, outsideFaults, slowFaults } from './votes.ts';

/* A check that finds nothing must prove that it looks: a right answer is made wrong in one place, and must be told. */
const SHAPE: FloorShape = floorOf([slab(rectangle(0, 0, 14_000, 9_000))], machine(250, 75, 25), {
  solids: [column('b1', 3_000, 3_000, 600), column('b2', 9_000, 6_000, 400)],
  zones: [{ id: 'z1', ring: rectangle(-500, -500, 7_000, 7_000), machine: 'm' }],
  findings: [{ id: 'f1', ring: rectangle(1_000, 1_000, 4_000, 4_000) }],
  lines: [
    {
      id: 'c1',
      path: [
        [500, 500],
        [12_000, 8_000],
      ],
    },
  ],
});
const RIGHT = outlined(SHAPE);

/** The right answer with one number of the first zone changed. */
function withZone(change: (zone: ZoneMeasure) => Partial<ZoneMeasure>): FloorMeasure {
  return { ...RIGHT, zones: RIGHT.zones.map((zone) => (zone.id === 'z1' ? { ...zone, ...change(zone) } : zone)) };
}

const jury = await loadJury();

describe('the right answer', () => {
  it('keeps every law and agrees with every other way', () => {
    expect(brokenLaws(RIGHT, SHAPE)).toEqual([]);
    expect(outsideFaults(SHAPE, RIGHT, diceOf('planted', 1), jury).broken).toEqual([]);
  });
});

describe('the same floor drawn otherwise is red', () => {
  const numbers = measured(SHAPE);
  it('when a part is off by twice a thousand millionth of the floor', () => {
    expect(difference(numbers, numbers, SAME_SHARE)).toBeNull();
    for (const part of ['netM2', 'fieldM2', 'stripM2', 'tightM2'] as const) {
      const off = withZone((zone) => ({ [part]: zone[part] + 2 * SAME_SHARE * numbers.netM2 }));
      expect(difference(numbers, off, SAME_SHARE), part).not.toBeNull();
    }
  });
});

describe('the partition law is red', () => {
  const parts = partsOfFloor(RIGHT);
  const slackM2 = SUM_SHARE * parts.netM2;
  it('when one tight piece is dropped from the sum', () => {
    expect(partsFault(parts, slackM2)).toBeNull();
    const least = Math.min(...RIGHT.zones.flatMap((zone) => zone.tight.map((piece) => piece.areaM2)));
    expect(least).toBeGreaterThan(0);
    expect(partsFault({ ...parts, tightM2: parts.tightM2 - least }, least / 2)).not.toBeNull();
  });
  it('when one cell of one tile is dropped from the sum, however small', () => {
    const memory = freshMemory();
    measured(SHAPE, memory);
    const cells = memory.state?.grid.tiles.flatMap((tile) => tile.cells) ?? [];
    const summed = (list: typeof cells): Parts => {
      const m2 = (isIt: (part: number) => boolean): number =>
        sum(list, ({ part, areaMm2 }) => (isIt(part) ? areaMm2 / 1e6 : 0));
      return {
        netM2: m2((part) => part === NET),
        fieldM2: m2((part) => part < STRIP),
        stripM2: m2((part) => part === STRIP || part === LAP),
        tightM2: m2((part) => part === TIGHT),
      };
    };
    expect(partsFault(summed(cells), slackM2)).toBeNull();
    const tight = cells.filter(({ part }) => part === TIGHT);
    expect(tight.length).toBeGreaterThan(3);
    for (const dropped of cells) {
      const rest = cells.filter((cell) => cell !== dropped);
      expect(partsFault(summed(rest), slackM2), `${dropped.areaMm2} mm2 of part ${dropped.part}`).not.toBeNull();
    }
  });
  it('when a part is off by twice the slack, is no number or is negative', () => {
    expect(partsFault({ ...parts, stripM2: parts.stripM2 + 2 * slackM2 }, slackM2)).not.toBeNull();
    expect(partsFault({ ...parts, fieldM2: Number.NaN }, slackM2)).not.toBeNull();
    expect(partsFault({ netM2: 1, fieldM2: 1 + 1e-13, stripM2: 0, tightM2: -1e-13 }, slackM2)).not.toBeNull();
  });
});

describe('each law of one answer is red', () => {
  const planted: Readonly<Record<string, FloorMeasure>> = {
    finite: withZone(() => ({ faces: { wall: Number.NaN, obstruction: 0, drop: 0, stop: 0, hidden: 0 } })),
    notNegative: withZone((zone) => ({ lengthM: { ...zone.lengthM, c1: -1 } })),
    faultsNameRecords: { ...RIGHT, faults: [{ record: 'nobody', code: 'noArea', at: null }] },
    nothingFailed: { ...RIGHT, faults: [{ record: 'slab', code: 'clipFailed', at: null }] },
    everyZoneAnswered: { ...RIGHT, zones: RIGHT.zones.slice(1) },
    partition: withZone((zone) => ({ stripM2: zone.stripM2 * 0.99 })),
    zonesAndRest: { ...RIGHT, netM2: RIGHT.netM2 * 1.001 },
    grossLessDeducted: { ...RIGHT, deductedM2: { ...RIGHT.deductedM2, b1: 0 } },
    smallerThanWhole: withZone((zone) => ({ cutOffM2: zone.tightM2 + 1 })),
    splitsAddUp: withZone((zone) => ({
      lineParts: { c1: { fieldM: (zone.lengthM['c1'] ?? 0) / 2, stripM: 0, tightM: 0 } },
    })),
  };
  it.each(Object.entries(planted))('%s', (name, wrong) => {
    expect(brokenLaws(wrong, SHAPE).map(({ law }) => law)).toContain(name);
  });
});

describe('two answers for one floor are told apart', () => {
  it.each([
    ['field', withZone((zone) => ({ fieldM2: zone.fieldM2 + 0.1 }))],
    ['cut off', withZone((zone) => ({ cutOffM2: zone.cutOffM2 + 0.1 }))],
    ['a line', withZone(() => ({ lengthM: {} }))],
    ['a finding', withZone(() => ({ findingM2: {} }))],
    ['faces', withZone((zone) => ({ faces: { ...zone.faces, wall: zone.faces.wall - 0.1 } }))],
  ])('%s', (_name, wrong) => {
    expect(difference(RIGHT, wrong, SAME_SHARE)).not.toBeNull();
  });
});

describe('the other ways are red', () => {
  it('the trapezoids, for net, a finding and a line', () => {
    const wrong = withZone((zone) => ({ netM2: zone.netM2 * 1.01, findingM2: { f1: 1 }, lengthM: { c1: 1 } }));
    const told = slowFaults(slowAreas(SHAPE, []), wrong);
    expect(told.map((fault) => /net|finding|line/u.exec(fault)?.[0])).toEqual(['net', 'finding', 'line']);
  });
  it('the outlines, for a part that is another size than told', () => {
    expect(outlineFaults(RIGHT, RIGHT)).toEqual([]);
    expect(
      outlineFaults(
        RIGHT,
        withZone((zone) => ({ stripM2: zone.stripM2 + 0.1 })),
      ),
    ).toHaveLength(1);
  });
  it('the oracles, who agree, for a pit that only they see', () => {
    const pit = { ...SHAPE, solids: [column('pit', 8_000, 1_000, 4_000)] };
    const others = jury.quick.map((oracle) => ({ ...oracle, answer: () => oracle.answer(plainOf(pit, 0)) }));
    expect(oracleVerdict(SHAPE, [], jury)).toEqual({ faults: [], disagreements: 0 });
    expect(oracleVerdict(SHAPE, [], { quick: others, careful: others, finest: others }).faults[0]).toMatch(/net/u);
  });
  const points = (wrong: FloorMeasure): string[] => sampledFaults(SHAPE, wrong, diceOf('planted', 2), 400);
  it('the points, for strip told as field, field told as tight, and floor told as none', () => {
    const zone = zoneNamed(RIGHT, 'z1');
    expect(points(withZone(() => ({ field: [...zone.field, ...zone.strip], strip: [] })))).not.toEqual([]);
    const asTight = { kind: 'gap', areaM2: 1, region: zone.field, at: [0, 0], zone: 'z1', blockedBy: null } as const;
    expect(points(withZone(() => ({ field: [], tight: [...zone.tight, asTight] })))).not.toEqual([]);
    expect(points(withZone(() => ({ strip: [] })))).not.toEqual([]);
  });
});
