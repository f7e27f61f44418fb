import type {
  FaceKind,
  FloorShape,
  LineShape,
  Point,
  Ring,
  SolidShape,
  WallShape,
} from '../src/geometry/floorShape.ts';
import { distance, dot, minus, unit } from '../src/geometry/point.ts';
import type { Cell } from '../src/model/cell.ts';
import { applyCells, cellsFor, EMPTY_DOC, type Doc } from '../src/model/doc.ts';
import { keysAfter } from '../src/model/order.ts';
import type { RecordOf } from '../src/model/records/all.ts';
import type { Edge } from '../src/model/records/slab.ts';

/*
 * A floor to measure on (worlds.ts) as a job that the app can open: the same slab, columns, walls, findings, cracks
 * and zones as records, with the same machine. Invented, like the floors.
 */
export const WORLD_FLOOR = 'floor:world';

const DOOR_HEIGHT_MM = 2100;

const EDGES: Readonly<Record<Exclude<FaceKind, 'obstruction'>, Edge>> = {
  wall: { kind: 'wall' },
  drop: { kind: 'drop' },
  stop: { kind: 'open', beyond: 'stop' },
  run: { kind: 'open', beyond: 'run' },
};

export function worldJob(name: string, shape: FloorShape): Doc {
  return applyCells(EMPTY_DOC, [
    ...headCells(name, shape),
    ...inOrder(shape.slabs, ({ id, ring, faces }) =>
      cellsFor(named('slab', id), {
        ...itemOf(id),
        outline: ring.map(([x, y], i) => ({ x, y, edge: edgeOf(faces[i]) })),
      }),
    ),
    ...inOrder(shape.walls, wallCells),
    ...inOrder(shape.solids, ({ id, ring }: SolidShape) =>
      cellsFor(named('obstruction', id), {
        ...itemOf(id),
        kind: 'column',
        shape: { form: 'polygon', ring },
        under: 'none',
      }),
    ),
    ...inOrder(shape.zones, ({ id, ring }) =>
      cellsFor(named('zone', id), { ...itemOf(id), ...ZONE, covers: 'ring', ring }),
    ),
    ...inOrder(shape.findings, ({ id, ring }) =>
      cellsFor(named('finding', id), { ...itemOf(id), kind: 'oil_light', ring }),
    ),
    ...inOrder(shape.lines, ({ id, path }: LineShape) =>
      cellsFor(named('crack', id), { ...itemOf(id), path, widthMm: null, depthMm: null, behaviour: 'notJudged' }),
    ),
    ...inOrder(shape.entrances, ({ id, at, widthMm, heightMm }) =>
      cellsFor(named('entrance', id), { ...itemOf(id), at, widthMm, heightMm }),
    ),
  ]);
}

const ZONE = { place: 'indoor', wetAllowed: false, hardness: 'medium' } as const;

/** A record's id has no dots in it. */
function named<T extends string>(type: T, id: string): `${T}:${string}` {
  return `${type}:${id.replaceAll('.', '-')}`;
}

function itemOf(id: string): Pick<RecordOf<'crack'>, 'floor' | 'tag'> {
  return { floor: WORLD_FLOOR, tag: id.toUpperCase() };
}

function edgeOf(face: FaceKind | undefined): Edge {
  return face === undefined || face === 'obstruction' ? EDGES.wall : EDGES[face];
}

/** Cells of a list of things, each record with the order in which it stands in the list. */
function inOrder<T>(things: readonly T[], cellsOf: (thing: T) => readonly Cell[]): Cell[] {
  const orders = keysAfter(null, things.length);
  return things.flatMap((thing, i) => {
    const cells = cellsOf(thing);
    const [id] = cells[0] ?? [];
    return id === undefined ? [] : [...cells, [id, 'order', orders[i]] as const];
  });
}

function headCells(name: string, { machines }: FloorShape): Cell[] {
  const no = { answer: 'no', by: 'Bench', on: '2030-01-01' } as const;
  const job = cellsFor('job:world', {
    name,
    units: 'metric',
    currency: 'USD',
    invented: true,
    builtBefore1981: no,
    coatingOrTile: no,
    inSlab: no,
    gasAppliance: no,
  });
  const fleet = machines.flatMap(({ id, headRadiusMm, clearanceMm, lapMm, passageMm, heightMm }) =>
    cellsFor(named('machine', id), {
      method: 'grinder_small',
      name: 'Small grinder',
      cutWidthMm: 2 * headRadiusMm,
      bodyWidthMm: passageMm,
      bodyLengthMm: passageMm,
      heightMm,
      turningMm: 0,
      smallestOpeningMm: passageMm,
      clearanceMm,
      lapMm,
    }),
  );
  return [...job, ...cellsFor(WORLD_FLOOR, { name: 'Ground floor' }), ...fleet];
}

/** A wall's body is a rectangle: its path runs along the middle of the longer side, its doorways along the path. */
function wallCells({ id, body, gaps }: WallShape): Cell[] {
  const { from, to, thicknessMm } = middleLine(body);
  const way = unit(minus(to, from));
  const wall = named('wall', id);
  const doors = gaps.flatMap(({ passage, ring }) => {
    const along = ring.map((corner) => dot(minus(corner, from), way));
    return cellsFor(named('opening', passage.id), {
      wall,
      tag: passage.id.toUpperCase(),
      atMm: Math.max(0, Math.min(...along)),
      widthMm: passage.widthMm,
      heightMm: passage.heightMm ?? DOOR_HEIGHT_MM,
    });
  });
  return [...cellsFor(wall, { ...itemOf(id), path: [from, to], thicknessMm }), ...doors];
}

function middleLine(body: Ring): { readonly from: Point; readonly to: Point; readonly thicknessMm: number } {
  const [a, b, c, d] = body as readonly [Point, Point, Point, Point];
  const [ab, bc] = [distance(a, b), distance(b, c)];
  return ab > bc
    ? { from: middle(a, d), to: middle(b, c), thicknessMm: bc }
    : { from: middle(a, b), to: middle(d, c), thicknessMm: ab };
}

function middle(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
