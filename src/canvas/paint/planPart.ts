import { boxesMeet, boxOf, type Box } from '../../geometry/box.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { formRing } from '../../geometry/formRing.ts';
import type { PlanView } from './view.ts';

/** Records of a view by kind: what painting goes through. Zones and walls hold theirs, and are asked for by name. */
const KINDS = [
  'pages',
  'slabs',
  'obstructions',
  'outOfScope',
  'steps',
  'cracks',
  'joints',
  'findings',
  'entrances',
  'services',
  'readings',
  'notes',
  'photos',
  'dimensions',
] as const;
type Kind = (typeof KINDS)[number];

/** How many things lie on a floor: what painting it costs. */
export function itemCount(view: PlanView): number {
  return view.cracks.length + view.joints.length + view.findings.length + view.obstructions.length;
}

/**
 * What of a plan is not as it was in another view of it: records that are new or have changed, walls whose openings
 * have, zones with another ring. Null when nothing is.
 */
export function changedPart(view: PlanView, was: PlanView): PlanView | null {
  const part: Record<Kind, readonly object[]> = { ...view };
  let some = 0;
  for (const kind of KINDS) {
    part[kind] = fresh<object>(view[kind], was[kind]);
    some += part[kind].length;
  }
  const hadWalls = new Map(was.walls.map((each) => [each.wall, each.openings]));
  const walls = view.walls.filter(({ wall, openings }) => !isSameList(openings, hadWalls.get(wall)));
  const hadZones = new Set(was.zones.map(({ zone }) => zone.ring));
  const zones = view.zones.filter(({ zone }) => zone.ring !== undefined && !hadZones.has(zone.ring));
  if (some + walls.length + zones.length === 0) return null;
  return { ...view, ...(part as Pick<PlanView, Kind>), walls, zones };
}

function fresh<T extends object>(now: readonly T[], was: readonly T[]): readonly T[] {
  if (now === was) return [];
  // Mostly one record has changed and all have kept their places.
  if (now.length === was.length) {
    const others = now.filter((record, i) => record !== was[i]);
    if (others.length < 2) return others;
  }
  const had = new Set(was);
  return now.filter((record) => !had.has(record));
}

function isSameList(one: readonly object[], other: readonly object[] | undefined): boolean {
  return other !== undefined && one.length === other.length && one.every((item, i) => item === other[i]);
}

const boxes = new WeakMap<object, Box>();

function meets<T extends object>(box: Box, points: (record: T) => readonly Point[]): (record: T) => boolean {
  return (record) => {
    let own = boxes.get(record);
    if (!own) {
      own = boxOf(points(record));
      boxes.set(record, own);
    }
    return boxesMeet(own, box);
  };
}

/** A plan without the many small things that lie outside a box, floor mm. What is picked stays. */
export function partIn(view: PlanView, box: Box, picked: readonly string[]): PlanView {
  const among = new Set(picked);
  const kept = <T extends { readonly id: string }>(list: readonly T[], points: (record: T) => readonly Point[]) => {
    const isIn = meets(box, points);
    return list.filter((record) => among.has(record.id) || isIn(record));
  };
  return {
    ...view,
    cracks: kept(view.cracks, ({ path }) => path),
    joints: kept(view.joints, ({ path }) => path),
    findings: kept(view.findings, ({ ring }) => ring),
    obstructions: kept(view.obstructions, ({ shape }) => formRing(shape)),
  };
}
