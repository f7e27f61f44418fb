import { describe, expect, it } from 'vitest';
import type { FaceKind, FloorShape } from '../../../src/geometry/floorShape.ts';
import { floorTotals } from '../../../src/geometry/floorTotals.ts';
import { measureFloor } from '../../../src/geometry/measureFloor.ts';
import { column, floorOf, machine, rectangle, slab, total, zoneNamed } from '../../support/floors.ts';

/** Things drawn against each other lie a hair apart or over each other. The gaps are in mm. */
const SMALL = machine(250, 50, 50, { passageMm: 800 });
const GAPS = [0, 0.003, 0.02, 0.04];
const ENTRANCE = [{ id: 'e1', at: [1_000, 1_000] as const, widthMm: null, heightMm: null }];

function openAt(edge: number): FaceKind[] {
  return ['wall', 'wall', 'wall', 'wall'].map((_, i) => (i === edge ? 'run' : 'wall'));
}

describe('two slabs with a hair between them where the floor runs on', () => {
  const beside = (gap: number): FloorShape =>
    floorOf(
      [slab(rectangle(0, 0, 5_000, 5_000), openAt(1)), slab(rectangle(5_000 + gap, 0, 5_000, 5_000), openAt(3), 's2')],
      SMALL,
      {
        entrances: ENTRANCE,
      },
    );
  const above = (gap: number): FloorShape =>
    floorOf(
      [slab(rectangle(0, 0, 5_000, 5_000), openAt(2)), slab(rectangle(0, 5_000 + gap, 5_000, 5_000), openAt(0), 's2')],
      SMALL,
      {
        entrances: ENTRANCE,
      },
    );
  it.each(GAPS)('of %d mm are one floor, whichever way it lies', (gap) => {
    for (const shape of [beside(gap), above(gap)]) {
      const measure = measureFloor(shape);
      expect(total(measure, (zone) => zone.cutOffM2)).toBe(0);
      expect(zoneNamed(measure).faces.wall).toBeCloseTo(30, 3);
      expect(zoneNamed(measure).innerCorners).toBe(4);
    }
  });
});

describe('a column with a hair between it and the wall', () => {
  it.each(GAPS)('of %d mm stands against it', (gap) => {
    const at = (solid: ReturnType<typeof column>): FloorShape =>
      floorOf([slab(rectangle(0, 0, 10_000, 6_000))], SMALL, { solids: [solid] });
    for (const shape of [at(column('b1', gap, 2_000, 400)), at(column('b1', 2_000, gap, 400))]) {
      const zone = zoneNamed(measureFloor(shape));
      expect(zone.faces.wall + zone.faces.obstruction).toBeCloseTo(32 - 0.4 + 1.2, 3);
      expect(zone.innerCorners).toBe(6);
    }
  });
});

describe('sizes that nobody builds', () => {
  it('a floor of kilometres is measured in larger tiles', () => {
    const totals = floorTotals(floorOf([slab(rectangle(0, 0, 5e6, 4e6))], SMALL));
    expect(totals.netM2 / 2e7).toBeCloseTo(1, 12);
  });
  it('a corner beyond all places is a fault and no number', () => {
    const totals = floorTotals(
      floorOf(
        [
          slab([
            [0, 0],
            [1e300, 0],
            [1e300, 1e300],
          ]),
        ],
        SMALL,
      ),
    );
    expect(totals.netM2).toBe(0);
    expect(totals.faults).toMatchObject([{ record: 'slab', code: 'notANumber' }]);
  });
});
