import type { Point } from '../../src/geometry/floorShape.ts';
import type { Cell, RecordId } from '../../src/model/cell.ts';
import { applyCells, cellsFor, EMPTY_DOC, type Doc } from '../../src/model/doc.ts';
import type { RecordOf, RecordType } from '../../src/model/records/all.ts';
import type { Edge } from '../../src/model/records/slab.ts';

/** Builds a job record by record, for tests. Coordinates in mm. */
export const FLOOR = 'floor:ground' as const;

export function record<T extends RecordType>(id: `${T}:${string}`, fields: RecordOf<T>): Cell[] {
  return cellsFor(id, fields);
}

export function docOf(...cells: readonly (readonly Cell[])[]): Doc {
  return applyCells(EMPTY_DOC, cells.flat());
}

export function withCells(doc: Doc, ...cells: readonly (readonly Cell[])[]): Doc {
  return applyCells(doc, cells.flat());
}

/** One field of one record. */
export function set(id: RecordId, slot: string, value: Cell[2]): Cell[] {
  return [[id, slot, value]];
}

/** A job with one floor and all four questions answered "no". */
export function jobCells(fields: Partial<RecordOf<'job'>> = {}): Cell[] {
  const no = { answer: 'no', by: 'Tester', on: '2030-01-01' } as const;
  return [
    ...record('job:test', {
      name: 'Test job',
      units: 'metric',
      currency: 'USD',
      builtBefore1981: no,
      coatingOrTile: no,
      inSlab: no,
      gasAppliance: no,
      ...fields,
    }),
    ...record(FLOOR, { name: 'Ground floor' }),
  ];
}

export function slabCells(
  ring: readonly Point[],
  edges: readonly (Edge | null)[] = [],
  id: `slab:${string}` = 'slab:a',
) {
  const outline = ring.map(([x, y], i) => ({ x, y, edge: edges[i] ?? { kind: 'wall' as const } }));
  return record(id, { floor: FLOOR, tag: 'S1', outline });
}

/** Rectangle from the origin, mm. */
export function rectangle(width: number, depth: number, at: Point = [0, 0]): Point[] {
  return [at, [at[0] + width, at[1]], [at[0] + width, at[1] + depth], [at[0], at[1] + depth]];
}

export function zoneCells(id: `zone:${string}`, ring: readonly Point[], more: Partial<RecordOf<'zone'>> = {}): Cell[] {
  return record(id, {
    floor: FLOOR,
    tag: id.slice(5),
    covers: 'ring',
    ring,
    place: 'indoor',
    wetAllowed: false,
    hardness: 'medium',
    ...more,
  });
}

/** The rest of the slab with values of its own. */
export function restCells(more: Partial<RecordOf<'zone'>> = {}): Cell[] {
  const rest: RecordOf<'zone'> = {
    floor: FLOOR,
    tag: 'rest',
    covers: 'rest',
    place: 'indoor',
    wetAllowed: false,
    hardness: 'medium',
    ...more,
  };
  return record('zone:rest', rest);
}

export function crackCells(
  id: `crack:${string}`,
  path: readonly Point[],
  more: Partial<RecordOf<'crack'>> = {},
): Cell[] {
  return record(id, { floor: FLOOR, tag: id.slice(6), path, widthMm: 2, depthMm: null, behaviour: 'static', ...more });
}

export function findingCells(
  id: `finding:${string}`,
  kind: string,
  ring: readonly Point[],
  more: Partial<RecordOf<'finding'>> = {},
): Cell[] {
  return record(id, { floor: FLOOR, tag: id.slice(8), kind, ring, ...more });
}

/** One recipe with one pass. */
export function recipeCells(id: string, pass: Partial<RecordOf<'pass'>> = {}): Cell[] {
  return [
    ...record(`recipe:${id}`, { name: id }),
    ...record(`pass:${id}`, {
      recipe: `recipe:${id}`,
      method: 'grinder_small',
      machine: null,
      times: 2,
      edgeMethod: 'hand_grinder',
      edgeTimes: 1,
      ...pass,
    }),
  ];
}
