import { axisRays, nearestOnRay, type SnapScene } from './floorLines.ts';
import type { Snap, SnapSource } from './snap.ts';

/** Straight across or straight down the plan, from the last point; and in line with the first. */
export function axisSource(scene: SnapScene): SnapSource {
  return {
    kind: 'axis',
    *find(query): Iterable<Snap> {
      const starts = [query.from, scene.own.length > 1 ? scene.own[0] : undefined];
      for (const start of starts) {
        if (!start) continue;
        for (const ray of axisRays(start)) {
          const at = nearestOnRay(ray, query.at);
          yield { at, kind: 'axis', on: null, along: ray.along, guides: [[start, at]] };
        }
      }
    },
  };
}
