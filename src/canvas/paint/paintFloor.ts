import type { Point } from '../../geometry/floorShape.ts';
import { pageMatrix } from '../../edit/pageMap.ts';
import { minus, plus, quarterTurn } from '../../geometry/point.ts';
import { corner, wound } from '../../geometry/ring.ts';
import { nearestOnSegment } from '../../geometry/segment.ts';
import type { RecordType } from '../../model/records/all.ts';
import { TAGS_FROM_PX_PER_M } from '../look.ts';
import { paintCrack } from './crack.ts';
import { paintDimension } from './dimension.ts';
import { paintFinding } from './finding.ts';
import { paintJoint } from './joint.ts';
import { kept, painted, type Painted } from './kept.ts';
import { lanesWork, type LanesShown } from './lanes.ts';
import { litPrims, type Lit } from './lit.ts';
import { paintObstruction } from './obstruction.ts';
import { paintOutOfScope } from './outOfScope.ts';
import { paintPage } from './page.ts';
import { withRoom } from './picked.ts';
import { pickedPrims } from './pickedItem.ts';
import type { Look, Prim } from './prim.ts';
import { askedSpotPrims, narrowLinePrims, type AskedSpot } from './narrowPlace.ts';
import { followerPrims, reachPrims, tightPrims } from './reach.ts';
import { paintSlab, paintSlabEdges } from './slab.ts';
import { paintEntrance, paintNote, paintPhoto, paintReading, paintService } from './spot.ts';
import { paintSteps } from './steps.ts';
import type { PxBox } from './plateGrid.ts';
import { placeTags } from './tagPlaces.ts';
import { linesToSpare, tagWishes, type TagOptions } from './tags.ts';
import { slabRing, type PlanView, type ZoneView } from './view.ts';
import { paintOpenings, paintWall } from './wall.ts';
import { paintZoneHatch, paintZoneTint } from './zone.ts';

/** Bottom to top. What the hand is doing lies above all of it. */
export const PAINT_ORDER = [
  'page',
  'slab',
  'hatch',
  'reach',
  'findings',
  'joints',
  'cracks',
  'obstructions',
  'walls',
  'spots',
  'tags',
  'picked',
] as const;
export type PaintClass = (typeof PAINT_ORDER)[number];
export type PaintedFloor = Readonly<Record<PaintClass, readonly Painted[]>>;

/** What of a floor is shown besides what is there. */
export interface Showing {
  /** Tints, hatches and numbers of zones. */
  readonly zones: boolean;
  readonly tags: boolean;
  /** Kinds of items that get their plate; null: all. What is picked always does. */
  readonly tagsOf: ReadonlySet<RecordType> | null;
  /** The plan page under it all. */
  readonly pages: boolean;
  /** The page itself is worked on: no slab over it, no plates, as strong as it is. */
  readonly pageAlone?: boolean;
  /** Machine field against hand work: of no zone, of one by its id, of all; or only the spots that no machine gets to. */
  readonly reach: 'none' | 'spots' | 'all' | (string & {});
  /** Lanes over the reach of one zone: its hatch gives way to them. */
  readonly lanes?: LanesShown | null;
  readonly picked: readonly string[];
  /** Corners of what is picked have their numbers, to take hold of; not where nothing is moved. */
  readonly cornerNumbers: boolean;
  /** Edges of the picked slab that its sheet speaks of. */
  readonly pickedEdges: readonly number[];
  /** What a number is made of, in solid chalk; all else stays bare. */
  readonly lit: Lit | null;
  readonly doorText?: TagOptions['doorText'];
  /** Name and profile beside the zone numbers. */
  readonly zoneNames?: TagOptions['zoneNames'];
  /** Floor that no machine works and that somebody asks about: its narrow place, and why. */
  readonly asked?: AskedSpot | null;
  /** The sheet that plates should stay on, px from the floor's origin. */
  readonly within?: PxBox;
}

export const SHOW_ALL: Showing = {
  zones: true,
  tags: true,
  tagsOf: null,
  pages: true,
  reach: 'none',
  picked: [],
  cornerNumbers: true,
  pickedEdges: [],
  lit: null,
};

/** A step into the floor, square to the edge that lies nearest. */
function stepInside(view: PlanView, at: Point): Point {
  let best = { distance: Infinity, towards: [at[0], at[1] - 1] as Point };
  for (const ring of view.slabs.map((slab) => wound(slabRing(slab), true))) {
    for (const [i, a] of ring.entries()) {
      const b = corner(ring, i + 1);
      const near = nearestOnSegment(at, a, b);
      if (near.distance < best.distance)
        best = { distance: near.distance, towards: plus(at, quarterTurn(minus(b, a))) };
    }
  }
  return best.towards;
}

function reachOf(view: PlanView, { reach, lanes }: Showing): Painted[] {
  if (reach === 'none') return [];
  if (reach === 'spots')
    return (view.measure?.zones ?? []).map((zone) =>
      kept(zone, 'spots', [], () => [...followerPrims(zone), ...tightPrims(zone)]),
    );
  const measured = new Set(view.zones.flatMap((zone) => zone.measure ?? []));
  const rest = (view.measure?.zones ?? []).filter((zone) => !measured.has(zone));
  const shown = reach === 'all' ? view.zones : view.zones.filter((zone) => zone.zone.id === reach);
  return [
    ...shown.flatMap(({ zone, measure, csp: own }) => {
      const csp = lanes?.zone === zone.id ? null : own;
      return measure ? [kept(zone, 'reach', [measure, csp], () => reachPrims(measure, csp))] : [];
    }),
    ...(reach === 'all' ? rest.map((zone) => kept(zone, 'reach', [], () => reachPrims(zone, null))) : []),
  ];
}

/** Narrow places of zones whose reach is shown, above walls and columns. */
function narrowWork(view: PlanView, { reach }: Showing, look: Look): Painted[] {
  const shown = view.zones.filter(({ zone }) => reach === 'all' || zone.id === reach);
  return shown.flatMap(({ zone, measure }) =>
    measure
      ? [
          kept(zone, 'narrow', [measure, look.pxPerMm], () =>
            measure.tight.flatMap(({ gap }) => (gap ? narrowLinePrims([gap.from, gap.to], look) : [])),
          ),
        ]
      : [],
  );
}

function zoneWork(view: PlanView, showing: Showing, look: Look): Pick<PaintedFloor, 'slab' | 'hatch'> {
  const overPage = showing.pages && view.pages.length > 0 && !look.print;
  const floors = view.slabs.map((slab) => kept(slab, 'slab', [overPage], () => paintSlab(slab, { overPage }, look)));
  if (showing.pageAlone) return { slab: [], hatch: [] };
  if (!showing.zones) return { slab: floors, hatch: [] };
  const given = (zone: ZoneView): readonly unknown[] => [
    zone.measure?.net ?? null,
    zone.index,
    zone.csp,
    zone.held,
    overPage,
  ];
  return {
    slab: [
      ...floors,
      ...view.zones.map((zone) => kept(zone.zone, 'tint', given(zone), () => paintZoneTint(zone, { overPage }, look))),
    ],
    hatch: view.zones.map((zone) => kept(zone.zone, 'hatch', given(zone), () => paintZoneHatch(zone, undefined, look))),
  };
}

function wallWork(view: PlanView, look: Look): Painted[] {
  return [
    ...view.slabs.map((slab) => kept(slab, 'edges', [], () => paintSlabEdges(slab, undefined, look))),
    ...view.walls.map((wall) => kept(wall.wall, 'wall', wall.openings, () => paintWall(wall, undefined, look))),
    ...view.walls.map((wall) =>
      kept(wall.wall, 'openings', [look.pxPerMm, ...wall.openings], () => paintOpenings(wall, undefined, look)),
    ),
  ];
}

function spotWork(view: PlanView, look: Look, tagsOf: Showing['tagsOf']): Painted[] {
  const entrances = view.entrances.map((record) => {
    const towards = stepInside(view, record.at);
    return kept(record, 'spot', towards, () => paintEntrance(record, { towards }, look));
  });
  if (look.pxPerMm * 1000 < TAGS_FROM_PX_PER_M) return entrances;
  // A spot is little without its tag: the two are shown together.
  const of = <T>(type: RecordType, records: readonly T[]): readonly T[] => (tagsOf?.has(type) === false ? [] : records);
  return [
    ...entrances,
    ...of('reading', view.readings).map((record) =>
      kept(record, 'spot', [], () => paintReading(record, undefined, look)),
    ),
    ...of('note', view.notes).map((record) => kept(record, 'spot', [], () => paintNote(record, undefined, look))),
    ...of('photo', view.photos).map((record) => kept(record, 'spot', [], () => paintPhoto(record, undefined, look))),
    ...of('service', view.services).map((record) =>
      kept(record, 'spot', [], () => paintService(record, undefined, look)),
    ),
    ...of('dimension', view.dimensions).map((record) =>
      kept(record, 'spot', [look.pxPerMm, look.print, view.lengthText(distanceSample)], () =>
        paintDimension(record, view, look),
      ),
    ),
  ];
}

/** Any length will do to notice that lengths are shown in another unit. */
const distanceSample = 1234;

/** Corner numbers of what is picked, as short lines that plates keep off. */
function numberLines(picked: readonly Prim[], pxPerMm: number): (readonly Point[])[] {
  return picked.flatMap((prim) => {
    if (prim.kind !== 'text') return [];
    const [dx, dy] = prim.offsetPx ?? [0, 0];
    const x = prim.at[0] + dx / pxPerMm;
    const y = prim.at[1] + dy / pxPerMm;
    const half = prim.px / 2 / pxPerMm;
    return [
      [
        [x - half, y - half],
        [x + half, y + half],
      ] as const,
    ];
  });
}

function pickedOf(view: PlanView, { picked, pickedEdges, cornerNumbers }: Showing, pxPerMm: number): readonly Prim[] {
  const prims = picked.flatMap((id) => pickedPrims(view, id, pickedEdges));
  return withRoom(prims, pxPerMm, cornerNumbers && picked.length === 1);
}

/** Only why a number is what it is: no zones, no reach. */
function bared(showing: Showing): Showing {
  return showing.lit === null ? showing : { ...showing, zones: false, reach: 'none', asked: null, lanes: null };
}

/** The plates beside items. By themselves, because they may stay where they are while a gesture runs. */
export function paintTags(view: PlanView, look: Look, asked: Showing = SHOW_ALL): readonly Painted[] {
  const showing = bared(asked);
  if (!showing.tags || showing.pageAlone) return [];
  const picked = pickedOf(view, showing, look.pxPerMm);
  const options: TagOptions = {
    picked: new Set(showing.picked),
    zones: showing.zones,
    tight: showing.reach !== 'none',
    kinds: showing.tagsOf,
    ...(showing.doorText ? { doorText: showing.doorText } : {}),
    ...(showing.zoneNames ? { zoneNames: showing.zoneNames } : {}),
  };
  const lines = [...linesToSpare(view, look.pxPerMm), ...numberLines(picked, look.pxPerMm)];
  const plates = placeTags(tagWishes(view, look, options), lines, look.pxPerMm, {
    keepAll: look.print,
    within: showing.within ?? null,
  });
  return plates.map((plate) => painted(plate.text, [plate]));
}

/** What is picked, lit on top of all else, and above it what is asked about. */
export function paintPicked(view: PlanView, look: Look, asked: Showing): readonly Painted[] {
  const shown = bared(asked);
  const prims = pickedOf(view, shown, look.pxPerMm);
  return [
    ...(prims.length > 0 ? [painted('picked', prims)] : []),
    ...(shown.asked ? [painted('asked', askedSpotPrims(shown.asked, view, look))] : []),
  ];
}

function pageWork(view: PlanView, look: Look, { pages, pageAlone = false }: Showing): Painted[] {
  if (look.print || !pages) return [];
  return view.pages.map((page) => {
    const matrix = pageMatrix(page);
    const shown = pageAlone ? { ...page, fade: 1 } : page;
    return kept(page, 'page', [...matrix, pageAlone], () => paintPage(shown, matrix, look));
  });
}

/** One floor as prims, class by class in `PAINT_ORDER`. Pure; screen and paper draw exactly this. */
export function paintFloor(view: PlanView, look: Look, showing: Showing = SHOW_ALL): PaintedFloor {
  const shown = bared(showing);
  return {
    page: pageWork(view, look, shown),
    ...zoneWork(view, shown, look),
    reach: showing.lit
      ? [painted('lit', litPrims(view, showing.lit))]
      : [...reachOf(view, shown), ...lanesWork(view, shown.lanes ?? null, look)],
    findings: [
      ...view.outOfScope.map((area) => kept(area, 'scope', [], () => paintOutOfScope(area, undefined, look))),
      ...view.findings.map((finding) => kept(finding, 'finding', [], () => paintFinding(finding, undefined, look))),
      ...view.steps.map((steps) => kept(steps, 'steps', [], () => paintSteps(steps, undefined, look))),
    ],
    joints: view.joints.map((joint) => kept(joint, 'joint', [], () => paintJoint(joint, undefined, look))),
    cracks: view.cracks.map((crack) => kept(crack, 'crack', [], () => paintCrack(crack, undefined, look))),
    obstructions: view.obstructions.map((item) =>
      kept(item, 'obstruction', [], () => paintObstruction(item, undefined, look)),
    ),
    walls: wallWork(view, look),
    spots: [...spotWork(view, look, shown.tagsOf), ...narrowWork(view, shown, look)],
    tags: paintTags(view, look, showing),
    picked: paintPicked(view, look, showing),
  };
}
