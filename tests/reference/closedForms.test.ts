import { describe, expect, it } from 'vitest';
import type { FaceKind, FloorShape, Point, Ring, ZoneMeasure } from '../../src/geometry/floorShape.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { column, floorOf, machine, rectangle, slab, turned, zoneNamed } from '../support/floors.ts';
import { mapped } from '../support/randomFloors.ts';

/*
 * Areas that geometry gives in closed form. Source: Steiner's formula for parallel bodies, A(K + wB) = A(K) + w L(K) +
 * pi w^2 for convex K, and plane geometry of a circle in a corner; th is the angle of the corner as the floor has it:
 *
 *   strip   w L - w^2 SUM cot(th/2)          over inner corners
 *               + (w^2/2) SUM (th - pi)      over reflex ones
 *               + (w^2/2) SUM beta           over jambs, where a face ends and floor runs on round it by beta
 *   tight   r^2 SUM (cot(th/2) - (pi - th)/2)  over inner corners, when the strip is as wide as the clearance
 *
 * Each form is tried as drawn, turned, and far from the origin.
 */
/** Relative to the net floor. */
const TOLERANCE = 1e-11;

const PLACES: readonly (readonly [string, (at: Point) => Point])[] = [
  ['as drawn', (at) => at],
  ['turned', (at) => turned(at, 0.7)],
  ['mirrored', ([x, y]) => [-x, y]],
  ['far away', ([x, y]) => [x + 2_345_678.9, y - 1_234_567.8]],
];

const PI = Math.PI;
const [HALL_WIDTH, HALL_HEIGHT] = [12_000, 8_000];
const HALL = rectangle(0, 0, HALL_WIDTH, HALL_HEIGHT);

interface Expected {
  readonly netMm2: number;
  readonly stripMm2: number;
  readonly tightMm2: number;
}

/** All three parts of a floor without zones, wherever it is put; field is what the other two leave. */
function expectForms(shape: FloorShape, { netMm2, stripMm2, tightMm2 }: Expected): void {
  for (const [place, map] of PLACES) {
    const zone = zoneNamed(measureFloor(mapped(shape, map)));
    const parts = {
      netM2: netMm2,
      stripM2: stripMm2,
      tightM2: tightMm2,
      fieldM2: netMm2 - stripMm2 - tightMm2,
    };
    for (const [part, mm2] of Object.entries(parts) as [keyof typeof parts, number][]) {
      expect(
        Math.abs(zone[part] - mm2 / 1e6) / zone.netM2,
        `${part} ${place}: ${zone[part]} for ${mm2 / 1e6}`,
      ).toBeLessThan(TOLERANCE);
    }
  }
}

function cot(angle: number): number {
  return 1 / Math.tan(angle);
}

/** What a head of radius r leaves in a corner of angle th. */
function cusp(r: number, th: number): number {
  return r * r * (cot(th / 2) - (PI - th) / 2);
}

describe('room of W x H', () => {
  it.each([75, 100, 137.5, 1 / 3])(
    'strip of w = %f mm is 2 (W + H) w - 4 w^2, tight with w = c is (4 - pi) r^2',
    (w) => {
      expectForms(floorOf([slab(HALL)], machine(250, w, 0)), {
        netMm2: HALL_WIDTH * HALL_HEIGHT,
        stripMm2: 2 * (HALL_WIDTH + HALL_HEIGHT) * w - 4 * w * w,
        tightMm2: (4 - PI) * 250 * 250,
      });
    },
  );
  it.each([10, 50, 73])('a lap of %f mm takes its part of each cusp', (lap) => {
    const [r, c] = [250, 50];
    const w = c + lap;
    // What is left of a cusp beyond the lap: u, v in [0, a] with u^2 + v^2 > r^2, measured from the middle of the head.
    const a = r - lap;
    const left = a * a - (r * r * (PI / 2 - 2 * Math.acos(a / r))) / 2 - a * Math.sqrt(r * r - a * a);
    expectForms(floorOf([slab(HALL)], machine(r, c, lap)), {
      netMm2: HALL_WIDTH * HALL_HEIGHT,
      stripMm2: 2 * (HALL_WIDTH + HALL_HEIGHT) * w - 4 * w * w,
      tightMm2: 4 * Math.max(0, left),
    });
  });
  it('no clearance and no lap: no strip', () => {
    const shape = floorOf([slab(HALL)], machine(250, 0, 0));
    expectForms(shape, { netMm2: HALL_WIDTH * HALL_HEIGHT, stripMm2: 0, tightMm2: (4 - PI) * 250 * 250 });
    expect(zoneNamed(measureFloor(shape)).stripM2).toBe(0);
  });
  it('a head of no size leaves no cusp', () => {
    const stripMm2 = 2 * (HALL_WIDTH + HALL_HEIGHT) * 50 - 4 * 50 * 50;
    expectForms(floorOf([slab(HALL)], machine(0, 50, 0)), { netMm2: HALL_WIDTH * HALL_HEIGHT, stripMm2, tightMm2: 0 });
  });
  it('a drop with a clearance of its own: an inner rectangle is left', () => {
    const clearanceMm = { wall: 50, obstruction: 50, drop: 300, stop: 50 };
    const faces: FaceKind[] = ['wall', 'drop', 'wall', 'wall'];
    expectForms(floorOf([slab(HALL, faces)], machine(200, 50, 0, { clearanceMm })), {
      netMm2: HALL_WIDTH * HALL_HEIGHT,
      stripMm2: HALL_WIDTH * HALL_HEIGHT - (HALL_WIDTH - 350) * (HALL_HEIGHT - 100),
      tightMm2: (4 - PI) * 200 * 200,
    });
  });
});

describe('column in the field', () => {
  const bare = (w: number, r: number): Expected => ({
    netMm2: HALL_WIDTH * HALL_HEIGHT,
    stripMm2: 2 * (HALL_WIDTH + HALL_HEIGHT) * w - 4 * w * w,
    tightMm2: (4 - PI) * r * r,
  });
  it.each([
    [500, 100],
    [350, 62.5],
    [900, 1],
  ])('of side a = %f mm adds a strip of 4 a c + pi c^2, c = %f mm', (a, c) => {
    const room = bare(c, 250);
    expectForms(floorOf([slab(HALL)], machine(250, c, 0), { solids: [column('b1', 5_000, 4_000, a)] }), {
      ...room,
      netMm2: room.netMm2 - a * a,
      stripMm2: room.stripMm2 + 4 * a * c + PI * c * c,
    });
  });
  it.each([3, 5, 16, 48])('of %i sides adds L c + pi c^2', (corners) => {
    const [c, far] = [75, 400];
    const ring = regular([5_000, 4_000], far, corners);
    const room = bare(c, 250);
    expectForms(floorOf([slab(HALL)], machine(250, c, 0), { solids: [{ id: 'b1', ring, solid: true }] }), {
      ...room,
      netMm2: room.netMm2 - (corners / 2) * far * far * Math.sin((2 * PI) / corners),
      stripMm2: room.stripMm2 + 2 * corners * far * Math.sin(PI / corners) * c + PI * c * c,
    });
  });
});

function regular([x, y]: Point, far: number, corners: number): Ring {
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = (2 * PI * i) / corners + 0.1;
    return [x + far * Math.cos(angle), y + far * Math.sin(angle)];
  });
}

describe('L-shaped room', () => {
  it.each([
    [100, 250],
    [33, 400],
  ])('strip is L w - 5 w^2 + pi w^2 / 4, tight 5 (1 - pi / 4) r^2; w = %f, r = %f mm', (w, r) => {
    const ring: Ring = [
      [0, 0],
      [10_000, 0],
      [10_000, 5_000],
      [6_000, 5_000],
      [6_000, 8_000],
      [0, 8_000],
    ];
    expectForms(floorOf([slab(ring)], machine(r, w, 0)), {
      netMm2: 68e6,
      stripMm2: 36_000 * w - 5 * w * w + (PI * w * w) / 4,
      tightMm2: 5 * (1 - PI / 4) * r * r,
    });
  });
});

describe('corners of other angles', () => {
  it.each([3, 5, 6, 8, 40])('a room of %i equal sides', (corners) => {
    const [far, w, r] = [6_000, 75, 250];
    const th = PI - (2 * PI) / corners;
    expectForms(floorOf([slab(regular([0, 0], far, corners))], machine(r, w, 0)), {
      netMm2: (corners / 2) * far * far * Math.sin((2 * PI) / corners),
      stripMm2: 2 * corners * far * Math.sin(PI / corners) * w - corners * w * w * cot(th / 2),
      tightMm2: corners * cusp(r, th),
    });
  });
  it.each([30, 45, 61.7, 100, 150])('a rhombus with corners of %f degrees', (degrees) => {
    const [side, w, r] = [7_000, 60, 300];
    const th = (degrees * PI) / 180;
    const up: Point = [side * Math.cos(th), side * Math.sin(th)];
    const ring: Ring = [[0, 0], [side, 0], [side + up[0], up[1]], up];
    const corners = [th, PI - th, th, PI - th];
    expectForms(floorOf([slab(ring)], machine(r, w, 0)), {
      netMm2: side * side * Math.sin(th),
      stripMm2: 4 * side * w - corners.reduce((sum, each) => sum + w * w * cot(each / 2), 0),
      tightMm2: corners.reduce((sum, each) => sum + cusp(r, each), 0),
    });
  });
  it.each([100, 135, 170])('a wedge of %f degrees pushed into a room', (degrees) => {
    // One reflex corner, two blunt ones, four right ones.
    const [w, r] = [80, 250];
    const half = (degrees * PI) / 360;
    const rise = 400;
    const run = rise * Math.tan(half);
    const ring: Ring = [
      [0, 0],
      [6_000 - run, 0],
      [6_000, rise],
      [6_000 + run, 0],
      [12_000, 0],
      [12_000, 8_000],
      [0, 8_000],
    ];
    const blunt = PI / 2 + half;
    const reflex = 2 * PI - 2 * half;
    const length = 2 * 8_000 + 12_000 + 12_000 - 2 * run + (2 * rise) / Math.cos(half);
    expectForms(floorOf([slab(ring)], machine(r, w, 0)), {
      netMm2: 96e6 - rise * run,
      stripMm2: length * w - w * w * (4 + 2 * cot(blunt / 2)) + ((w * w) / 2) * (reflex - PI),
      tightMm2: 4 * cusp(r, PI / 2) + 2 * cusp(r, blunt),
    });
  });
});

describe('a door of width D in a room of 6 x 6 m', () => {
  const ring: Ring = [
    [0, 0],
    [6_000, 0],
    [6_000, 6_000],
    [3_500, 6_000],
    [2_500, 6_000],
    [0, 6_000],
  ];
  const [L, D, c, r] = [24_000, 1_000, 100, 250];
  const kinds = (door: FaceKind): FaceKind[] => ['wall', 'wall', 'wall', door, 'wall', 'wall'];
  const tightMm2 = (4 - PI) * r * r;
  it('that runs on leaves a strip of (L - D) c - 4 c^2 + pi c^2 / 2', () => {
    const shape = floorOf([slab(ring, kinds('run'))], machine(r, c, 0));
    expectForms(shape, { netMm2: 36e6, stripMm2: (L - D) * c - 4 * c * c + (PI * c * c) / 2, tightMm2 });
    const { faces } = zoneNamed(measureFloor(shape));
    expect([faces.wall, faces.stop]).toEqual([expect.closeTo(23, 9), 0]);
  });
  it('that stops leaves L c - 4 c^2, D of it stop line', () => {
    const shape = floorOf([slab(ring, kinds('stop'))], machine(r, c, 0));
    expectForms(shape, { netMm2: 36e6, stripMm2: L * c - 4 * c * c, tightMm2 });
    const { faces } = zoneNamed(measureFloor(shape));
    expect([faces.wall, faces.stop]).toEqual([expect.closeTo(23, 9), expect.closeTo(1, 9)]);
  });
});

describe('two machines in 20 x 10 m, kept 300 and 50 mm off', () => {
  const [big, small] = [machine(325, 300, 0, { id: 'big' }), machine(125, 50, 0, { id: 'small' })];
  const shape: FloorShape = {
    ...floorOf([slab(rectangle(0, 0, 20_000, 10_000))], big),
    machines: [big, small],
    restFollowedBy: ['small'],
  };
  const zone: ZoneMeasure = zoneNamed(measureFloor(shape));
  // By hand: the big one works 19.4 x 9.4 m less its cusps; the small one 19.9 x 9.9 m less its own, and less that.
  const bigM2 = 182.36 - (4 - PI) * 0.325 ** 2;
  const smallM2 = 197.01 - (4 - PI) * 0.125 ** 2 - bigM2;

  it('each has its field, and the small one the strip and the cusps', () => {
    const fields = zone.fields?.map(({ areaM2 }) => areaM2) ?? [];
    const expected = [bigM2, smallM2, 2.99, (4 - PI) * 0.125 ** 2];
    for (const [i, areaM2] of [...fields, zone.stripM2, zone.tightM2].entries()) {
      expect(Math.abs(areaM2 - (expected[i] ?? 0)) / 200).toBeLessThan(TOLERANCE);
    }
    expect(fields).toHaveLength(2);
  });
});
