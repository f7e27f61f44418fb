import { describe, expect, it } from 'vitest';
import { type Face, faceBetween } from '../../../src/geometry/hardFace.ts';
import type { Point, Region, Ring } from '../../../src/geometry/floorShape.ts';
import { narrowGap } from '../../../src/geometry/narrowGap.ts';
import { corner, wound } from '../../../src/geometry/ring.ts';
import { machine, rectangle, turned } from '../../support/floors.ts';

// All by hand. The machine needs 800 mm between two walls: a head of 500 mm, a body that asks for more.
const SMALL = machine(250, 50, 50, { passageMm: 800 });

/** Faces of a room, floor inside. */
function inside(ring: Ring, of = 'slab'): Face[] {
  return facesOf(wound(ring, true), 'wall', of);
}

/** Faces of something that stands on the floor, floor outside. */
function around(ring: Ring, of: string, kind: Face['kind'] = 'obstruction'): Face[] {
  return facesOf(wound(ring, false), kind, of);
}

function facesOf(ring: Ring, kind: Face['kind'], of: string): Face[] {
  return ring.map((a, i) => faceBetween(a, corner(ring, i + 1), kind, of));
}

function box(x: number, y: number, width: number, height: number): Region {
  return [[rectangle(x, y, width, height)]];
}

function circle([x, y]: Point, radiusMm: number, sides = 32): Ring {
  return Array.from({ length: sides }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / sides;
    return [x + radiusMm * Math.cos(angle), y + radiusMm * Math.sin(angle)];
  });
}

/** A hall 6 x 6 m with a niche in its far wall, `wideMm` at its mouth and `backMm` at its back, 900 mm deep. */
function hallWithNiche(wideMm: number, backMm = wideMm): Ring {
  const step = (wideMm - backMm) / 2;
  return [
    [0, 0],
    [6_000, 0],
    [6_000, 6_000],
    [3_000 + wideMm, 6_000],
    [3_000 + wideMm - step, 6_900],
    [3_000 + step, 6_900],
    [3_000, 6_000],
    [0, 6_000],
  ];
}

describe('the narrow place of a piece too small for the machine', () => {
  it('is the clear width of a niche', () => {
    const gap = narrowGap(box(3_000, 6_000, 700, 900), inside(hallWithNiche(700)), SMALL);
    expect(gap).toEqual({
      machine: 'm',
      widthMm: 700,
      needsMm: 800,
      from: [3_700, 6_450],
      to: [3_000, 6_450],
      sides: [
        { kind: 'wall', of: 'slab' },
        { kind: 'wall', of: 'slab' },
      ],
    });
  });
  it('is the mouth of a niche that closes in a little towards its back', () => {
    const piece: Ring = [
      [3_000, 6_000],
      [3_700, 6_000],
      [3_650, 6_900],
      [3_050, 6_900],
    ];
    const gap = narrowGap([[piece]], inside(hallWithNiche(700, 600)), SMALL);
    expect(gap?.widthMm).toBeGreaterThan(690);
    expect(gap?.widthMm).toBeLessThanOrEqual(700);
  });
  it('lies between two columns, whatever their turn on the plan', () => {
    for (const angle of [0, 0.3, 1, 2.5]) {
      const turn = (ring: Ring): Ring => ring.map((at) => turned(at, angle));
      const faces = [
        ...around(turn(rectangle(1_000, 1_000, 400, 400)), 'b1'),
        ...around(turn(rectangle(1_800, 1_000, 400, 400)), 'b2'),
      ];
      const gap = narrowGap([[turn(rectangle(1_400, 950, 400, 500))]], faces, SMALL);
      expect(gap?.widthMm).toBeCloseTo(400, 6);
      expect(gap?.sides?.map((side) => side.of).toSorted()).toEqual(['b1', 'b2']);
    }
  });
  it('lies from corner to corner of columns set off from each other', () => {
    const faces = [
      ...around(rectangle(1_000, 1_000, 400, 400), 'b1'),
      ...around(rectangle(1_700, 1_800, 400, 400), 'b2'),
    ];
    const gap = narrowGap(box(1_400, 1_400, 300, 400), faces, SMALL);
    expect(gap).toMatchObject({ widthMm: 500, from: [1_400, 1_400], to: [1_700, 1_800] });
  });
  it('lies between a column and a wall', () => {
    const faces = [...inside(rectangle(0, 0, 6_000, 6_000)), ...around(rectangle(300, 2_000, 400, 400), 'b1')];
    const gap = narrowGap(box(0, 1_900, 300, 600), faces, SMALL);
    expect(gap).toMatchObject({ widthMm: 300, needsMm: 800 });
    expect([gap?.from, gap?.to].toSorted((p, q) => (p?.[0] ?? 0) - (q?.[0] ?? 0))).toEqual([
      [0, 2_200],
      [300, 2_200],
    ]);
  });
  it('lies between a round column and a wall, and between two round columns', () => {
    const wall = inside(rectangle(0, 0, 6_000, 6_000));
    const first = around(circle([700, 3_000], 200), 'b1');
    const second = around(circle([1_500, 3_000], 200), 'b2');
    expect(narrowGap(box(0, 2_800, 500, 400), [...wall, ...first], SMALL)?.widthMm).toBeCloseTo(500, 6);
    const between = narrowGap(box(900, 2_950, 400, 100), [...wall, ...first, ...second], SMALL);
    expect(between?.widthMm).toBeCloseTo(400, 6);
  });
  it('is shown in the middle of a long slot, not at its mouth', () => {
    const faces = [...inside(rectangle(0, 0, 6_000, 6_000)), ...around(rectangle(650, 1_000, 400, 3_000), 'b1')];
    const gap = narrowGap(box(0, 900, 650, 3_200), faces, SMALL);
    expect([gap?.from[1], gap?.to[1]]).toEqual([2_500, 2_500]);
  });
  it('is the least of several across one piece', () => {
    const faces = [
      ...inside(rectangle(0, 0, 6_000, 6_000)),
      ...around(rectangle(640, 2_000, 400, 400), 'b1'),
      ...around(rectangle(500, 3_000, 400, 400), 'b2'),
    ];
    expect(narrowGap(box(0, 1_900, 640, 1_600), faces, SMALL)?.widthMm).toBe(500);
  });
  it('is not measured through what stands between', () => {
    const faces = [
      ...around(rectangle(1_000, 1_000, 400, 400), 'b1'),
      ...around(rectangle(1_500, 900, 100, 600), 'b2'),
      ...around(rectangle(1_800, 1_000, 400, 400), 'b3'),
    ];
    expect(narrowGap(box(1_400, 1_000, 100, 400), faces, SMALL)?.widthMm).toBe(100);
    expect(narrowGap(box(1_600, 1_000, 200, 400), faces, SMALL)?.widthMm).toBe(200);
  });
  it('asks for more beside a drop, where the machine keeps farther off', () => {
    const edge = faceBetween([0, 0], [0, 6_000], 'drop', 'slab');
    const column = around(rectangle(-1_400, 2_000, 400, 400), 'b1');
    const one = machine(250, 50, 50, {
      passageMm: 800,
      clearanceMm: { wall: 50, obstruction: 50, drop: 600, stop: 50 },
    });
    // Floor lies to the left of the edge: 1000 mm free; 250 + 600 on the one side, 400 on the other are needed.
    expect(narrowGap(box(-1_000, 1_900, 1_000, 600), [edge, ...column], one)).toMatchObject({
      widthMm: 1_000,
      needsMm: 1_250,
    });
    expect(narrowGap(box(-1_000, 1_900, 1_000, 600), [edge, ...column], SMALL)).toBeNull();
  });
});

describe('no narrow place explains', () => {
  it('the cusp of a plain corner', () => {
    expect(narrowGap(box(100, 100, 60, 60), inside(rectangle(0, 0, 6_000, 6_000)), SMALL)).toBeNull();
  });
  it('the cusp of a sharp corner, of a cut-off corner and of a round one', () => {
    const sharp: Ring = [
      [0, 0],
      [6_000, 0],
      [6_000, 3_000],
    ];
    const cut: Ring = [
      [100, 0],
      [6_000, 0],
      [6_000, 6_000],
      [0, 6_000],
      [0, 100],
    ];
    const quarter = Array.from({ length: 9 }, (_, i): Point => {
      const angle = Math.PI + (Math.PI / 2) * (i / 8);
      return [200 + 200 * Math.cos(angle), 200 + 200 * Math.sin(angle)];
    });
    const round: Ring = [...quarter, [6_000, 0], [6_000, 6_000], [0, 6_000]];
    const piece: Ring = [
      [0, 0],
      [400, 0],
      [0, 400],
    ];
    for (const ring of [sharp, cut, round]) expect(narrowGap([[piece]], inside(ring), SMALL)).toBeNull();
  });
  it('a gap of the width needed, and one half a millimetre short', () => {
    const at = (width: number) =>
      narrowGap(box(3_000, 6_000, width, 900), inside(hallWithNiche(width)), SMALL)?.widthMm ?? null;
    expect(at(800)).toBeNull();
    expect(at(799.6)).toBeNull();
    expect(at(799)).toBe(799);
  });
  it('a column seen from its own two sides', () => {
    expect(narrowGap(box(900, 900, 600, 600), around(rectangle(1_000, 1_000, 400, 400), 'b1'), SMALL)).toBeNull();
  });
});

describe('the way into a room that is cut off', () => {
  const hall = inside(rectangle(0, 0, 10_000, 6_000));
  const walls = (gapMm: number): Face[] => [
    ...around(rectangle(6_000, -1, 100, 2_001), 'w1', 'wall'),
    ...around(rectangle(6_000, 2_000 + gapMm, 100, 4_001 - gapMm), 'w1', 'wall'),
  ];
  /** The room behind the wall with the floor in the gap, but a little that belongs to the near side. */
  const room = (gapMm: number): Region => {
    const ring: Ring = [
      [6_020, 2_000],
      [6_100, 2_000],
      [6_100, 0],
      [10_000, 0],
      [10_000, 6_000],
      [6_100, 6_000],
      [6_100, 2_000 + gapMm],
      [6_020, 2_000 + gapMm],
    ];
    return [[ring]];
  };
  it('is the gap in the wall', () => {
    expect(narrowGap(room(790), [...hall, ...walls(790)], SMALL)).toMatchObject({
      widthMm: 790,
      needsMm: 800,
      sides: [
        { kind: 'wall', of: 'w1' },
        { kind: 'wall', of: 'w1' },
      ],
    });
  });
  it('is not a slot deep in the room, though that is narrower', () => {
    const slot = around(rectangle(9_300, 3_000, 400, 400), 'b1');
    expect(narrowGap(room(790), [...hall, ...walls(790), ...slot], SMALL)?.widthMm).toBe(790);
    expect(narrowGap(room(900), [...hall, ...walls(900), ...slot], SMALL)).toBeNull();
  });
  it('lies in front of the room where the piece ends behind the gap', () => {
    const behind = box(6_100, 0, 3_900, 6_000);
    expect(narrowGap(behind, [...hall, ...walls(790)], SMALL)?.widthMm).toBe(790);
  });
  it('is nothing where nothing leads in', () => {
    expect(narrowGap(box(0, 0, 10_000, 6_000), hall, SMALL)).toBeNull();
  });
});

describe('degenerate input', () => {
  it('has no gap: no piece, no faces, faces of no length', () => {
    expect(narrowGap([], inside(rectangle(0, 0, 100, 100)), SMALL)).toBeNull();
    expect(narrowGap(box(0, 0, 100, 100), [], SMALL)).toBeNull();
    expect(narrowGap(box(0, 0, 100, 100), [faceBetween([0, 0], [0, 0], 'wall', 'w')], SMALL)).toBeNull();
  });
});
