import type { FloorMeasure, Point, Region, TightPiece, ZoneMeasure } from '../../geometry/floorShape.ts';
import { REST } from '../../geometry/floorShape.ts';
import { onFloor, recordOf, recordsOf, type Doc, type Held } from '../../model/doc.ts';

/** What painting needs and the plan itself does not say: measured outlines, required profiles, holds, wording. */
export interface ViewNotes {
  /** null while nothing is measured yet: zones are then drawn by their own rings. */
  readonly measure?: FloorMeasure | null;
  /** Required profile by zone id, CSP; null: not settled. Without an entry the zone's own `csp.min` is taken. */
  readonly csp?: Readonly<Record<string, number | null>>;
  /** Zones with an open hold. */
  readonly held?: ReadonlySet<string>;
  readonly lengthText?: (mm: number) => string;
  /** Tight spots that have a number, biggest first. */
  readonly tight?: readonly TightSpot[];
}

export interface ZoneView {
  readonly zone: Held<'zone'>;
  /** Place in the order of zones: chooses the tint. */
  readonly index: number;
  /** The number on its plate. */
  readonly number: string;
  readonly csp: number | null;
  readonly held: boolean;
  readonly region: Region;
  readonly measure: ZoneMeasure | null;
}

export interface WallView {
  readonly wall: Held<'wall'>;
  readonly openings: readonly Held<'opening'>[];
}

export interface TightSpot {
  readonly tag: string;
  readonly piece: TightPiece;
}

/** One floor, ready to be painted. Records keep their identity, so that painted work can be kept by record. */
export interface PlanView {
  readonly floor: Held<'floor'> | null;
  readonly pages: readonly Held<'page'>[];
  readonly slabs: readonly Held<'slab'>[];
  readonly walls: readonly WallView[];
  readonly obstructions: readonly Held<'obstruction'>[];
  readonly outOfScope: readonly Held<'outOfScope'>[];
  readonly steps: readonly Held<'steps'>[];
  readonly cracks: readonly Held<'crack'>[];
  readonly joints: readonly Held<'joint'>[];
  readonly findings: readonly Held<'finding'>[];
  readonly zones: readonly ZoneView[];
  readonly entrances: readonly Held<'entrance'>[];
  readonly services: readonly Held<'service'>[];
  readonly readings: readonly Held<'reading'>[];
  readonly notes: readonly Held<'note'>[];
  readonly photos: readonly Held<'photo'>[];
  readonly dimensions: readonly Held<'dimension'>[];
  readonly measure: FloorMeasure | null;
  readonly tight: readonly TightSpot[];
  readonly lengthText: (mm: number) => string;
}

function metres(mm: number): string {
  return `${(mm / 1000).toFixed(2)} m`;
}

function zoneViews(doc: Doc, floor: string, notes: ViewNotes): ZoneView[] {
  const measured = new Map((notes.measure?.zones ?? []).map((zone) => [zone.id, zone]));
  return onFloor(doc, 'zone', floor).map((zone, index) => {
    const measure = measured.get(zone.id) ?? (zone.covers === 'rest' ? (measured.get(REST) ?? null) : null);
    const said = notes.csp?.[zone.id];
    return {
      zone,
      index,
      number: zone.tag.replace(/^\D+/, '') || String(index + 1),
      csp: said === undefined ? (zone.csp?.min ?? null) : said,
      held: notes.held?.has(zone.id) ?? false,
      region: measure?.net ?? (zone.ring ? [[zone.ring]] : []),
      measure,
    };
  });
}

function openingsByWall(openings: readonly Held<'opening'>[]): ReadonlyMap<string, readonly Held<'opening'>[]> {
  const byWall = new Map<string, Held<'opening'>[]>();
  for (const opening of openings) {
    const list = byWall.get(opening.wall);
    if (list) list.push(opening);
    else byWall.set(opening.wall, [opening]);
  }
  return byWall;
}

export function planView(doc: Doc, floor: string, notes: ViewNotes = {}): PlanView {
  const openings = openingsByWall(recordsOf(doc, 'opening'));
  const measure = notes.measure ?? null;
  return {
    floor: recordOf(doc, 'floor', floor),
    pages: onFloor(doc, 'page', floor).filter((page) => page.hidden !== true),
    slabs: onFloor(doc, 'slab', floor),
    walls: onFloor(doc, 'wall', floor).map((wall) => ({
      wall,
      openings: openings.get(wall.id) ?? [],
    })),
    obstructions: onFloor(doc, 'obstruction', floor),
    outOfScope: onFloor(doc, 'outOfScope', floor),
    steps: onFloor(doc, 'steps', floor),
    cracks: onFloor(doc, 'crack', floor),
    joints: onFloor(doc, 'joint', floor),
    findings: onFloor(doc, 'finding', floor),
    zones: zoneViews(doc, floor, notes),
    entrances: onFloor(doc, 'entrance', floor),
    services: onFloor(doc, 'service', floor),
    readings: onFloor(doc, 'reading', floor),
    notes: onFloor(doc, 'note', floor),
    photos: onFloor(doc, 'photo', floor),
    dimensions: onFloor(doc, 'dimension', floor),
    measure,
    tight: notes.tight ?? [],
    lengthText: notes.lengthText ?? metres,
  };
}

/** Corners of a slab as points. */
export function slabRing(slab: {
  readonly outline: readonly { readonly x: number; readonly y: number }[];
}): readonly Point[] {
  return slab.outline.map(({ x, y }) => [x, y] as const);
}
