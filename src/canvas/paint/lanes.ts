import type { LaneRun, LanePlan } from '../../geometry/lanes/lane.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { between, cross, distance, minus, unit } from '../../geometry/point.ts';
import { LINE } from '../look.ts';
import { kept, type Painted } from './kept.ts';
import type { Ink, Look, Prim } from './prim.ts';
import type { PlanView } from './view.ts';

/*
 *   1 ------->------+      a run of lanes is one thin line, to and fro, with its number where it begins
 *   +-------<-------+      and an arrow in the middle of its lanes
 *   +------->-------
 */

/** Lanes of one zone, a plan for each machine that works it. */
export interface LanesShown {
  readonly zone: string;
  readonly plans: readonly LanePlan[];
  /** The plan is being changed, or newer lanes are on their way: these are drawn faintly. */
  readonly isOld: boolean;
}

/** Lanes closer than this on the screen would be a grey wash: they come into sight closer up. */
const CLOSEST_PX = 3;
/** A lane shorter than this on the screen has no arrow, and a run of such lanes no number. */
const ARROW_FROM_PX = 44;
/** Where lanes lie closer than this, only the first and the last of a run have an arrow. */
const ARROWS_APART_PX = 11;
const NUMBER_FROM_PX = 30;
/** Numbers keep this far from each other. */
const NUMBERS_APART_PX = 30;
const NUMBER_PX = 14.5;

const ARROW: readonly Point[] = [
  [-4, -3.5],
  [3, 0],
  [-4, 3.5],
];

/** Lines and signs of a zone's lanes; nothing while they are too close together to be told from each other. */
export function lanesWork(view: PlanView, lanes: LanesShown | null, look: Look): Painted[] {
  const zone = view.zones.find((each) => each.zone.id === lanes?.zone)?.zone;
  if (!lanes || !zone || !lanesShow(lanes, look)) return [];
  return [
    kept(zone, 'laneLines', [lanes], () => laneLines(lanes)),
    kept(zone, 'laneSigns', [lanes, look.pxPerMm], () => laneSigns(lanes, look)),
  ];
}

/** The runs themselves: the same at any scale. */
function laneLines({ plans, isOld }: LanesShown): Prim[] {
  return plans.flatMap(({ order }) =>
    order.map((run): Prim => ({
      kind: 'line',
      path: run.lanes.flat(),
      ink: inkOf(isOld),
      px: LINE.hair,
      cap: 'round',
    })),
  );
}

/** Whether the lanes are far enough apart on the screen to be told from each other. */
function lanesShow({ plans }: LanesShown, { pxPerMm }: Look): boolean {
  return plans.some(({ order }) => (stepOf(order) ?? Infinity) * pxPerMm >= CLOSEST_PX);
}

/** Arrows and numbers: they keep their size, and where they would crowd they are left out. */
function laneSigns({ plans, isOld }: LanesShown, { pxPerMm }: Look): Prim[] {
  const arrows = plans.flatMap(({ order }) => {
    const isClose = (stepOf(order) ?? Infinity) * pxPerMm < ARROWS_APART_PX;
    return order.flatMap(({ lanes }) => {
      const pointed = isClose ? lanes.filter((_, i) => i === 0 || i === lanes.length - 1) : lanes;
      return arrowsOf(pointed, pxPerMm, inkOf(isOld));
    });
  });
  return [...arrows, ...numbersOf(plans, pxPerMm, inkOf(isOld))];
}

function inkOf(isOld: boolean): Ink {
  return isOld ? 'rule' : 'ink2';
}

/** Distance of two neighbouring lanes, mm, from the first run that has two. */
function stepOf(order: readonly LaneRun[]): number | null {
  const run = order.find(({ lanes }) => lanes.length > 1);
  const [first, second] = run?.lanes ?? [];
  if (!first || !second) return null;
  return Math.abs(cross(unit(minus(first[1], first[0])), minus(second[0], first[0])));
}

function arrowsOf(lanes: LaneRun['lanes'], pxPerMm: number, ink: Ink): Prim[] {
  return lanes.flatMap(([from, to]): Prim[] => {
    if (distance(from, to) * pxPerMm < ARROW_FROM_PX) return [];
    const turnDeg = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
    return [{ kind: 'mark', at: between(from, to, 0.5), paths: [ARROW], ink, px: LINE.thin, turnDeg }];
  });
}

function numbersOf(plans: readonly LanePlan[], pxPerMm: number, ink: Ink): Prim[] {
  const taken: Point[] = [];
  const numbers = plans.flatMap(({ order }) =>
    order.length > 1 ? order.map((run, i) => ({ run, number: i + 1 })) : [],
  );
  return numbers.flatMap(({ run, number }): Prim[] => {
    const [first] = run.lanes;
    if (!first || !run.lanes.some(([from, to]) => distance(from, to) * pxPerMm >= NUMBER_FROM_PX)) return [];
    // A little way in, so that it stands on its own run and not on the wall.
    const length = distance(...first);
    const at = between(first[0], first[1], Math.min(0.5, 14 / pxPerMm / length));
    if (taken.some((other) => distance(other, at) * pxPerMm < NUMBERS_APART_PX)) return [];
    taken.push(at);
    return [{ kind: 'text', at, text: String(number), px: NUMBER_PX, weight: 800, ink, halo: 'chalkWash' }];
  });
}
