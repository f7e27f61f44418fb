/**
 * Order keys: a string between any two strings, so that moving one record writes one cell.
 * Keys are fractions in base 36 without trailing zeros: '' < '1' < '1i' < '2'.
 */
const DIGITS = '0123456789abcdefghijklmnopqrstuvwxyz';

function digitAt(key: string, index: number, missing: number): number {
  const letter = key[index];
  return letter === undefined ? missing : DIGITS.indexOf(letter);
}

/** A key strictly between `low` and `high`; null means the very start or the very end. */
export function keyBetween(low: string | null, high: string | null): string {
  const from = low ?? '';
  let key = '';
  let bounded = high !== null;
  for (let index = 0; ; index++) {
    const a = digitAt(from, index, 0);
    const b = bounded ? digitAt(high ?? '', index, 0) : DIGITS.length;
    if (b - a > 1) return key + (DIGITS[Math.floor((a + b) / 2)] ?? '');
    key += DIGITS[a];
    if (b > a) bounded = false;
  }
}

/** Places of the keys that are given one after the other: a million and a half of them before they grow longer. */
const STEP_DIGITS = 4;

/** A key after the last one. Halving towards the end, as `keyBetween` must, would make the thousandth key 200 letters long. */
export function keyAfter(low: string | null): string {
  const head = (low ?? '').slice(0, STEP_DIGITS).padEnd(STEP_DIGITS, '0');
  let next = Number.parseInt(head, DIGITS.length) + 1;
  // A key never ends in zero: it would be the same place as the key without it.
  if (next % DIGITS.length === 0) next += 1;
  const key = next.toString(DIGITS.length).padStart(STEP_DIGITS, '0');
  return key.length > STEP_DIGITS ? keyBetween(low, null) : key;
}

/** Keys for `count` new records after `low`, in order. */
export function keysAfter(low: string | null, count: number): string[] {
  const keys: string[] = [];
  let last = low;
  for (let index = 0; index < count; index++) {
    last = keyAfter(last);
    keys.push(last);
  }
  return keys;
}
