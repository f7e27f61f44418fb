import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { world } from '../../../bench/worlds.ts';
import type { FaceKind, FloorShape, Point, Ring } from '../../../src/geometry/floorShape.ts';
import { column, floorOf, machine, rectangle, slab } from '../../support/floors.ts';
import { type Oracle, type OracleAnswers, beyondOracles } from '../../support/oracles/oracle.ts';
import { clipperTsOracle, clipperWasmOracle, geosOracle } from '../../support/oracles/oracles.ts';
import { anyFloor } from '../../support/randomFloors.ts';

const oracles: readonly Oracle[] = [await geosOracle(), await clipperWasmOracle(), clipperTsOracle()];

/** Of the net floor: what 256 segments a circle and a grid of 1e-5 mm leave. */
const CLOSE = 1e-7;

/** Head 300 mm, clearance 40 mm, no lap: the strip ends where the head begins. */
const [r, c] = [300, 40];
const plain = machine(r, c, 0);
const cusps = (corners: number): number => corners * (1 - Math.PI / 4) * r * r;
const roomBand = (width: number, depth: number): number => 2 * (width + depth) * c - 4 * c * c;

const square = rectangle(0, 0, 8000, 6000);
const gateRing: Ring = [
  [0, 0],
  [2500, 0],
  [5500, 0],
  [8000, 0],
  [8000, 6000],
  [0, 6000],
];
const gate = (kind: FaceKind): FloorShape =>
  floorOf([slab(gateRing, ['wall', kind, 'wall', 'wall', 'wall', 'wall'])], plain);

/** Two rooms of 3,925 mm and a doorway in the wall between them; entered in the left one. */
function behindDoor(widthMm: number): FloorShape {
  const body = rectangle(3925, 0, 150, 6000);
  const ring = rectangle(3925, 2000, 150, widthMm);
  return floorOf([slab(square)], plain, {
    walls: [{ id: 'w', body, gaps: [{ passage: { id: 'd', widthMm, heightMm: null }, ring }] }],
    zones: [{ id: 'far', ring: rectangle(4500, 0, 3500, 6000), machine: 'm' }],
    entrances: [{ id: 'e', at: [1000, 1000], widthMm: null, heightMm: null }],
  });
}

/** Closed forms in mm2; those of bands and cusps after Steiner's formula for parallel bodies. */
const closedForms: readonly (readonly [what: string, shape: FloorShape, net: number, band: number, raw: number])[] = [
  ['a room', floorOf([slab(square)], plain), 48e6, roomBand(8000, 6000), 48e6 - roomBand(8000, 6000) - cusps(4)],
  [
    'a column in a room',
    floorOf([slab(square)], plain, { solids: [column('b', 3000, 3000, 400)] }),
    48e6 - 160_000,
    roomBand(8000, 6000) + 1600 * c + Math.PI * c * c,
    48e6 - 160_000 - roomBand(8000, 6000) - 1600 * c - Math.PI * c * c - cusps(4),
  ],
  [
    'a gate beyond which the floor runs on',
    gate('run'),
    48e6,
    25_000 * c - 4 * c * c + (Math.PI * c * c) / 2,
    48e6 - 25_000 * c + 4 * c * c - (Math.PI * c * c) / 2 - cusps(4),
  ],
  ['a gate where work stops', gate('stop'), 48e6, roomBand(8000, 6000), 48e6 - roomBand(8000, 6000) - cusps(4)],
  ['a slab that runs on all round', floorOf([slab(square, ['run', 'run', 'run', 'run'])], plain), 48e6, 0, 48e6],
  [
    'two slabs with a hard edge between them, entered on one side',
    floorOf([slab(rectangle(0, 0, 4000, 6000)), slab(rectangle(4000, 0, 4000, 6000), undefined, 's2')], plain, {
      entrances: [{ id: 'e', at: [1000, 1000], widthMm: null, heightMm: null }],
    }),
    48e6,
    2 * roomBand(4000, 6000),
    24e6 - roomBand(4000, 6000) - cusps(4),
  ],
];

/** Five points of a circle, every second joined: it goes round its middle twice. */
const star: Ring = Array.from({ length: 5 }, (_, i): Point => {
  const angle = (i * 4 * Math.PI) / 5;
  return [5000 * Math.cos(angle), 5000 * Math.sin(angle)];
});
const starMm2 = 5 * 5000 * 5000 * ((3 - Math.sqrt(5)) / 2) * Math.sin(Math.PI / 5);

const bowTie: Ring = [
  [0, 0],
  [6000, 6000],
  [6000, 0],
  [0, 6000],
];

describe.each(oracles)('$name', (oracle) => {
  test.each(closedForms)('meets the closed form of %s', (_what, shape, net, band, raw) => {
    const answers = oracle.answer(shape);
    expect(Math.abs(answers.netM2 * 1e6 - net)).toBeLessThan(net * 1e-9);
    expect(Math.abs(answers.bandM2 * 1e6 - band)).toBeLessThan(net * CLOSE);
    expect(Math.abs(answers.rawFieldM2 * 1e6 - raw)).toBeLessThan(net * CLOSE);
    expect(Math.abs(answers.fieldM2 * 1e6 - raw)).toBeLessThan(net * CLOSE);
  });

  test.each([
    [680, true],
    [679, false],
  ])('gets through a doorway of %i mm: %s', (widthMm, passes) => {
    const far = oracle.answer(behindDoor(widthMm)).zones.far;
    expect(far?.netM2).toBeCloseTo(21, 6);
    expect(far?.rawFieldM2).toSatisfy((area: number) => (passes ? area > 20 : area === 0));
  });

  test.each([
    ['bow tie', bowTie, 18e6],
    ['star', star, starMm2],
  ])('fills a %s wherever it winds about', (_what, ring, net) => {
    expect(oracle.answer(floorOf([slab(ring)], plain)).netM2 * 1e6).toBeCloseTo(net, -1);
  });

  test.each<readonly [what: string, ring: Ring]>([
    ['no corner', []],
    ['one corner', [[0, 0]]],
    [
      'two corners',
      [
        [0, 0],
        [9000, 0],
      ],
    ],
    [
      'corners on one line',
      [
        [0, 0],
        [9000, 0],
        [5000, 0],
      ],
    ],
  ])('finds no floor in a ring of %s, and nothing to take from one', (_what, ring) => {
    expect(oracle.answer(floorOf([slab(ring)], plain)).netM2).toBe(0);
    const floor = floorOf([slab(square)], plain, { solids: [{ id: 'b', ring, solid: true }] });
    expect(oracle.answer(floor).bandM2 * 1e6).toBeCloseTo(roomBand(8000, 6000), 1);
  });

  test('gives zones and rest that add up to the floor', () => {
    const answers = oracle.answer(world('W1'));
    expectSum(answers);
  });
});

test('the three agree on random floors of one clearance', () => {
  const passed = { plans: 0 };
  fc.assert(
    fc.property(anyFloor, (floor) => {
      const [one] = floor.machines;
      if (!one) return;
      const shape = floorFor(floor);
      if (beyondOracles(shape)) return;
      passed.plans += 1;
      const [first, ...others] = oracles.map((oracle) => oracle.answer(shape));
      for (const other of others) expectSame(other, first as OracleAnswers);
    }),
    { numRuns: 30, seed: 7 },
  );
  expect(passed.plans).toBeGreaterThan(20);
});

/** One machine for every zone, as far from a column or a drop as from a wall. */
function floorFor(floor: FloorShape): FloorShape {
  const [given] = floor.machines;
  if (!given) return floor;
  const clear = given.clearanceMm.wall;
  const one = machine(given.headRadiusMm, clear, given.lapMm);
  return { ...floor, machines: [one], restMachine: 'm', zones: floor.zones.map((zone) => ({ ...zone, machine: 'm' })) };
}

function expectSame(one: OracleAnswers, other: OracleAnswers): void {
  const near = other.netM2 * 1e-6 + 1e-9;
  for (const part of ['netM2', 'rawFieldM2', 'bandM2', 'fieldM2'] as const) {
    expect(Math.abs(one[part] - other[part]), part).toBeLessThan(near);
    for (const [zone, areas] of Object.entries(one.zones)) {
      expect(Math.abs(areas[part] - (other.zones[zone]?.[part] ?? NaN)), `${part} in ${zone}`).toBeLessThan(near);
    }
  }
}

function expectSum(answers: OracleAnswers): void {
  for (const part of ['netM2', 'rawFieldM2', 'bandM2', 'fieldM2'] as const) {
    const sum = Object.values(answers.zones).reduce((total, zone) => total + zone[part], 0);
    expect(Math.abs(sum - answers[part])).toBeLessThan(answers.netM2 * 1e-9);
  }
}
