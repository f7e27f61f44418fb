import type { FaceKind, FloorShape, MachineShape, Point, SlabShape } from '../src/geometry/floorShape.ts';
import { type Seeded, seeded } from './seeded.ts';
import { type Rect, columnAt, crackIn, findingIn, onGrid, rectRing, zonesOn } from './worldItems.ts';
import { freeWall, roomOf } from './worldWalls.ts';

/*
 * Three invented floors to measure on, each the same whenever it is built:
 *
 *   W1  a garage    41 m2 net   2 columns, 6 cracks
 *   W2  a hall   9,093 m2 net   250 columns, 40 walls, 300 findings, 400 cracks, 12 zones
 *   W3  a works 90,692 m2 net   2,480 columns, 300 walls, 3,000 findings, 5,000 cracks, 60 zones
 *
 * One machine: head 250 mm, clearance 50 mm from every kind of face, lap 50 mm, passage 600 mm.
 */
export type WorldName = 'W1' | 'W2' | 'W3';

export const WORLD_MACHINE: MachineShape = {
  id: 'small',
  headRadiusMm: 250,
  clearanceMm: { wall: 50, obstruction: 50, drop: 50, stop: 50 },
  lapMm: 50,
  passageMm: 600,
  heightMm: 1200,
};

interface Plan {
  readonly seed: number;
  /** Columns across and down, and their pitch in mm; the outline lies one pitch beyond the outer ones. */
  readonly columns: readonly [number, number];
  readonly pitch: readonly [number, number];
  readonly rooms: number;
  readonly freeWalls: number;
  readonly findings: number;
  readonly cracks: number;
  readonly zones: readonly [number, number];
}

const PLANS: Readonly<Record<Exclude<WorldName, 'W1'>, Plan>> = {
  W2: {
    seed: 20_002,
    columns: [25, 10],
    pitch: [5700, 5628.8],
    rooms: 6,
    freeWalls: 16,
    findings: 300,
    cracks: 400,
    zones: [4, 3],
  },
  W3: {
    seed: 30_003,
    columns: [62, 40],
    pitch: [6000, 5894.8],
    rooms: 50,
    freeWalls: 100,
    findings: 3000,
    cracks: 5000,
    zones: [10, 6],
  },
};

export function world(name: WorldName): FloorShape {
  return name === 'W1' ? garage() : hall(PLANS[name]);
}

function garage(): FloorShape {
  const area: Rect = { x: 0, y: 0, width: 6400, depth: 6434.375 };
  const chance = seeded(10_001);
  const ring = onGrid([
    [0, 0],
    [1900, 0],
    [4500, 0],
    [area.width, 0],
    [area.width, area.depth],
    [0, area.depth],
  ]);
  const faces: FaceKind[] = ['wall', 'run', 'wall', 'wall', 'wall', 'wall'];
  return {
    ...floorOn({ id: 'slab', ring, faces, passages: ring.map(() => null) }, [3200, 400]),
    solids: [
      { id: 'b1', ring: rectRing({ x: 2050, y: 3000, width: 300, depth: 300 }), solid: true },
      { id: 'b2', ring: rectRing({ x: 4050, y: 3000, width: 300, depth: 300 }), solid: true },
    ],
    lines: Array.from({ length: 6 }, (_, i) => crackIn(area, `c${i + 1}`, chance)),
  };
}

function hall(plan: Plan): FloorShape {
  const chance = seeded(plan.seed);
  const [across, down] = plan.columns;
  const [pitchX, pitchY] = plan.pitch;
  const area: Rect = { x: 0, y: 0, width: (across + 1) * pitchX, depth: (down + 1) * pitchY };
  const margin: Rect = { x: 2000, y: 2000, width: area.width - 4000, depth: area.depth - 4000 };
  return {
    ...floorOn(slabOf(area), [pitchX / 2, pitchY / 2]),
    solids: Array.from({ length: across * down }, (_, i) => {
      const at: Point = [((i % across) + 1) * pitchX, (Math.floor(i / across) + 1) * pitchY];
      return columnAt(at, `b${i + 1}`, chance);
    }),
    walls: wallsOf(plan, chance),
    zones: zonesOn(margin, plan.zones[0], plan.zones[1], WORLD_MACHINE.id, chance),
    findings: Array.from({ length: plan.findings }, (_, i) => findingIn(area, `f${i + 1}`, chance)),
    lines: Array.from({ length: plan.cracks }, (_, i) => crackIn(area, `c${i + 1}`, chance)),
  };
}

function floorOn(slab: SlabShape, entrance: Point): FloorShape {
  return {
    slabs: [slab],
    walls: [],
    solids: [],
    outOfScope: [],
    zones: [],
    restMachine: WORLD_MACHINE.id,
    findings: [],
    lines: [],
    machines: [WORLD_MACHINE],
    entrances: [{ id: 'e1', at: entrance, widthMm: null, heightMm: null }],
  };
}

/*
 *   +------------+    walls all round but for a gate beyond which the floor runs on, a doorway where
 *   |            |    work stops, a loading edge that drops, and a corner that is cut off by a room
 *   |          +-+    of another building
 *   +-run--stop+
 */
function slabOf({ width, depth }: Rect): SlabShape {
  const corners: readonly (readonly [x: number, y: number, face: FaceKind])[] = [
    [0, 0, 'wall'],
    [8000, 0, 'run'],
    [12_000, 0, 'wall'],
    [20_000, 0, 'stop'],
    [21_200, 0, 'wall'],
    [width - 4000, 0, 'wall'],
    [width - 4000, 3000, 'wall'],
    [width, 3000, 'drop'],
    [width, depth, 'wall'],
    [0, depth, 'wall'],
  ];
  const ring = onGrid(corners.map(([x, y]): Point => [x, y]));
  return { id: 'slab', ring, faces: corners.map(([, , face]) => face), passages: ring.map(() => null) };
}

/** One wall or one room to a block of three by three bays, never two to one; shuffled over the floor. */
function wallsOf(plan: Plan, chance: Seeded): FloorShape['walls'] {
  const [pitchX, pitchY] = plan.pitch;
  const [blocksX, blocksY] = [Math.floor((plan.columns[0] + 1) / 3), Math.floor((plan.columns[1] + 1) / 3)];
  const blocks = shuffled(
    Array.from({ length: blocksX * blocksY }, (_, i) => i),
    chance,
  );
  const cornerOf = (block: number): Point => [(block % blocksX) * 3 * pitchX, Math.floor(block / blocksX) * 3 * pitchY];
  const rooms = blocks.slice(0, plan.rooms).flatMap((block, i) => {
    const [x, y] = cornerOf(block);
    const bay = { x: x + pitchX * 0.55, y: y + pitchY * 0.55, width: pitchX, depth: pitchY };
    return roomOf(bay, `r${i + 1}`, i % 10 === 5, chance);
  });
  const free = blocks.slice(plan.rooms, plan.rooms + plan.freeWalls).map((block, i) => {
    const [x, y] = cornerOf(block);
    return freeWall([x + pitchX, y + pitchY], pitchX * chance.between(0.9, 1.8), `w${i + 1}`, chance);
  });
  return [...rooms, ...free];
}

function shuffled(list: readonly number[], chance: Seeded): number[] {
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i -= 1) {
    const j = chance.whole(0, i);
    [mixed[i], mixed[j]] = [mixed[j] as number, mixed[i] as number];
  }
  return mixed;
}
