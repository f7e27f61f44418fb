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

/** Keys for `count` new records after `low`, in order. */
export function keysAfter(low: string | null, count: number): string[] {
  const keys: string[] = [];
  let last = low;
  for (let index = 0; index < count; index++) {
    last = keyBetween(last, null);
    keys.push(last);
  }
  return keys;
}
