import type { Point, Region, Ring, ZoneMeasure } from '../geometry/floorShape.ts';

/*
 * Outlines on their way from the worker to the page. A large floor has some hundred thousand points, and each as a list
 * of its own costs the page ten times what two numbers in a row do:
 *
 *   counts   polygons, rings of each, points of each ring, in reading order
 *   xy       x y x y x y ...
 */
export interface Packed {
  readonly counts: Uint32Array<ArrayBuffer>;
  readonly xy: Float64Array<ArrayBuffer>;
}

/** The parts of a zone that are outlines, or hold some. */
const OUTLINED = ['net', 'field', 'strip', 'tight', 'faceLines', 'fields'] as const;
export type Outlines = Pick<ZoneMeasure, (typeof OUTLINED)[number]>;

/** A zone as it is sent. `outlines` is null when they are those that were sent last for this zone. */
export interface ZoneParcel {
  readonly numbers: Omit<ZoneMeasure, keyof Outlines>;
  readonly outlines: OutlineParcel | null;
}

export interface OutlineParcel {
  readonly packed: Packed;
  readonly tight: readonly Omit<Outlines['tight'][number], 'region'>[];
  readonly faceLines: readonly Omit<Outlines['faceLines'][number], 'path'>[];
  readonly fields: readonly Omit<NonNullable<Outlines['fields']>[number], 'region'>[] | null;
}

export function outlinesOf({ net, field, strip, tight, faceLines, fields }: ZoneMeasure): Outlines {
  return { net, field, strip, tight, faceLines, ...(fields ? { fields } : {}) };
}

/** Nothing of these outlines has been made anew. */
export function areSameOutlines(one: Outlines, other: Outlines): boolean {
  return OUTLINED.every((part) => one[part] === other[part]);
}

export function packZone(zone: ZoneMeasure, sentLast: Outlines | undefined): ZoneParcel {
  const {
    net: _net,
    field: _field,
    strip: _strip,
    tight: _tight,
    faceLines: _lines,
    fields: _fields,
    ...numbers
  } = zone;
  const outlines = outlinesOf(zone);
  return { numbers, outlines: sentLast && areSameOutlines(sentLast, outlines) ? null : packOutlines(outlines) };
}

function packOutlines({ net, field, strip, tight, faceLines, fields }: Outlines): OutlineParcel {
  const regions = [net, field, strip, ...tight.map(({ region }) => region), ...(fields ?? []).map((one) => one.region)];
  return {
    packed: packed(
      regions,
      faceLines.map(({ path }) => path),
    ),
    tight: tight.map(({ region: _region, ...piece }) => piece),
    faceLines: faceLines.map(({ path: _path, ...line }) => line),
    fields: fields ? fields.map(({ region: _region, ...one }) => one) : null,
  };
}

function packed(regions: readonly Region[], paths: readonly Ring[]): Packed {
  const counts: number[] = [];
  const rings: Ring[] = [];
  for (const region of regions) {
    counts.push(region.length);
    for (const polygon of region) {
      counts.push(polygon.length);
      for (const ring of polygon) {
        counts.push(ring.length);
        rings.push(ring);
      }
    }
  }
  for (const path of paths) {
    counts.push(path.length);
    rings.push(path);
  }
  const xy = new Float64Array(2 * rings.reduce((sum, ring) => sum + ring.length, 0));
  let at = 0;
  for (const ring of rings) {
    for (const [x, y] of ring) {
      xy[at] = x;
      xy[at + 1] = y;
      at += 2;
    }
  }
  return { counts: Uint32Array.from(counts), xy };
}

/** What may be handed over instead of copied. */
export function loadOf({ outlines }: ZoneParcel): ArrayBuffer[] {
  return outlines ? [outlines.packed.counts.buffer, outlines.packed.xy.buffer] : [];
}

export function unpackOutlines({ packed: { counts, xy }, tight, faceLines, fields }: OutlineParcel): Outlines {
  let count = 0;
  let at = 0;
  const next = (): number => counts[count++] ?? 0;
  const list = <T>(one: () => T): T[] => Array.from({ length: next() }, one);
  const point = (): Point => {
    at += 2;
    return [xy[at - 2] ?? 0, xy[at - 1] ?? 0];
  };
  const region = (): Region => list(() => list(() => list(point)));
  const [net, field, strip] = [region(), region(), region()];
  const pieces = tight.map((piece) => ({ ...piece, region: region() }));
  const machines = fields?.map((one) => ({ ...one, region: region() }));
  const lines = faceLines.map((line) => ({ ...line, path: list(point) }));
  return { net, field, strip, tight: pieces, faceLines: lines, ...(machines ? { fields: machines } : {}) };
}
