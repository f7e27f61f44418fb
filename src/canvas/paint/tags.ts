import { formRing } from '../../geometry/formRing.ts';
import type { Point, Region, Ring } from '../../geometry/floorShape.ts';
import { boxOf, boxOfRegion } from '../../geometry/box.ts';
import { between, distance } from '../../geometry/point.ts';
import { pathLength, pointAt } from '../../geometry/polyline.ts';
import { ringContains } from '../../geometry/ring.ts';
import { nearestOnSegment } from '../../geometry/segment.ts';
import { typeOf, type RecordId } from '../../model/cell.ts';
import type { RecordType } from '../../model/records/all.ts';
import { ALL_TAGS_FROM_PX_PER_M, LETTERS, TAGS_FROM_PX_PER_M } from '../look.ts';
import { edgeLook } from './slab.ts';
import { plateSize } from './plate.ts';
import type { Look, TextLine, TextPrim } from './prim.ts';
import type { TagWish } from './tagPlaces.ts';
import { slabRing, type PlanView, type ZoneView } from './view.ts';
import { openingPath } from './wall.ts';

/** A way through or an edge that is no wall. */
export interface Door {
  readonly tag: string;
  readonly kind: 'opening' | 'stop' | 'run' | 'drop';
  readonly widthMm: number;
}

export interface TagOptions {
  readonly picked: ReadonlySet<string>;
  readonly zones: boolean;
  readonly tight: boolean;
  /** Kinds of items that get their plate; null: all. Doorways in the perimeter go with openings. */
  readonly kinds: ReadonlySet<RecordType> | null;
  /** What stands on the tag of a door, an open edge or a stop line. */
  readonly doorText?: (door: Door) => string;
  readonly zoneNames?: (zone: ZoneView) => readonly TextLine[];
}

function tagText(text: string, look: Look, chalk: boolean): TextPrim {
  return {
    kind: 'text',
    at: [0, 0],
    text,
    px: LETTERS[look.print ? 'paper' : 'screen'].tag,
    weight: 800,
    ink: chalk ? 'onChalk' : 'ink',
    plate: chalk ? 'chalk' : 'outlined',
  };
}

function middleOf(ring: Ring): Point {
  const box = boxOf(ring);
  return [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
}

/** Anchors along a line: its middle first, then towards both ends. */
function lineAnchors(path: readonly Point[]): Point[] {
  const size = pathLength(path);
  return [0.5, 0.3, 0.7, 0.15, 0.85].map((share) => pointAt(path, size * share)).filter((at) => at !== null);
}

function inside(region: Region, at: Point): boolean {
  return region.some(
    ([outer, ...holes]) => outer && ringContains(outer, at) && !holes.some((hole) => ringContains(hole, at)),
  );
}

function roomAt(region: Region, at: Point): number {
  let room = Infinity;
  for (const ring of region.flat()) {
    for (const [i, a] of ring.entries()) {
      room = Math.min(room, nearestOnSegment(at, a, ring[(i + 1) % ring.length] as Point).distance);
    }
  }
  return room;
}

/** An obstruction so large on the screen has its plate on itself, px. */
const ON_IT_FROM_PX = 40;

function sidePx(ring: Ring, look: Look): number {
  const box = boxOf(ring);
  return Math.min(box.maxX - box.minX, box.maxY - box.minY) * look.pxPerMm;
}

const SPOT_STEPS = 11;

/** Roomy places of a region, best first: of a grid of places those farthest from any edge, a little to the top left for choice. */
export function roomySpots(region: Region, count: number): Point[] {
  const box = boxOfRegion(region);
  const spots: { at: Point; room: number }[] = [];
  for (let i = 1; i < SPOT_STEPS; i += 1) {
    for (let j = 1; j < SPOT_STEPS; j += 1) {
      const at = [
        box.minX + ((box.maxX - box.minX) * i) / SPOT_STEPS,
        box.minY + ((box.maxY - box.minY) * j) / SPOT_STEPS,
      ] as const;
      if (inside(region, at)) spots.push({ at, room: roomAt(region, at) });
    }
  }
  if (spots.length === 0) return [middleOf(region[0]?.[0] ?? [[0, 0]])];
  return spots
    .toSorted((a, b) => b.room - a.room)
    .slice(0, count)
    .map((spot) => spot.at);
}

const spotsOf = new WeakMap<Region, Point[]>();

/** Where the number of a zone may stand, best first. Worked out once a region. */
export function zoneSpots(region: Region): Point[] {
  const known = spotsOf.get(region);
  if (known) return known;
  const spots = roomySpots(region, 24);
  spotsOf.set(region, spots);
  return spots;
}

/** The number of a zone: a square of ink; smaller where the zone is small. What stands beside it must fit into the zone, or its last line must. */
export function zoneNumber(view: ZoneView, look: Look, beside: readonly TextLine[] = []): TextPrim {
  const box = boxOfRegion(view.region);
  const wide = (box.maxX - box.minX) * look.pxPerMm;
  const least = Math.min(wide, (box.maxY - box.minY) * look.pxPerMm);
  const px = LETTERS[look.print ? 'paper' : 'screen'].zone;
  const small = least < px * 3.5;
  const plate: TextPrim = {
    kind: 'text',
    at: [0, 0],
    text: view.number,
    px: small ? px * 0.62 : px,
    weight: 800,
    ink: 'board',
    plate: 'solid',
  };
  const last = beside.at(-1);
  const offers = [...(small ? [] : [beside]), ...(last ? [[last]] : [])].filter((lines) => lines.length > 0);
  const fits = offers.find((lines) => plateSize({ ...plate, beside: lines }).width < wide * 0.92);
  return fits ? { ...plate, beside: fits } : plate;
}

/** A way through the perimeter is an edge of a slab; its plate is that of an opening. */
function kindOf(id: string): RecordType {
  const type = typeOf(id as RecordId) as RecordType;
  return type === 'slab' ? 'opening' : type;
}

/** Cracks, findings and ways through; what stands on the floor, readings and joints wait until there is room. */
const LAST_RANK_FROM_FAR = 4;

function itemWishes(view: PlanView, look: Look, options: TagOptions): TagWish[] {
  const wishes: TagWish[] = [];
  const far = !look.print && look.pxPerMm * 1000 < ALL_TAGS_FROM_PX_PER_M;
  const lastRank = far ? LAST_RANK_FROM_FAR : Infinity;
  const said = (door: Door): string => options.doorText?.(door) ?? door.tag;
  const wish = (id: string, tag: string, anchors: readonly Point[], rank: number, on = false): void => {
    if (tag === '' || anchors.length === 0) return;
    const picked = options.picked.has(id);
    if (!picked && options.kinds && !options.kinds.has(kindOf(id))) return;
    if (!picked && rank > lastRank) return;
    // What is picked has its plate before all others.
    wishes.push({ id, anchors, text: tagText(tag, look, picked), rank: picked ? -1 : rank, on });
  };
  for (const crack of view.cracks) wish(crack.id, crack.tag, lineAnchors(crack.path), 3);
  for (const joint of view.joints) wish(joint.id, joint.tag, lineAnchors(joint.path), 6);
  for (const finding of view.findings)
    wish(finding.id, finding.tag, [...roomySpots([[finding.ring]], 3), ...finding.ring], 3, true);
  for (const item of view.obstructions) {
    const ring = formRing(item.shape);
    const round = ring.length > 8 ? ring.filter((_, i) => i % 6 === 0) : ring;
    const holds = sidePx(ring, look) > ON_IT_FROM_PX;
    wish(item.id, item.tag, holds ? [middleOf(ring), ...round] : round, 5, holds);
  }
  for (const { wall, openings } of view.walls) {
    if (options.picked.has(wall.id)) wish(wall.id, wall.tag, lineAnchors(wall.path), 5);
    for (const opening of openings) {
      const path = openingPath({ wall, openings }, opening);
      wish(
        opening.id,
        said({ tag: opening.tag, kind: 'opening', widthMm: opening.widthMm }),
        lineAnchors(path).slice(0, 1),
        4,
      );
    }
  }
  for (const slab of view.slabs) {
    const ring = slabRing(slab);
    for (const [i, corner] of slab.outline.entries()) {
      const kind = edgeLook(corner.edge);
      if (kind === 'wall') continue;
      const a = ring[i] as Point;
      const b = ring[(i + 1) % ring.length] as Point;
      const text = said({ tag: corner.edge.tag ?? '', kind, widthMm: distance(a, b) });
      wish(`${slab.id}#${i}`, text, [between(a, b, 0.5), between(a, b, 0.25), between(a, b, 0.75)], 4);
    }
  }
  for (const area of view.outOfScope) wish(area.id, area.tag, roomySpots([[area.ring]], 3), 6, true);
  for (const steps of view.steps) wish(steps.id, steps.tag, steps.ring, 6);
  for (const spot of [...view.entrances, ...view.readings, ...view.notes, ...view.photos, ...view.services])
    wish(spot.id, spot.tag, [spot.at], 5);
  return wishes;
}

/** Every plate the floor wants at this scale. Far out only the zone numbers stay. */
export function tagWishes(view: PlanView, look: Look, options: TagOptions): TagWish[] {
  const zones = options.zones
    ? view.zones
        .filter((zone) => zone.region.length > 0)
        .map((zone): TagWish => ({
          id: zone.zone.id,
          anchors: zoneSpots(zone.region),
          text: zoneNumber(zone, look, options.zoneNames?.(zone)),
          rank: 0,
          on: true,
          // A number outside its zone names another one.
          stays: true,
        }))
    : [];
  if (look.pxPerMm * 1000 < TAGS_FROM_PX_PER_M) return zones;
  const tight = options.tight
    ? view.tight.map(({ tag, piece }): TagWish => ({
        id: tag,
        anchors: [piece.at],
        text: tagText(tag, look, false),
        rank: 2,
        on: false,
      }))
    : [];
  return [...zones, ...tight, ...itemWishes(view, look, options)];
}

function closed(ring: Ring): readonly Point[] {
  return ring[0] ? [...ring, ring[0]] : ring;
}

/** Half the size of the marks at spots, px. */
const SPOT_PX = 14;

function acrossSpot([x, y]: Point, reach: number): (readonly Point[])[] {
  return [
    [
      [x - reach, y],
      [x + reach, y],
    ],
    [
      [x, y - reach],
      [x, y + reach],
    ],
  ];
}

/** Lines that plates must not cover. */
export function linesToSpare(view: PlanView, pxPerMm: number): (readonly Point[])[] {
  const spots = [...view.entrances, ...view.readings, ...view.notes, ...view.photos, ...view.services];
  return [
    ...spots.flatMap((spot) => acrossSpot(spot.at, SPOT_PX / pxPerMm)),
    ...view.cracks.map((crack) => crack.path),
    ...view.joints.map((joint) => joint.path),
    ...view.walls.map(({ wall }) => wall.path),
    ...view.slabs.map((slab) => closed(slabRing(slab))),
    ...view.obstructions.map((item) => closed(formRing(item.shape))),
    ...[...view.steps, ...view.outOfScope, ...view.findings].map(({ ring }) => closed(ring)),
  ];
}
