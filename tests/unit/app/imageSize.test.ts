import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { imageSize } from '../../../src/app/survey/page/imageSize.ts';
import { ROOT } from '../../../scripts/runTool.mjs';

function bytes(...parts: readonly (string | readonly number[])[]): Uint8Array {
  const all = parts.flatMap((part) => (typeof part === 'string' ? [...Buffer.from(part, 'latin1')] : [...part]));
  return Uint8Array.from([...all, ...Array.from({ length: 40 }, () => 0)]);
}

test('a PNG says its size in its first chunk (ISO/IEC 15948, IHDR)', () => {
  const scan = readFileSync(join(ROOT, 'tests/data/plan-scans/scan-office-level-1.png'));
  const truth = JSON.parse(
    readFileSync(join(ROOT, 'tests/data/plan-scans/scan-office-level-1.truth.json'), 'utf8'),
  ) as { readonly imagePixels: readonly [number, number] };
  expect(imageSize(scan)).toEqual({ widthPx: truth.imagePixels[0], heightPx: truth.imagePixels[1] });
});

test('a JPEG says it in its start of frame, height first (ITU-T T.81), after whatever else stands before', () => {
  const app0 = [0xff, 0xe0, 0, 4, 1, 2];
  const tables = [0xff, 0xc4, 0, 3, 9];
  const frame = [0xff, 0xc0, 0, 17, 8, 0x0b, 0xb8, 0x0f, 0xa0];
  expect(imageSize(bytes([0xff, 0xd8], app0, tables, frame))).toEqual({ widthPx: 4000, heightPx: 3000 });
});

test('the three kinds of WebP keep it in three places (RFC 9649)', () => {
  const riff = ['RIFF', [0, 0, 0, 0], 'WEBP'] as const;
  const extended = bytes(...riff, 'VP8X', [10, 0, 0, 0], [0, 0, 0, 0], [0x9f, 0x0f, 0], [0xb7, 0x0b, 0]);
  const lossy = bytes(...riff, 'VP8 ', [0, 0, 0, 0], [0, 0, 0], [0x9d, 1, 0x2a], [0xa0, 0x0f], [0xb8, 0x0b]);
  // 14 bits width less one, 14 bits height less one.
  const bits = 3999 | (2999 << 14);
  const lossless = bytes(
    ...riff,
    'VP8L',
    [0, 0, 0, 0],
    [0x2f],
    [bits & 255, (bits >> 8) & 255, (bits >> 16) & 255, (bits >> 24) & 255],
  );
  for (const file of [extended, lossy, lossless]) expect(imageSize(file)).toEqual({ widthPx: 4000, heightPx: 3000 });
});

test('anything else, and a file cut short, has no size', () => {
  for (const file of [bytes('%PDF-1.7'), bytes('GIF89a'), Uint8Array.from([0xff, 0xd8]), new Uint8Array()]) {
    expect(imageSize(file)).toBeNull();
  }
});
