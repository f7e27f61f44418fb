import type { FloorShape, MachineShape, Ring, SolidShape } from '../src/geometry/floorShape.ts';
import { measureFloor } from '../src/geometry/measureFloor.ts';
import { measureMemory } from '../src/geometry/measureMemory.ts';
import { timed } from './timed.ts';

/** How long a whole floor takes, from shape to measure, one thread. Read the ratios: machines differ. */
export const name = 'geometry';

const SMALL: MachineShape = {
  id: 'small',
  headRadiusMm: 250,
  clearanceMm: { wall: 50, obstruction: 50, drop: 600, stop: 50 },
  lapMm: 50,
  passageMm: 800,
  heightMm: 1200,
};

export async function run(print: (line: string) => void): Promise<void> {
  const floors = {
    'garage 41 m2': garageFloor(),
    'hall 24 x 16 m': hallFloor(),
    'warehouse 9,000 m2': warehouseFloor(),
  };
  let first = 0;
  for (const [title, shape] of Object.entries(floors)) {
    // One at a time: two measures at once would slow each other.
    // oxlint-disable-next-line no-await-in-loop
    const fresh = await timed(() => measureFloor(shape));
    const memory = measureMemory();
    let step = 0;
    // oxlint-disable-next-line no-await-in-loop
    const dragged = await timed(() => measureFloor(withCrackMoved(shape, (step += 1)), memory));
    first ||= fresh.medianMs;
    print(
      `${title}: median ${fresh.medianMs.toFixed(1)} ms (${(fresh.medianMs / first).toFixed(1)} x the garage), a crack dragged ${dragged.medianMs.toFixed(1)} ms`,
    );
  }
}

function withCrackMoved(shape: FloorShape, by: number): FloorShape {
  return {
    ...shape,
    lines: shape.lines.map((line, i) =>
      i === 0 ? { ...line, path: line.path.map(([x, y]) => [x + by, y] as const) } : line,
    ),
  };
}

function box(x: number, y: number, width: number, height: number): Ring {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function cracks(count: number, width: number, height: number): FloorShape['lines'] {
  return Array.from({ length: count }, (_, i) => {
    const x = ((i * 37) % 100) / 100;
    return {
      id: `crack${i}`,
      path: [
        [x * width, 0.1 * height],
        [(1 - x) * width, 0.5 * height],
        [x * width, 0.9 * height],
      ] as const,
    };
  });
}

function floor(width: number, height: number, solids: readonly SolidShape[], more: Partial<FloorShape>): FloorShape {
  const ring = box(0, 0, width, height);
  return {
    slabs: [{ id: 'slab', ring, faces: ['wall', 'wall', 'wall', 'wall'], passages: [null, null, null, null] }],
    walls: [],
    solids,
    outOfScope: [],
    zones: [],
    restMachine: 'small',
    findings: [],
    lines: [],
    machines: [SMALL],
    entrances: [{ id: 'e1', at: [width / 2, height / 2 + 1], widthMm: null, heightMm: null }],
    ...more,
  };
}

function columns(across: number, down: number, pitchX: number, pitchY: number): SolidShape[] {
  return Array.from({ length: across * down }, (_, i) => {
    const [x, y] = [i % across, Math.floor(i / across)];
    return { id: `b${i}`, ring: box((x + 1) * pitchX - 200, (y + 1) * pitchY - 200, 400, 400), solid: true };
  });
}

function garageFloor(): FloorShape {
  return floor(
    6400,
    6400,
    [
      { id: 'b1', ring: box(2000, 2000, 300, 300), solid: true },
      { id: 'b2', ring: box(4000, 2000, 300, 300), solid: true },
    ],
    { lines: cracks(6, 6400, 6400) },
  );
}

function hallFloor(): FloorShape {
  const zones = [0, 1, 2].map((i) => ({ id: `z${i}`, ring: box(i * 7000, 1000 * i, 8000, 9000), machine: 'small' }));
  return floor(24_000, 16_000, columns(4, 2, 4800, 5300), { zones, lines: cracks(10, 24_000, 16_000) });
}

function warehouseFloor(): FloorShape {
  const zones = Array.from({ length: 12 }, (_, i) => ({
    id: `z${i}`,
    ring: box((i % 4) * 30_000, Math.floor(i / 4) * 25_000, 29_000, 24_000),
    machine: 'small',
  }));
  return floor(120_000, 75_000, columns(25, 10, 4600, 6800), { zones, lines: cracks(400, 120_000, 75_000) });
}
