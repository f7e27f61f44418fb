import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FloorMeasure, FloorShape, MachineShape } from '../../src/geometry/floorShape.ts';
import { between } from '../../src/geometry/point.ts';
import { corner } from '../../src/geometry/ring.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { column, rectangle, total, turned } from '../support/floors.ts';
import { anyFloor, mapped } from '../support/randomFloors.ts';

/**
 * Laws that hold on every floor. Tolerance: 1e-4 of the net floor; most runs are far inside. Where a face
 * ceases to be worked is found by a line that may graze an arc, so edge metres get 1e-3 of all faces. A cusp that
 * touches cut-off floor in one point is one piece with it or not by a rounding: cut-off floor gets a cusp.
 */
const RUNS = { numRuns: 60, seed: 2_026_112 };
const SHARE = 1e-4;
const METRES = 1e-3;
const CUSP_M2 = 0.06;

function everyFloor(holds: (shape: FloorShape) => void): void {
  fc.assert(fc.property(anyFloor, holds), RUNS);
}

/** Every law asks about the same floors: each of them is measured once. */
const known = new Map<string, FloorMeasure>();
function measured(shape: FloorShape): FloorMeasure {
  const key = JSON.stringify(shape);
  const measure = known.get(key) ?? measureFloor(shape);
  known.set(key, measure);
  return measure;
}

function sums(measure: FloorMeasure) {
  const of = (zone: FloorMeasure['zones'][number]) =>
    zone.faces.wall + zone.faces.obstruction + zone.faces.drop + zone.faces.stop;
  return {
    net: measure.netM2,
    field: total(measure, (zone) => zone.fieldM2),
    strip: total(measure, (zone) => zone.stripM2),
    tight: total(measure, (zone) => zone.tightM2),
    cutOff: total(measure, (zone) => zone.cutOffM2),
    edge: total(measure, of),
    faces: total(measure, (zone) => of(zone) + zone.faces.hidden),
    lines: total(measure, (zone) => Object.values(zone.lengthM).reduce((a, b) => a + b, 0)),
    findings: total(measure, (zone) => Object.values(zone.findingM2).reduce((a, b) => a + b, 0)),
  };
}

function expectSame(a: FloorMeasure, b: FloorMeasure, share = SHARE): void {
  const [before, after] = [sums(a), sums(b)];
  for (const key of Object.keys(before) as (keyof typeof before)[]) {
    const allowed = key === 'edge' ? METRES * before.faces : key === 'cutOff' ? CUSP_M2 : share * (before.net + 1);
    expect(Math.abs(before[key] - after[key]), `${key} ${before[key]} ${after[key]}`).toBeLessThan(allowed);
  }
}

function withMachine(shape: FloorShape, change: (one: MachineShape) => Partial<MachineShape>): FloorShape {
  return { ...shape, machines: shape.machines.map((one) => ({ ...one, ...change(one) })) };
}

describe('every floor', () => {
  it('has field + strip + tight = net, in each zone', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const measure = measured(shape);
      expect(measure.faults.filter((fault) => fault.code === 'clipFailed')).toEqual([]);
      for (const zone of measure.zones) {
        expect(Math.abs(zone.fieldM2 + zone.stripM2 + zone.tightM2 - zone.netM2)).toBeLessThan(
          SHARE * (zone.netM2 + 0.01),
        );
      }
    }),
  );
  it('has zones + rest = net, and gross less deductions = net', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const measure = measured(shape);
      expect(Math.abs(total(measure, (zone) => zone.netM2) - measure.netM2)).toBeLessThan(SHARE * measure.netM2);
      const taken = Object.values(measure.deductedM2).reduce((a, b) => a + b, 0);
      expect(Math.abs(measure.grossM2 - taken - measure.netM2)).toBeLessThan(SHARE * measure.netM2);
    }),
  );
  it('has no finding off the net floor: one that covers everything is as large as that', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const all = { id: 'all', ring: rectangle(-5_000, -5_000, 40_000, 40_000) };
      const { findings, net } = sums(measureFloor({ ...shape, findings: [all] }));
      expect(Math.abs(findings - net)).toBeLessThan(SHARE * (net + 0.01));
    }),
  );
  it('has the crack length and finding area of the net floor, however zones lie', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const whole = sums(measureFloor({ ...shape, zones: [] }));
      const zoned = sums(measured(shape));
      expect(zoned.lines).toBeCloseTo(whole.lines, 6);
      expect(Math.abs(zoned.findings - whole.findings)).toBeLessThan(SHARE * (whole.findings + 0.01));
      expect(Math.abs(zoned.faces - whole.faces)).toBeLessThan(1e-4 * whole.faces + 1e-6);
    }),
  );
});

describe('nothing changes', () => {
  it('when the floor is moved', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      expectSame(measured(shape), measureFloor(mapped(shape, ([x, y]) => [x + 123_456.7, y - 98_765.4])), 1e-6);
    }),
  );
  it('when it is turned by any angle', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      // Off the round numbers of the generator, where a gap of just the width needed passes or not by a rounding.
      const odd = mapped(shape, ([x, y]) => [x * 1.0137, y * 1.0171]);
      expectSame(measureFloor(odd), measureFloor(mapped(odd, (at) => turned(at, 0.6))));
    }),
  );
  it('when it is mirrored', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      expectSame(measured(shape), measureFloor(mapped(shape, ([x, y]) => [-x, y])));
    }),
  );
  it('when outlines are drawn the other way round', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const back = {
        ...shape,
        slabs: shape.slabs.map((one) => ({
          ...one,
          ring: one.ring.toReversed(),
          faces: [...one.faces.slice(0, -1).toReversed(), ...one.faces.slice(-1)],
        })),
        solids: shape.solids.map((one) => ({ ...one, ring: one.ring.toReversed() })),
        zones: shape.zones.map((one) => ({ ...one, ring: one.ring.toReversed() })),
      };
      expectSame(measured(shape), measureFloor(back), 1e-6);
    }),
  );
  it('when an edge gets a corner in its middle', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const split = {
        ...shape,
        slabs: shape.slabs.map((one) => {
          const [a, b] = [corner(one.ring, 0), corner(one.ring, 1)];
          const first = one.faces[0] ?? 'wall';
          return {
            ...one,
            ring: [a, between(a, b, 0.5), ...one.ring.slice(1)],
            faces: [first, ...one.faces],
            passages: [null, ...one.passages],
          };
        }),
      };
      expectSame(measured(shape), measureFloor(split), 1e-6);
    }),
  );
  it('when a column is there twice', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const [first] = shape.solids;
      if (!first) return;
      expectSame(
        measured(shape),
        measureFloor({ ...shape, solids: [...shape.solids, { ...first, id: 'again' }] }),
        1e-6,
      );
    }),
  );
});

describe('more of one is never less of the other', () => {
  const slack = 1e-4;
  it('a wider head or clearance: field not up', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const base = sums(measured(shape));
      const wider = sums(
        measureFloor(
          withMachine(shape, (one) => ({ headRadiusMm: one.headRadiusMm + 50, passageMm: one.passageMm + 100 })),
        ),
      );
      const further = sums(
        measureFloor(
          withMachine(shape, (one) => ({
            passageMm: one.passageMm + 60,
            clearanceMm: {
              wall: one.clearanceMm.wall + 30,
              obstruction: one.clearanceMm.obstruction + 30,
              drop: one.clearanceMm.drop + 30,
              stop: one.clearanceMm.stop + 30,
            },
          })),
        ),
      );
      expect(wider.field).toBeLessThanOrEqual(base.field + slack * base.net);
      expect(further.field).toBeLessThanOrEqual(base.field + slack * base.net);
    }),
  );
  it('one more obstruction: net not up', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const base = measured(shape).netM2;
      expect(
        measureFloor({ ...shape, solids: [...shape.solids, column('more', 2_000, 2_000, 700)] }).netM2,
      ).toBeLessThanOrEqual(base + 1e-9);
    }),
  );
  it('no clearance and no lap: no strip', { timeout: 60_000 }, () =>
    everyFloor((shape) => {
      const bare = withMachine(shape, () => ({ clearanceMm: { wall: 0, obstruction: 0, drop: 0, stop: 0 }, lapMm: 0 }));
      expect(sums(measureFloor(bare)).strip).toBe(0);
    }),
  );
});
