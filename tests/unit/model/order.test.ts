import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keyAfter, keyBetween, keysAfter } from '../../../src/model/order.ts';

test('twenty thousand keys, each after the last, none longer than the first; a third one fits between any two', () => {
  const keys = keysAfter(null, 20_000);
  expect(keys.filter((key) => key.length !== 4 || key.endsWith('0'))).toEqual([]);
  expect(keys).toEqual([...new Set(keys)].toSorted());
  const crowded = keys.flatMap((key, index) => [keyBetween(keys[index - 1] ?? null, key), key]);
  expect(crowded).toEqual([...new Set(crowded)].toSorted());
});

test('after keys of every length, the end of the row included', () => {
  const key = fc.stringMatching(/^[0-9a-z]{0,8}[1-9a-z]$/);
  fc.assert(fc.property(key, (low) => keyAfter(low) > low));
  expect(keyAfter('zzzz') > 'zzzz').toBe(true);
  expect(keyAfter('zzzzi') > 'zzzzi').toBe(true);
  expect(keysAfter(null, 3)).toEqual(['0001', '0002', '0003']);
});

test('between two keys that were given one after the other, again and again', () => {
  let [low, high] = keysAfter(null, 2) as [string, string];
  for (let count = 0; count < 50; count++) {
    const middle = keyBetween(low, high);
    expect(low < middle && middle < high).toBe(true);
    if (count % 2 === 0) low = middle;
    else high = middle;
  }
});
