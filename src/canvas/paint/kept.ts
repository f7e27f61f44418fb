import type { Box } from '../../geometry/box.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { boxOf } from '../../geometry/box.ts';
import type { Prim } from './prim.ts';

/** Prims of one record with the box they lie in (floor mm; marks and letters reach further by some px). */
export interface Painted {
  readonly id: string;
  readonly box: Box;
  readonly prims: readonly Prim[];
}

function* pointsOf(prim: Prim): Iterable<Point> {
  if (prim.kind === 'area') {
    for (const rings of prim.region) yield* rings[0] ?? [];
  } else if (prim.kind === 'line') {
    yield* prim.path;
  } else if (prim.kind === 'image') {
    const [a, b, c, d, e, f] = prim.matrix;
    const { widthPx: w, heightPx: h } = prim;
    yield [e, f];
    yield [a * w + e, b * w + f];
    yield [c * h + e, d * h + f];
    yield [a * w + c * h + e, b * w + d * h + f];
  } else {
    yield prim.at;
  }
}

export function boxOfPrims(prims: readonly Prim[]): Box {
  return boxOf(prims.flatMap((prim) => [...pointsOf(prim)]));
}

export function painted(id: string, prims: readonly Prim[]): Painted {
  return { id, box: boxOfPrims(prims), prims };
}

interface Entry {
  readonly given: readonly unknown[];
  readonly work: Painted;
}

const entries = new WeakMap<object, Map<string, Entry>>();

/** Paints a record once for what it was given. Records are never changed in place, so the same record gives the same prims, and their drawn paths can be kept too. */
export function kept(
  record: { readonly id: string },
  painter: string,
  given: readonly unknown[],
  paint: () => readonly Prim[],
): Painted {
  let byPainter = entries.get(record);
  if (!byPainter) {
    byPainter = new Map();
    entries.set(record, byPainter);
  }
  const known = byPainter.get(painter);
  if (known && known.given.length === given.length && known.given.every((value, i) => value === given[i]))
    return known.work;
  const work = painted(record.id, paint());
  byPainter.set(painter, { given, work });
  return work;
}
