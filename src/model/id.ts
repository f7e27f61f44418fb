import type { RecordId } from './cell.ts';

/** Random bytes come from outside (`crypto.getRandomValues` in the app, a seed in tests). */
export type RandomBytes = (count: number) => Uint8Array;
export type NewId = <T extends string>(type: T) => `${T}:${string}`;

const ALPHABET = '0123456789abcdefghijklmnopqrstuvwxyz';
const LENGTH = 12;

/** Makes ids that two devices will not both make: 12 letters of 36, about 62 bits. */
export function idMaker(random: RandomBytes): NewId {
  return (type) => {
    let letters = '';
    while (letters.length < LENGTH) {
      for (const byte of random(LENGTH)) {
        // 252 = 7 x 36: bytes above it would favour the first letters.
        if (byte < 252 && letters.length < LENGTH) letters += ALPHABET[byte % 36];
      }
    }
    return `${type}:${letters}`;
  };
}

const SHAPE = /^[a-z][A-Za-z]*:[A-Za-z0-9_-]+$/;

export function isRecordId(value: unknown): value is RecordId {
  return typeof value === 'string' && SHAPE.test(value);
}
