import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FloorShape, Point, Ring } from '../../src/geometry/floorShape.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { regionIndex } from '../../src/geometry/regionIndex.ts';
import { column, floorOf, machine, rectangle, slab, zoneNamed } from '../support/floors.ts';

/*
 * A slow second opinion that shares no code with the engine but the question "in which region": at random
 * points, direct distances to the walls and columns as drawn say what the point must be.
 */
const [HEAD, CLEAR, LAP] = [200, 60, 40];
const STRIP = CLEAR + LAP;

/** Distance from a point to a segment, by the textbook. */
function far([x, y]: Point, [x1, y1]: Point, [x2, y2]: Point): number {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const share = Math.min(1, Math.max(0, ((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - x1 - share * dx, y - y1 - share * dy);
}

function farFromRing(p: Point, ring: Ring): number {
  return Math.min(...ring.map((a, i) => far(p, a, ring[(i + 1) % ring.length] ?? a)));
}

const isIn = ([x, y]: Point, [[left, top] = [0, 0], , [right, bottom] = [0, 0]]: Ring): boolean =>
  x > left && x < right && y > top && y < bottom;

const columns = fc.array(
  fc.record({
    x: fc.integer({ min: 0, max: 7_000 }),
    y: fc.integer({ min: 0, max: 5_000 }),
    side: fc.integer({ min: 150, max: 900 }),
  }),
  { maxLength: 6 },
);
const points = fc.array(fc.tuple(fc.integer({ min: 1, max: 7_999 }), fc.integer({ min: 1, max: 5_999 })), {
  minLength: 60,
  maxLength: 60,
});

describe('points against direct distances', () => {
  it('field where the middle of the machine can stand, never within the strip; each point one part', () => {
    fc.assert(
      fc.property(columns, points, (solids, at) => {
        const room = rectangle(0, 0, 8_000, 6_000);
        const shape: FloorShape = floorOf([slab(room)], machine(HEAD, CLEAR, LAP), {
          solids: solids.map(({ x, y, side }, i) => column(`b${i}`, x, y, side)),
        });
        const zone = zoneNamed(measureFloor(shape));
        const field = regionIndex(zone.field);
        const strip = regionIndex(zone.strip);
        const tight = zone.tight.map((piece) => regionIndex(piece.region));
        for (const p of at) {
          if (shape.solids.some((solid) => isIn(p, solid.ring))) continue;
          // Faces inside another column are no faces, but then the point is at least as far from the union.
          const faces = Math.min(farFromRing(p, room), ...shape.solids.map((solid) => farFromRing(p, solid.ring)));
          if (faces < 1 || Math.abs(faces - STRIP) < 1) continue;
          const parts = [field.contains(p), strip.contains(p), tight.some((piece) => piece.contains(p))];
          expect(parts.filter(Boolean), p.join(' ')).toHaveLength(1);
          if (faces > HEAD + CLEAR + 1) expect(parts[0]).toBe(true);
          if (faces < STRIP) expect(parts[0]).toBe(false);
          if (faces > STRIP) expect(parts[1]).toBe(false);
        }
      }),
      { numRuns: 150, seed: 31_415 },
    );
  }, 60_000);
});
