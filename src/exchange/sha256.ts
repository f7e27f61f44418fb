/**
 * SHA-256 (FIPS 180-4), in hex: the name of an image is the hash of its bytes. Our own forty lines because the
 * browser's is missing on plain http pages, where a phone on the site's network may well be.
 */
const BLOCK = 64;

/** First 32 bits of the fractional parts of the roots of the first primes (FIPS 180-4, 4.2.2 and 5.3.3). */
function fractionBits(root: number): number {
  return ((root - Math.floor(root)) * 2 ** 32) | 0;
}

function firstPrimes(count: number): number[] {
  const primes: number[] = [];
  for (let n = 2; primes.length < count; n++) {
    if (primes.every((prime) => n % prime !== 0)) primes.push(n);
  }
  return primes;
}

const ROUND = Int32Array.from(firstPrimes(64), (prime) => fractionBits(Math.cbrt(prime)));
const START = Int32Array.from(firstPrimes(8), (prime) => fractionBits(Math.sqrt(prime)));

function turn(word: number, by: number): number {
  return (word >>> by) | (word << (32 - by));
}

/** The message, a one bit, zeros, and its length in bits in the last eight bytes. */
function padded(bytes: Uint8Array): Uint8Array {
  const whole = bytes.length - (bytes.length % BLOCK);
  const rest = bytes.subarray(whole);
  const tail = new Uint8Array(rest.length < BLOCK - 8 ? BLOCK : 2 * BLOCK);
  tail.set(rest);
  tail[rest.length] = 0x80;
  const view = new DataView(tail.buffer);
  view.setUint32(tail.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(tail.length - 4, (bytes.length << 3) >>> 0);
  return tail;
}

function digestBlocks(state: Int32Array, bytes: Uint8Array, end: number): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const w = new Int32Array(64);
  for (let at = 0; at < end; at += BLOCK) {
    for (let i = 0; i < 16; i++) w[i] = view.getInt32(at + i * 4);
    for (let i = 16; i < 64; i++) {
      const a = w[i - 15]!;
      const b = w[i - 2]!;
      const s0 = turn(a, 7) ^ turn(a, 18) ^ (a >>> 3);
      const s1 = turn(b, 17) ^ turn(b, 19) ^ (b >>> 10);
      w[i] = w[i - 16]! + s0 + w[i - 7]! + s1;
    }
    let [a, b, c, d, e, f, g, h] = state as unknown as [number, number, number, number, number, number, number, number];
    for (let i = 0; i < 64; i++) {
      const s1 = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
      const t1 = (h + s1 + ((e & f) ^ (~e & g)) + ROUND[i]! + w[i]!) | 0;
      const s0 = turn(a, 2) ^ turn(a, 13) ^ turn(a, 22);
      const t2 = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + t1) | 0;
      d = c;
      c = b;
      b = a;
      a = (t1 + t2) | 0;
    }
    for (const [i, word] of [a, b, c, d, e, f, g, h].entries()) state[i]! += word;
  }
}

export function sha256Hex(bytes: Uint8Array): string {
  const state = Int32Array.from(START);
  digestBlocks(state, bytes, bytes.length - (bytes.length % BLOCK));
  const tail = padded(bytes);
  digestBlocks(state, tail, tail.length);
  return [...state].map((word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}
