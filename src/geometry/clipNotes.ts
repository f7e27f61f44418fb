import type { GeometryFault, Region } from './floorShape.ts';
import { type ClipResult, intersect, subtract, union } from './clip.ts';

/**
 * Booleans for a sum that must go on: a failure is noted as a fault of the record at hand, and the
 * answer is the one that loses no floor (what was there before, or nothing shared).
 */
export interface NotedClips {
  union(record: string, regions: readonly Region[]): Region;
  intersect(record: string, a: Region, b: Region): Region;
  subtract(record: string, a: Region, b: Region): Region;
}

export function notedClips(faults: GeometryFault[]): NotedClips {
  const answer = (record: string, result: ClipResult, otherwise: Region): Region => {
    if (result.ok) return result.region;
    faults.push({ record, code: result.code, at: otherwise[0]?.[0]?.[0] ?? null });
    return otherwise;
  };
  return {
    union: (record, regions) => answer(record, union(regions), regions.flat()),
    intersect: (record, a, b) => answer(record, intersect(a, b), []),
    subtract: (record, a, b) => answer(record, subtract(a, b), a),
  };
}
