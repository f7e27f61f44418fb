import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sha256Hex } from '../../src/exchange/sha256.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('SHA-256', () => {
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])(
    'of "%s" is the value of the NIST examples (FIPS 180-4, Secure Hash Standard; values from memory, and those of OpenSSL)',
    (text, hex) => {
      expect(sha256Hex(bytes(text))).toBe(hex);
      expect(createHash('sha256').update(text).digest('hex')).toBe(hex);
    },
  );
  it('agrees with OpenSSL (as Node has it) at every length around the blocks, and on anything', () => {
    for (let length = 0; length <= 200; length++) {
      const block = new Uint8Array(length).fill(0xa5);
      expect(sha256Hex(block)).toBe(createHash('sha256').update(block).digest('hex'));
    }
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 5000 }), (any) => {
        expect(sha256Hex(any)).toBe(createHash('sha256').update(any).digest('hex'));
      }),
    );
  });
  it('reads only its own part of a larger buffer', () => {
    const part = bytes('xxabcxx').subarray(2, 5);
    expect(sha256Hex(part)).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});
