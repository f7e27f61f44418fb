import { REST, type Point, type Region, type ZoneShape } from './floorShape.ts';
import { boxOf, boxesMeet } from './box.ts';
import type { NotedClips } from './clipNotes.ts';
import { between } from './point.ts';
import { type RegionIndex, regionIndex } from './regionIndex.ts';

/*
 * Zones lie on each other like sheets of paper: the later one wins. What none covers is the rest.
 *
 *   +-------+
 *   | 1  +--+----+
 *   |    |  2    |   rest
 *   +----+-------+
 */
export interface Partition {
  /** The part of a region in each zone, by id, and in the rest; only the zones asked for. Regions must not overlap themselves. */
  split(region: Region, only?: ReadonlySet<string>): ReadonlyMap<string, Region>;
  /** Id of the zone on top at a place; REST where there is none. */
  zoneAt(p: Point): string;
  /** Shares of a-b, from 0 to 1 in order, between which the zone does not change. */
  cuts(a: Point, b: Point): readonly number[];
}

interface Sheet {
  readonly id: string;
  readonly whole: Region;
  readonly wholeIndex: RegionIndex;
  /** Without what lies on top of it. */
  readonly seen: Region;
  readonly seenIndex: RegionIndex;
}

export function partitionOf(zones: readonly ZoneShape[], clips: NotedClips): Partition {
  const sheets = zones.map((zone, i): Sheet => {
    const whole: Region = [[zone.ring]];
    const box = boxOf(zone.ring);
    const above = zones.slice(i + 1).filter((other) => boxesMeet(box, boxOf(other.ring)));
    const seen = clips.subtract(
      zone.id,
      whole,
      above.map((other) => [other.ring]),
    );
    return { id: zone.id, whole, wholeIndex: regionIndex(whole), seen, seenIndex: regionIndex(seen) };
  });
  return {
    split: (region, only) => split(region, sheets, clips, only),
    zoneAt: (p) => sheets.findLast((sheet) => sheet.wholeIndex.contains(p))?.id ?? REST,
    cuts: (a, b) =>
      [...new Set([0, 1, ...sheets.flatMap((sheet) => sheet.wholeIndex.cuts(a, b))])].toSorted((x, y) => x - y),
  };
}

function split(
  region: Region,
  sheets: readonly Sheet[],
  clips: NotedClips,
  only?: ReadonlySet<string>,
): ReadonlyMap<string, Region> {
  const asked = sheets.filter((sheet) => !only || only.has(sheet.id));
  const parts = new Map<string, Region>(asked.map((sheet) => [sheet.id, partIn(region, sheet, clips)]));
  if (!only || only.has(REST)) parts.set(REST, partInRest(region, sheets, clips));
  return parts;
}

/** Only polygons that a border of the zone may cut are cut; the others are in or out as a whole. */
function partIn(region: Region, sheet: Sheet, clips: NotedClips): Region {
  const whole = region.filter((polygon) => liesIn(polygon, sheet.seenIndex) === 'in');
  const cut = region.filter((polygon) => liesIn(polygon, sheet.seenIndex) === 'cut');
  return [...whole, ...clips.intersect(sheet.id, cut, sheet.seen)];
}

function partInRest(region: Region, sheets: readonly Sheet[], clips: NotedClips): Region {
  const outside = region.filter((polygon) => sheets.every((sheet) => liesIn(polygon, sheet.wholeIndex) === 'out'));
  const cut = region.filter((polygon) => {
    const places = sheets.map((sheet) => liesIn(polygon, sheet.wholeIndex));
    return !places.includes('in') && places.includes('cut');
  });
  return [
    ...outside,
    ...clips.subtract(
      REST,
      cut,
      sheets.flatMap((sheet) => sheet.whole),
    ),
  ];
}

function liesIn(polygon: Region[number], zone: RegionIndex): 'in' | 'out' | 'cut' {
  const outer = polygon[0] ?? [];
  const box = boxOf(outer);
  if (!boxesMeet(box, zone.box)) return 'out';
  if (zone.outlineMeets(box)) return 'cut';
  const first = outer[0];
  return first && zone.contains(first) ? 'in' : 'out';
}

/** A segment cut where the zone changes: each piece with its zone. */
export function zonesAlong(
  partition: Partition,
  a: Point,
  b: Point,
): readonly { readonly zone: string; readonly from: number; readonly to: number }[] {
  const cuts = partition.cuts(a, b);
  const pieces: { zone: string; from: number; to: number }[] = [];
  for (let i = 0; i + 1 < cuts.length; i += 1) {
    const from = cuts[i] as number;
    const to = cuts[i + 1] as number;
    const zone = partition.zoneAt(between(a, b, (from + to) / 2));
    const last = pieces.at(-1);
    if (last && last.zone === zone) last.to = to;
    else pieces.push({ zone, from, to });
  }
  return pieces;
}
