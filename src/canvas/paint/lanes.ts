import type { LaneRun, LanePlan } from '../../geometry/lanes/lane.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { between, cross, distance, minus, unit } from '../../geometry/point.ts';
import { LINE } from '../look.ts';
import { painted, type Painted } from './kept.ts';
import { plateGrid, type PlateGrid } from './plateGrid.ts';
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
const NUMBER_IN_PX = 14;

const ARROW: readonly Point[] = [
  [-4, -3.5],
  [3, 0],
  [-4, 3.5],
];

interface PaintedLanes {
  readonly lines: readonly Painted[];
  signs: { readonly pxPerMm: number; readonly works: readonly Painted[] };
}

const paintedLanes = new WeakMap<LanesShown, PaintedLanes>();

/**
 * Lines and signs of a zone's lanes, run by run, so that only those in sight are drawn; nothing while they are too close
 * together to be told from each other. Lines are the same at any scale, signs keep their size.
 */
export function lanesWork(view: PlanView, lanes: LanesShown | null, look: Look): readonly Painted[] {
  if (!lanes || !view.zones.some(({ zone }) => zone.id === lanes.zone) || !lanesShow(lanes.plans, look.pxPerMm))
    return [];
  const { pxPerMm } = look;
  let work = paintedLanes.get(lanes);
  if (!work) {
    work = { lines: laneLines(lanes), signs: { pxPerMm, works: laneSigns(lanes, pxPerMm) } };
    paintedLanes.set(lanes, work);
  }
  if (work.signs.pxPerMm !== pxPerMm) work.signs = { pxPerMm, works: laneSigns(lanes, pxPerMm) };
  return [...work.lines, ...work.signs.works];
}

function laneLines({ plans, isOld }: LanesShown): Painted[] {
  return plans.flatMap(({ order }) =>
    order.map(({ lanes }) =>
      painted('lanes', [{ kind: 'line', path: lanes.flat(), ink: inkOf(isOld), px: LINE.hair, cap: 'round' }]),
    ),
  );
}

/** Whether the lanes are far enough apart on the screen to be told from each other. */
export function lanesShow(plans: readonly LanePlan[], pxPerMm: number): boolean {
  return plans.some(({ order }) => (stepOf(order) ?? Infinity) * pxPerMm >= CLOSEST_PX);
}

/** Arrows and numbers; where they would crowd they are left out. */
function laneSigns({ plans, isOld }: LanesShown, pxPerMm: number): Painted[] {
  const ink = inkOf(isOld);
  const numbers = plateGrid();
  return plans.flatMap(({ order }) => {
    const isClose = (stepOf(order) ?? Infinity) * pxPerMm < ARROWS_APART_PX;
    return order.map(({ lanes }, i) => {
      const pointed = isClose ? lanes.filter((_, k) => k === 0 || k === lanes.length - 1) : lanes;
      const number = order.length > 1 ? numberOf(lanes, i + 1, { pxPerMm, ink, numbers }) : null;
      return painted('laneSigns', [...arrowsOf(pointed, pxPerMm, ink), ...(number ? [number] : [])]);
    });
  });
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

interface Numbering {
  readonly pxPerMm: number;
  readonly ink: Ink;
  /** Numbers that have their place already. */
  readonly numbers: PlateGrid;
}

/** The number of a run, a little way in, so that it stands on its own lane and not on the wall. */
function numberOf(lanes: LaneRun['lanes'], number: number, { pxPerMm, ink, numbers }: Numbering): Prim | null {
  const [first] = lanes;
  if (!first || !lanes.some(([from, to]) => distance(from, to) * pxPerMm >= NUMBER_FROM_PX)) return null;
  const at = between(first[0], first[1], Math.min(0.5, NUMBER_IN_PX / pxPerMm / distance(...first)));
  const [x, y] = [at[0] * pxPerMm, at[1] * pxPerMm];
  const half = NUMBERS_APART_PX / 2;
  const room = { minX: x - half, minY: y - half, maxX: x + half, maxY: y + half };
  if (numbers.covered(room) > 0) return null;
  numbers.add(room);
  return { kind: 'text', at, text: String(number), px: NUMBER_PX, weight: 800, ink, halo: 'chalkWash' };
}
