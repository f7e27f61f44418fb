import type { Snap, SnapSource } from './snap.ts';

/** Whole steps of the floor's frame: for sketching without a page. */
export function gridSource(stepMm: number): SnapSource {
  return {
    kind: 'grid',
    *find({ at }): Iterable<Snap> {
      yield {
        at: [Math.round(at[0] / stepMm) * stepMm, Math.round(at[1] / stepMm) * stepMm],
        kind: 'grid',
        on: null,
        along: null,
        guides: [],
      };
    },
  };
}
