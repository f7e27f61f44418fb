import { unzlibSync } from 'fflate';

/** What Chromium's printing put into a PDF (ISO 32000-1: page boxes 14.11.2, colour operators 8.6.8, images 8.9.5). */
export interface PdfInk {
  /** Width and height of each page, mm. */
  readonly pagesMm: readonly (readonly [number, number])[];
  /** Colours of lines, areas and pictures that are not plain black, white or between. */
  readonly coloured: readonly string[];
  /** How many colours were set in all: a page that could not be read has none. */
  readonly colours: number;
}

const MM_PER_PT = 25.4 / 72;

export function pdfInk(pdf: Uint8Array): PdfInk {
  const raw = Buffer.from(pdf).toString('latin1');
  const boxes = [...raw.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)];
  const coloured: string[] = [];
  let colours = 0;
  for (const head of raw.matchAll(/<<[^]*?\/Length (\d+)[^]*?>>\s*stream\r?\n/g)) {
    const from = head.index + head[0].length;
    const bytes = pdf.subarray(from, from + Number(head[1]));
    if (!head[0].includes('/FlateDecode')) continue;
    const data = unzlibSync(bytes);
    // The nearest dictionary before the stream is its own.
    const own = head[0].slice(head[0].lastIndexOf(' obj'));
    if (own.includes('/DeviceRGB')) {
      colours++;
      if (hasColour(data)) coloured.push('a picture');
    } else if (!own.includes('/Subtype /Image') && !own.includes('/FontFile') && !own.includes('/Length1')) {
      for (const set of Buffer.from(data)
        .toString('latin1')
        .matchAll(/([\d.]+) ([\d.]+) ([\d.]+) (?:rg|RG)\b/g)) {
        colours++;
        if (set[1] !== set[2] || set[2] !== set[3]) coloured.push(set[0]);
      }
    }
  }
  return {
    pagesMm: boxes.map(([, width, height]) => [Number(width) * MM_PER_PT, Number(height) * MM_PER_PT] as const),
    coloured,
    colours,
  };
}

function hasColour(rgb: Uint8Array): boolean {
  for (let at = 0; at + 2 < rgb.length; at += 3) {
    if (rgb[at] !== rgb[at + 1] || rgb[at + 1] !== rgb[at + 2]) return true;
  }
  return false;
}
