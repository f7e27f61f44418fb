import type { Jury } from './oracleVotes.ts';
import type { FloorShape, Ring } from '../../src/geometry/floorShape.ts';
import { type Broken, checkShape } from './checkPlan.ts';

/**
 * The smallest plan that still breaks the same law: records go one by one, then corners, then digits, as long as the law
 * stays broken. It is for reading, and for a test of its own.
 */
export function shrunk(shape: FloorShape, seed: number, law: string, jury: Jury): FloorShape {
  const isBroken = (tried: FloorShape): Broken | undefined =>
    checkShape(tried, seed, jury, { law }).broken.find((broken) => broken.law === law);
  let smallest = shape;
  for (let isSmaller = true; isSmaller;) {
    isSmaller = false;
    for (const tried of smallerThan(smallest)) {
      if (!isBroken(tried)) continue;
      [smallest, isSmaller] = [tried, true];
      break;
    }
  }
  return smallest;
}

const LISTS = [
  'lines',
  'findings',
  'zones',
  'entrances',
  'outOfScope',
  'walls',
  'solids',
  'slabs',
  'machines',
] as const;

/** Plans with one thing less, the largest things first. */
function* smallerThan(shape: FloorShape): Generator<FloorShape> {
  for (const list of LISTS) {
    for (let i = 0; i < shape[list].length; i += 1) yield { ...shape, [list]: without<unknown>(shape[list], i) };
  }
  for (const list of ['solids', 'outOfScope', 'zones', 'findings'] as const) {
    for (const [i, one] of shape[list].entries()) {
      for (const ring of simpler(one.ring)) yield { ...shape, [list]: shape[list].with(i, { ...one, ring } as never) };
    }
  }
  for (const [i, wall] of shape.walls.entries()) {
    for (const k of wall.gaps.keys())
      yield { ...shape, walls: shape.walls.with(i, { ...wall, gaps: without(wall.gaps, k) }) };
  }
  for (const [i, slab] of shape.slabs.entries()) {
    if (slab.passages.some(Boolean))
      yield { ...shape, slabs: shape.slabs.with(i, { ...slab, passages: slab.ring.map(() => null) }) };
    for (const k of slab.ring.keys()) {
      if (slab.faces[k] !== 'wall')
        yield { ...shape, slabs: shape.slabs.with(i, { ...slab, faces: slab.faces.with(k, 'wall') }) };
      if (slab.ring.length <= 3) continue;
      const fewer = {
        id: slab.id,
        ring: without(slab.ring, k),
        faces: without(slab.faces, k),
        passages: without(slab.passages, k),
      };
      yield { ...shape, slabs: shape.slabs.with(i, fewer) };
    }
    for (const ring of rounded(slab.ring)) yield { ...shape, slabs: shape.slabs.with(i, { ...slab, ring }) };
  }
}

function without<T>(list: readonly T[], at: number): T[] {
  return list.filter((_, i) => i !== at);
}

function* simpler(ring: Ring): Generator<Ring> {
  if (ring.length > 3) for (const k of ring.keys()) yield without(ring, k);
  yield* rounded(ring);
}

/** To whole steps of 100 mm, of 1 mm, of 1e-3 mm: whichever still fails. */
function* rounded(ring: Ring): Generator<Ring> {
  for (const steps of [0.01, 1, 1000]) {
    const coarse = ring.map(([x, y]) => [Math.round(x * steps) / steps, Math.round(y * steps) / steps] as const);
    if (coarse.some(([x, y], i) => x !== ring[i]?.[0] || y !== ring[i]?.[1])) yield coarse;
  }
}
