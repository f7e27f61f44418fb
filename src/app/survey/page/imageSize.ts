/** Width and height out of the head of a PNG, JPEG or WebP file, so that a giant is refused before it is unpacked. */
export interface PixelSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

function png(view: DataView): PixelSize | null {
  if (view.byteLength < 24 || view.getUint32(0) !== 0x89504e47) return null;
  return { widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
}

/** Start-of-frame markers carry the size; the tables of C4, C8 and CC look alike and do not. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

function jpeg(view: DataView): PixelSize | null {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null;
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (isFrame(marker)) return { heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) };
    at += 2 + view.getUint16(at + 2);
  }
  return null;
}

function uint24(view: DataView, at: number): number {
  return view.getUint16(at, true) + view.getUint8(at + 2) * 65536;
}

/** Lossy, lossless and extended WebP keep the size in three different places. */
function webp(view: DataView): PixelSize | null {
  if (view.byteLength < 30 || view.getUint32(0) !== 0x52494646 || view.getUint32(8) !== 0x57454250) return null;
  const kind = view.getUint32(12);
  if (kind === 0x56503858) return { widthPx: uint24(view, 24) + 1, heightPx: uint24(view, 27) + 1 };
  if (kind === 0x5650384c) {
    const bits = view.getUint32(21, true);
    return { widthPx: (bits & 0x3fff) + 1, heightPx: ((bits >> 14) & 0x3fff) + 1 };
  }
  if (kind === 0x56503820)
    return { widthPx: view.getUint16(26, true) & 0x3fff, heightPx: view.getUint16(28, true) & 0x3fff };
  return null;
}

/** null when it is none of the three. */
export function imageSize(bytes: Uint8Array): PixelSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return png(view) ?? jpeg(view) ?? webp(view);
}
