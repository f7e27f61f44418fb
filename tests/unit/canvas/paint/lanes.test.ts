import { describe, expect, test } from 'vitest';
import { lanesWork, type LanesShown } from '../../../../src/canvas/paint/lanes.ts';
import { paintFloor, SHOW_ALL } from '../../../../src/canvas/paint/paintFloor.ts';
import type { Look, Prim } from '../../../../src/canvas/paint/prim.ts';
import { planView } from '../../../../src/canvas/paint/view.ts';
import { viewNotes } from '../../../../src/exchange/viewNotes.ts';
import { lanePlan } from '../../../../src/geometry/lanes/lanePlan.ts';
import { distance } from '../../../../src/geometry/point.ts';
import { laneAsks } from '../../../../src/takeoff/laneHours.ts';
import { takeoff } from '../../../../src/takeoff/takeoff.ts';
import { hallPlan, HALL_FLOOR } from '../../../support/paintedPlan.ts';

const doc = hallPlan();
const measured = takeoff(doc, HALL_FLOOR);
const view = planView(doc, HALL_FLOOR, viewNotes(doc, HALL_FLOOR, measured, 'metric'));
const near: Look = { pxPerMm: 0.06, picked: false, print: false };

function shownLanes(): LanesShown {
  for (const { zone } of view.zones) {
    const [ask] = laneAsks(doc, measured, zone.id);
    const plan = ask && lanePlan(ask.field, ask.job);
    if (plan && plan.runs > 2) return { zone: zone.id, plans: [plan], isOld: false };
  }
  throw new Error('no zone with lanes');
}

const lanes = shownLanes();
const [plan] = lanes.plans;
if (!plan) throw new Error('no plan');

function prims(shown: LanesShown, look: Look): readonly Prim[] {
  return lanesWork(view, shown, look).flatMap((work) => work.prims);
}

describe('lanes on the plan', () => {
  test('each run is one line through all its lanes', () => {
    const lines = prims(lanes, near).filter((prim) => prim.kind === 'line');
    expect(lines.map(({ path }) => path.length)).toEqual(plan.order.map((run) => 2 * run.lanes.length));
  });

  test('numbers follow the order, and none crowds another', () => {
    const numbers = prims(lanes, near).filter((prim) => prim.kind === 'text');
    expect(numbers.length).toBeGreaterThan(2);
    const order = numbers.map(({ text }) => Number(text));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(new Set(order).size).toBe(order.length);
    for (const [i, one] of numbers.entries()) {
      for (const other of numbers.slice(i + 1)) {
        expect(distance(one.at, other.at) * near.pxPerMm).toBeGreaterThanOrEqual(30);
      }
    }
  });

  test('arrows point the way their lane is driven', () => {
    const arrows = prims(lanes, near).filter((prim) => prim.kind === 'mark');
    expect(arrows.length).toBeGreaterThan(5);
    const turns = new Set(arrows.map(({ turnDeg = 0 }) => Math.round((turnDeg + 360) % 360)));
    const along = Math.round((plan.directionRad * 180) / Math.PI);
    expect([...turns].toSorted((a, b) => a - b)).toEqual([along, along + 180]);
  });

  test('from far away there are none, rather than a grey wash', () => {
    expect(prims(lanes, { ...near, pxPerMm: 0.004 })).toEqual([]);
  });

  test('those of a plan that is being changed are faint', () => {
    const inks = new Set(prims({ ...lanes, isOld: true }, near).flatMap((prim) => ('ink' in prim ? prim.ink : [])));
    expect([...inks]).toEqual(['rule']);
  });

  test('the hatch of their zone gives way to them, and only there', () => {
    const hatched = (shown: LanesShown | null): number =>
      paintFloor(view, near, { ...SHOW_ALL, reach: 'all', lanes: shown })
        .reach.flatMap((work) => work.prims)
        .filter((prim) => prim.kind === 'area' && prim.hatchCsp !== undefined).length;
    expect(hatched(lanes)).toBe(hatched(null) - 1);
  });

  test('of a zone that is not on this floor there are none', () => {
    expect(prims({ ...lanes, zone: 'zone:elsewhere' }, near)).toEqual([]);
  });
});
