import type { LineShape, Point } from './floorShape.ts';
import { type Partition, zonesAlong } from './partition.ts';
import { between, distance } from './point.ts';
import { type RegionIndex, insideShares } from './regionIndex.ts';

/** A crack drawn along the very edge of the floor is on it. */
const BESIDE_MM = 0.05;

/** Metres of each line on the net floor, by zone id and then by line id. */
export function linesByZone(
  lines: readonly LineShape[],
  net: RegionIndex,
  partition: Partition,
): ReadonlyMap<string, Record<string, number>> {
  const metres = new Map<string, Record<string, number>>();
  for (const { id, path } of lines) {
    for (let i = 0; i + 1 < path.length; i += 1) {
      for (const piece of netPieces(path[i] as Point, path[i + 1] as Point, net, partition)) {
        const zone = metres.get(piece.zone) ?? {};
        zone[id] = (zone[id] ?? 0) + piece.lengthM;
        metres.set(piece.zone, zone);
      }
    }
  }
  return metres;
}

function netPieces(
  a: Point,
  b: Point,
  net: RegionIndex,
  partition: Partition,
): { readonly zone: string; readonly lengthM: number }[] {
  return insideShares(net, a, b, BESIDE_MM).flatMap(([from, to]) => {
    const [start, end] = [between(a, b, from), between(a, b, to)];
    const size = distance(start, end) / 1000;
    return zonesAlong(partition, start, end).map((piece) => ({
      zone: piece.zone,
      lengthM: (piece.to - piece.from) * size,
    }));
  });
}
