import { describe, expect, test } from 'vitest';
import { baselines } from '../../../bench/baselines/baselines.ts';
import { difference, noAnswers } from '../../../bench/engineAnswers.ts';
import { type WorldName, world } from '../../../bench/worlds.ts';

const all = await baselines();
const [whole, ...others] = all;

/** Of the floor: what 64 segments a circle leave, which each library lays in its own way. */
const ARCS = 5e-6;

describe.each(['W1', 'W2'] as const)('on %s', (name: WorldName) => {
  const shape = world(name);
  const first = whole?.full(shape) ?? noAnswers();
  const quick = others.filter((library) => name === 'W1' || !library.isSlow);

  test.each(quick)('$name answers as clipper2-wasm does', (other) => {
    const apart = difference(first, other.full(shape));
    for (const part of ['netM2', 'findingNetM2', 'lineNetM'] as const) expect(apart[part]).toBeLessThan(1e-8);
    for (const part of ['stripM2', 'findingStripM2', 'lineStripM'] as const) expect(apart[part]).toBeLessThan(ARCS);
    // One room of W2 is closed: who looks for no way in calls it field.
    const findsMore = name === 'W2' && !other.looksForWaysIn;
    expect(apart.fieldM2 > 1e-4).toBe(findsMore);
    expect(apart.fieldM2 < ARCS).toBe(!findsMore);
  });
});

test('every number of a floor is there to compare', () => {
  const [zone] = whole ? whole.full(world('W2')).zones.values() : [];
  expect(Object.values(zone ?? {}).every((value) => value > 0)).toBe(true);
});
