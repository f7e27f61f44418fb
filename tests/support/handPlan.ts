import type { CommandCall, RecordId } from '../../src/model/cell.ts';
import { cellsFor, EMPTY_DOC, applyCells, type Doc } from '../../src/model/doc.ts';
import type { NewId } from '../../src/model/id.ts';
import { planStore } from '../../src/model/store.ts';
import { runCommand } from '../../src/edit/run.ts';

export const FLOOR: RecordId = 'floor:ground';

/** A job with one empty floor. Invented. */
export const emptyPlan: Doc = applyCells(EMPTY_DOC, [
  ...cellsFor('job:one', { name: 'Invented hall', units: 'metric', currency: 'XTS' }),
  ...cellsFor('floor:ground', { name: 'Ground floor' }),
]);

/** The plan after these calls; a refusal is an error of the test. */
export function planWith(calls: readonly CommandCall[], start: Doc = emptyPlan): Doc {
  const store = planStore({ doc: start });
  for (const call of calls) {
    const result = runCommand(store, call);
    if ('refused' in result) throw new Error(`${call.name} was refused: ${result.refused}`);
  }
  return store.getState();
}

/** Ids in order: slab:1, slab:2, wall:3 … */
export function countingIds(first = 1): NewId {
  let next = first;
  return (type) => `${type}:${next++}`;
}

/** A slab 6 m by 4 m, `slab:a`, with its first corner at the origin. */
export const room: CommandCall = {
  name: 'drawSlab',
  args: {
    id: 'slab:a',
    floor: FLOOR,
    ring: [
      [0, 0],
      [6000, 0],
      [6000, 4000],
      [0, 4000],
    ],
  },
};

/** A wall of two edges, 3 m and 2 m, `wall:a`. */
export const wall: CommandCall = {
  name: 'drawWall',
  args: {
    id: 'wall:a',
    floor: FLOOR,
    path: [
      [1000, 1000],
      [4000, 1000],
      [4000, 3000],
    ],
    thicknessMm: 100,
  },
};

export function openingOn(
  on: RecordId,
  edge: number,
  atMm: number,
  widthMm = 900,
  id: RecordId = 'opening:a',
): CommandCall {
  return { name: 'addOpening', args: { id, on, edge, atMm, widthMm, heightMm: 2100 } };
}
