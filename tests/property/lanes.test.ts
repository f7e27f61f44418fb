import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Region } from '../../src/geometry/floorShape.ts';
import { cutPiece } from '../../src/geometry/lanes/cutLanes.ts';
import { fieldPieces } from '../../src/geometry/lanes/fieldPieces.ts';
import type { FieldPiece } from '../../src/geometry/lanes/fieldPieces.ts';
import { laneRuns } from '../../src/geometry/lanes/laneRuns.ts';
import type { LaneJob, LanePlan } from '../../src/geometry/lanes/lane.ts';
import { lanePlan } from '../../src/geometry/lanes/lanePlan.ts';
import { holdsCircle } from '../../src/geometry/lanes/turningRoom.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { along, distance, minus, unit } from '../../src/geometry/point.ts';
import { insideShares, regionIndex } from '../../src/geometry/regionIndex.ts';
import { regionArea } from '../../src/geometry/ring.ts';
import { anyHall, hallField, mappedRegion } from '../support/fields.ts';
import { turned } from '../support/floors.ts';
import { anyFloor } from '../support/randomFloors.ts';

/** Laws of lanes on random halls with columns. */
const RUNS = { numRuns: 80, seed: 2_026_118 };
const JOB: LaneJob = { usefulWidthMm: 450, speedMmPerS: 200, turnS: 18, moveS: 60 };
const anyAngle = fc.double({ min: 0, max: Math.PI, noNaN: true });

function planOf(field: Region, more: Partial<LaneJob> = {}): LanePlan {
  const plan = lanePlan(field, { ...JOB, ...more });
  if (!plan) throw new Error('no lanes');
  return plan;
}

function onlyPiece(field: Region): FieldPiece {
  const [piece] = fieldPieces(field);
  if (!piece) throw new Error('no piece');
  return piece;
}

function lengthOf(plan: LanePlan): number {
  return plan.order.reduce((sum, { lanes }) => sum + lanes.reduce((all, [from, to]) => all + distance(from, to), 0), 0);
}

describe('lanes', () => {
  it('travel x step is the area of the field within 0.2 % at every angle', () => {
    fc.assert(
      fc.property(anyHall, anyAngle, (hall, angle) => {
        const field = hallField(hall);
        const cut = cutPiece(onlyPiece(field), angle, JOB.usefulWidthMm);
        let travelMm = 0;
        for (let lane = 0; lane < cut.count; lane += 1) travelMm += distance(...cut.ends(lane));
        expect(Math.abs((travelMm * cut.stepMm) / regionArea(field) - 1)).toBeLessThan(0.002);
        // No lane is wider than asked, and none is narrower for more than the rounding up of one.
        expect(cut.stepMm).toBeLessThanOrEqual(JOB.usefulWidthMm * (1 + 1e-9));
        expect(cut.stepMm).toBeGreaterThan(JOB.usefulWidthMm * 0.95);
      }),
      RUNS,
    );
  });

  it('cover the fields that the engine measures: travel x step is their area, arcs and all, within 0.2 %', () => {
    fc.assert(
      fc.property(anyFloor, anyAngle, (shape, angle) => {
        for (const zone of measureFloor(shape).zones) {
          // Pieces of some size, and lanes narrow against them: what is left is the rounding of ends.
          const pieces = fieldPieces(zone.field).filter(({ areaMm2 }) => areaMm2 > 4e6);
          for (const piece of pieces) {
            const cut = cutPiece(piece, angle, 5);
            let travelMm = 0;
            for (let lane = 0; lane < cut.count; lane += 1) travelMm += distance(...cut.ends(lane));
            expect(Math.abs((travelMm * cut.stepMm) / piece.areaMm2 - 1)).toBeLessThan(0.002);
          }
        }
      }),
      { ...RUNS, numRuns: 20 },
    );
  });

  it('run where an independent index says that a line is inside the field', () => {
    fc.assert(
      fc.property(anyHall, anyAngle, (hall, angle) => {
        const field = hallField(hall);
        const index = regionIndex(field);
        const cut = cutPiece(onlyPiece(field), angle, 4000);
        const far = hall.width + hall.depth;
        for (let line = 0; line + 1 < cut.first.length; line += 1) {
          const lanes = Array.from({ length: (cut.first[line + 1] ?? 0) - (cut.first[line] ?? 0) }, (_, i) =>
            cut.ends((cut.first[line] ?? 0) + i),
          );
          const [first] = lanes;
          if (!first) continue;
          const run = unit(minus(first[1], first[0]));
          const [from, to] = [along(first[0], run, -far), along(first[0], run, far)];
          const inside = insideShares(index, from, to).reduce((sum, [a, b]) => sum + (b - a) * 2 * far, 0);
          expect(lanes.reduce((sum, ends) => sum + distance(...ends), 0)).toBeCloseTo(inside, 4);
        }
      }),
      { ...RUNS, numRuns: 30 },
    );
  });

  it('are each driven once, to and fro, and turns are lanes less runs', () => {
    fc.assert(
      fc.property(anyHall, anyAngle, (hall, angle) => {
        const plan = planOf(hallField(hall), { directions: [angle] });
        expect(plan.order.reduce((sum, { lanes }) => sum + lanes.length, 0)).toBe(plan.lanes);
        expect(plan.order).toHaveLength(plan.runs);
        expect(plan.turns).toBe(plan.lanes - plan.runs);
        expect(lengthOf(plan) / 1000).toBeCloseTo(plan.travelM, 6);
        expect(plan.seconds).toBeCloseTo((plan.travelM * 1000) / 200 + plan.turns * 18 + plan.runs * 60, 6);
        for (const { lanes } of plan.order) {
          for (let i = 1; i < lanes.length; i += 1) {
            const [before, after] = [lanes[i - 1], lanes[i]];
            if (!before || !after) continue;
            const [there, back] = [unit(minus(before[1], before[0])), unit(minus(after[1], after[0]))];
            expect(there[0] * back[0] + there[1] * back[1]).toBeCloseTo(-1, 6);
          }
        }
      }),
      RUNS,
    );
  });

  it('the way between runs is what the order says, and no longer than in the order of the lines', () => {
    fc.assert(
      fc.property(anyHall, (hall) => {
        const plan = planOf(hallField(hall), { directions: [0] });
        let betweenMm = 0;
        for (let i = 1; i < plan.order.length; i += 1) {
          const [before, after] = [plan.order[i - 1]?.lanes.at(-1), plan.order[i]?.lanes[0]];
          if (before && after) betweenMm += distance(before[1], after[0]);
        }
        expect(plan.betweenM).toBeCloseTo(betweenMm / 1000, 9);
        const inOrder = plan.order.toSorted((a, b) => (a.lanes[0]?.[0][1] ?? 0) - (b.lanes[0]?.[0][1] ?? 0));
        let given = 0;
        for (let i = 1; i < inOrder.length; i += 1) {
          const [before, after] = [inOrder[i - 1]?.lanes.at(-1), inOrder[i]?.lanes[0]];
          if (before && after) given += distance(before[1], after[0]);
        }
        expect(betweenMm).toBeLessThanOrEqual(given + 1e-6);
      }),
      RUNS,
    );
  });

  it('the direction taken is none that costs more than another, and a dearer turn never makes a cheaper plan', () => {
    fc.assert(
      fc.property(anyHall, anyAngle, (hall, angle) => {
        const field = mappedRegion(hallField(hall), (at) => turned(at, angle));
        const plan = planOf(field);
        const least = Math.min(...plan.tried.map(({ seconds }) => seconds));
        expect(plan.seconds).toBeCloseTo(least, 6);
        expect(planOf(field, { turnS: 30 }).seconds).toBeGreaterThanOrEqual(plan.seconds);
        expect(planOf(field, { moveS: 90 }).seconds).toBeGreaterThanOrEqual(plan.seconds);
        expect(planOf(field, { speedMmPerS: 100 }).seconds).toBeGreaterThan(plan.seconds);
      }),
      { ...RUNS, numRuns: 25 },
    );
  });

  it('moved, turned or mirrored, or far from the origin, a field has the same lanes', () => {
    fc.assert(
      fc.property(anyHall, anyAngle, (hall, angle) => {
        const field = hallField(hall);
        const plan = planOf(field, { directions: [0.37] });
        const expectSame = (other: LanePlan): void => {
          expect(other.travelM / plan.travelM).toBeCloseTo(1, 9);
          expect([other.lanes, other.runs]).toEqual([plan.lanes, plan.runs]);
        };
        expectSame(
          planOf(
            mappedRegion(field, (at) => turned(at, angle)),
            { directions: [0.37 + angle] },
          ),
        );
        expectSame(
          planOf(
            mappedRegion(field, ([x, y]) => [-x, y]),
            { directions: [-0.37] },
          ),
        );
        expectSame(planOf(field, { directions: [0.37 + Math.PI] }));
        // 1,024 km away every coordinate still has 28 binary places of a millimetre.
        const far = mappedRegion(field, ([x, y]) => [x + 2 ** 30, y - 2 ** 30]);
        expect(planOf(far, { directions: [0.37] }).travelM / plan.travelM).toBeCloseTo(1, 6);
        expectSame(
          planOf(
            field.map((rings) => rings.map((ring) => ring.toReversed())),
            { directions: [0.37] },
          ),
        );
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  it('a turning circle fits where a close grid of places finds room for it, and not where it finds none', () => {
    const seen = { fits: 0, not: 0 };
    fc.assert(
      fc.property(anyHall, fc.integer({ min: 2500, max: 6000 }), (hall, radiusMm) => {
        const field = hallField({
          ...hall,
          columns: hall.columns.slice(0, 6),
          across: 2,
          width: 18_000,
          depth: 14_000,
        });
        const index = regionIndex(field);
        const step = radiusMm / 12;
        let deepest = 0;
        for (let x = step / 2; x < 18_000; x += step) {
          for (let y = step / 2; y < 14_000; y += step) {
            if (index.contains([x, y])) deepest = Math.max(deepest, index.nearest([x, y], 10_000)?.distance ?? 0);
          }
        }
        const fits = holdsCircle(onlyPiece(field), radiusMm);
        if (deepest > radiusMm * (1 + 1 / 8)) expect(fits).toBe(true);
        if (deepest + step * Math.SQRT1_2 < radiusMm) expect(fits).toBe(false);
        seen[fits ? 'fits' : 'not'] += 1;
      }),
      { ...RUNS, numRuns: 25 },
    );
    expect(Math.min(seen.fits, seen.not)).toBeGreaterThan(3);
  });

  it('runs are chains: each lane of one has no more than one neighbour before and behind, and that is in its run', () => {
    fc.assert(
      fc.property(anyHall, anyAngle, (hall, angle) => {
        const cut = cutPiece(onlyPiece(hallField(hall)), angle, JOB.usefulWidthMm);
        const { runOf, count } = laneRuns(cut);
        const lines = Array.from({ length: cut.first.length - 1 }, (_, line) =>
          Array.from(
            { length: (cut.first[line + 1] ?? 0) - (cut.first[line] ?? 0) },
            (_unused, i) => (cut.first[line] ?? 0) + i,
          ),
        );
        // The slow way: every lane against every lane of the next line.
        const touch = (a: number, b: number): boolean =>
          Math.min(cut.right[a] ?? 0, cut.right[b] ?? 0) - Math.max(cut.left[a] ?? 0, cut.left[b] ?? 0) > 1e-6;
        let links = 0;
        for (const [i, line] of lines.entries()) {
          const next = lines[i + 1] ?? [];
          for (const a of line) {
            const after = next.filter((b) => touch(a, b));
            const only = after.length === 1 ? after[0] : undefined;
            const isChain = only !== undefined && line.filter((other) => touch(other, only)).length === 1;
            if (isChain) links += 1;
            for (const b of next) expect(runOf[a] === runOf[b]).toBe(isChain && b === only);
          }
        }
        expect(count).toBe(cut.count - links);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });
});
