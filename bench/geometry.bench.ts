import type { FloorShape, MachineShape, Ring, SolidShape } from '../src/geometry/floorShape.ts';
import { measureFloor } from '../src/geometry/measureFloor.ts';

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

export function run(print: (line: string) => void): void {
  const garage = median(garageFloor(), 30);
  for (const [title, shape] of [
    ['garage 41 m2', garageFloor()],
    ['hall 24 x 16 m', hallFloor()],
    ['warehouse 9,000 m2', warehouseFloor()],
  ] as const) {
    const ms = median(shape, title.startsWith('warehouse') ? 1 : 15);
    const measure = measureFloor(shape);
    print(
      `${title}: ${ms.toFixed(1)} ms, ${(ms / garage).toFixed(1)} x the garage, net ${measure.netM2.toFixed(2)} m2, ${measure.faults.length} faults`,
    );
  }
}

/** Middle of several runs in ms. Date.now is fine enough for medians of whole runs. */
function median(shape: FloorShape, runs: number): number {
  const times: number[] = [];
  for (let i = 0; i < runs; i += 1) {
    const start = performance.now();
    measureFloor(shape);
    times.push(performance.now() - start);
  }
  return times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
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
