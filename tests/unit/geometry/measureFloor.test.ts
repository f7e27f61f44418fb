import { describe, expect, it } from 'vitest';
import type { FloorShape } from '../../../src/geometry/floorShape.ts';
import { measureFloor } from '../../../src/geometry/measureFloor.ts';
import { measureMemory } from '../../../src/geometry/measureMemory.ts';
import { column, floorOf, machine, rectangle, slab, total, zoneNamed } from '../../support/floors.ts';

const HALL = slab(rectangle(0, 0, 10_000, 6_000));
const SMALL = machine(250, 50, 50);

describe('zones', () => {
  const zones: FloorShape['zones'] = [
    { id: 'z1', ring: rectangle(0, 0, 6_000, 6_000), machine: 'm' },
    { id: 'z2', ring: rectangle(4_000, -500, 2_000, 7_000), machine: 'm' },
  ];
  it('lie on each other, the later on top', () => {
    const measure = measureFloor(floorOf([HALL], SMALL, { zones }));
    expect(measure.zones.map((zone) => [zone.id, Number(zone.netM2.toFixed(12))])).toEqual([
      ['z1', 24],
      ['z2', 12],
      ['rest', 24],
    ]);
    expect(zoneNamed(measure, 'z1').faces.wall).toBeCloseTo(14, 9);
    expect(zoneNamed(measure, 'z2').faces.wall).toBeCloseTo(4, 9);
    expect(total(measure, (zone) => zone.innerCorners)).toBe(4);
  });
  it('take cracks, findings and columns by where they lie', () => {
    const shape = floorOf([HALL], SMALL, {
      zones,
      solids: [column('b1', 3_700, 3_000, 400), column('b2', 8_000, 900, 300)],
      lines: [
        {
          id: 'c1',
          path: [
            [-1_000, 1_000],
            [11_000, 1_000],
          ],
        },
      ],
      findings: [{ id: 'f1', ring: rectangle(3_000, 500, 2_000, 1_000) }],
    });
    const measure = measureFloor(shape);
    expect(zoneNamed(measure, 'z1').lengthM['c1']).toBeCloseTo(4, 9);
    expect(zoneNamed(measure, 'rest').lengthM['c1']).toBeCloseTo(3.7, 2);
    expect(zoneNamed(measure, 'z2').findingM2).toEqual({ f1: 1 });
    expect(measure.zones.map((zone) => zone.solids)).toEqual([['b1'], [], ['b2']]);
    expect(measure.deductedM2).toEqual({ b1: 0.16, b2: 0.09 });
  });
  it('may be worked by machines of their own', () => {
    const big = machine(400, 75, 50, { id: 'big' });
    const shape = {
      ...floorOf([HALL], SMALL, { zones: [{ id: 'z1', ring: rectangle(0, 0, 5_000, 6_000), machine: 'big' }] }),
      machines: [SMALL, big],
    };
    const measure = measureFloor(shape);
    expect(zoneNamed(measure, 'z1').stripM2).toBeCloseTo(0.125 * (6 + 10 - 0.25), 6);
    expect(zoneNamed(measure, 'rest').stripM2).toBeCloseTo(0.1 * (6 + 10 - 0.2), 6);
  });
});

describe('the net floor', () => {
  it('counts overlapping solids once, and keeps floor under those that are cleared', () => {
    const cleared = { ...column('b3', 7_000, 3_000, 500), solid: false };
    const measure = measureFloor(
      floorOf([HALL], SMALL, { solids: [column('b1', 1_000, 1_000, 400), column('b2', 1_200, 1_000, 400), cleared] }),
    );
    expect(measure.deductedM2).toEqual({ b1: 0.16, b2: 0.08 });
    expect(measure.netM2).toBeCloseTo(60 - 0.24, 9);
    expect(zoneNamed(measure).faces.obstruction).toBeCloseTo(2 * (0.6 + 0.4), 9);
  });
  it('loses what is out of scope, which is no face', () => {
    const measure = measureFloor(
      floorOf([HALL], SMALL, { outOfScope: [{ id: 'o1', ring: rectangle(8_000, 0, 3_000, 7_000) }] }),
    );
    expect(measure.netM2).toBeCloseTo(48, 9);
    expect(zoneNamed(measure).faces.wall).toBeCloseTo(22, 9);
    expect(zoneNamed(measure).stripM2).toBeCloseTo(0.1 * (22 - 0.2), 4);
  });
  it('joins slabs that meet where the floor runs on; a wall between them has two faces', () => {
    const west = rectangle(0, 0, 5_000, 6_000);
    const east = rectangle(5_000, 0, 5_000, 6_000);
    const open = [slab(west, ['wall', 'run', 'wall', 'wall'], 's1'), slab(east, ['wall', 'wall', 'wall', 'run'], 's2')];
    expect(zoneNamed(measureFloor(floorOf(open, SMALL))).faces.wall).toBeCloseTo(32, 6);
    const shut = measureFloor(floorOf([slab(west, undefined, 's1'), slab(east, undefined, 's2')], SMALL));
    expect(zoneNamed(shut).faces.wall).toBeCloseTo(44, 3);
    expect(zoneNamed(shut).stripM2).toBeCloseTo(2 * (2.2 - 0.04), 3);
    expect(shut.perimeterM).toBeCloseTo(32, 6);
  });
});

describe('faults', () => {
  const faultsOf = (more: Partial<FloorShape>) => measureFloor(floorOf([HALL], SMALL, more));
  it('name the record and leave the rest of the floor as it is', () => {
    const bow = [
      [1_000, 1_000],
      [3_000, 3_000],
      [3_000, 1_000],
      [1_000, 3_000],
    ] as const;
    const measure = faultsOf({
      solids: [
        { id: 'b1', ring: bow, solid: true },
        {
          id: 'b2',
          ring: [
            [0, 0],
            [1_000, 0],
            [2_000, 0],
          ],
          solid: true,
        },
      ],
      zones: [
        { id: 'z1', ring: rectangle(20_000, 0, 100, 100), machine: 'm' },
        { id: 'z2', ring: rectangle(0, 0, 1_000, 1_000), machine: 'nobody' },
      ],
      findings: [
        {
          id: 'f1',
          ring: [
            [0, 0],
            [NaN, 1],
            [5, 5],
          ],
        },
      ],
      lines: [
        {
          id: 'c1',
          path: [
            [-5_000, 0],
            [-5_000, 900],
          ],
        },
      ],
    });
    expect(measure.faults.map(({ record, code }) => `${record} ${code}`).toSorted()).toEqual([
      'b1 crossesItself',
      'b2 noArea',
      'c1 lineOutsideSlab',
      'f1 notANumber',
      'z1 zoneOutsideSlab',
      'z2 machineMissing',
    ]);
    expect(measure.faults.find((fault) => fault.record === 'b1')?.at).toEqual([2_000, 2_000]);
    expect(measure.netM2).toBeCloseTo(60, 9);
  });
  it('an outline that crosses itself is no floor, and nothing throws', () => {
    const bow = [
      [0, 0],
      [6_000, 6_000],
      [6_000, 0],
      [0, 6_000],
    ] as const;
    const measure = measureFloor(floorOf([slab(bow)], SMALL));
    expect(measure.netM2).toBe(0);
    expect(measure.faults[0]).toMatchObject({ record: 'slab', code: 'crossesItself' });
  });
});

describe('the sum of the parts', () => {
  it('is a check of its own: one piece of hand floor dropped is seen', () => {
    const zone = zoneNamed(measureFloor(floorOf([HALL], SMALL)));
    const parts = zone.fieldM2 + zone.stripM2 + zone.tightM2;
    expect(Math.abs(parts - zone.netM2)).toBeLessThan(1e-4 * zone.netM2);
    const niche = [
      [0, 0],
      [10_000, 0],
      [10_000, 6_000],
      [5_400, 6_000],
      [5_400, 6_500],
      [5_000, 6_500],
      [5_000, 6_000],
      [0, 6_000],
    ] as const;
    const tight = zoneNamed(measureFloor(floorOf([slab(niche)], SMALL)));
    const [largest] = tight.tight;
    const short = tight.fieldM2 + tight.stripM2 + tight.tightM2 - (largest?.areaM2 ?? 0);
    expect(tight.netM2 - short).toBeGreaterThan(1e-4 * tight.netM2);
  });
});

describe('a memory', () => {
  it('changes the time and nothing else', () => {
    const memory = measureMemory();
    const shape = floorOf([HALL], SMALL, { solids: [column('b1', 4_000, 3_000, 400)] });
    for (let x = 0; x < 4; x += 1) {
      const dragged = {
        ...shape,
        lines: [
          {
            id: 'c1',
            path: [
              [x * 100, 500],
              [3_000, 4_000],
            ] as const,
          },
        ],
      };
      expect(measureFloor(dragged, memory)).toEqual(measureFloor(dragged));
    }
    const moved = { ...shape, solids: [column('b1', 4_100, 3_000, 400)] };
    expect(measureFloor(moved, memory)).toEqual(measureFloor(moved));
  });
});
