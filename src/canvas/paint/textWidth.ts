/**
 * Advance widths of Overpass, thousandths of the letter size, for the signs from space to tilde.
 * Taken from the horizontal metrics of the ExtraBold cut (OFL 1.1); lighter cuts are up to 4 % narrower.
 */
const WIDTHS: readonly number[] = [
  255, 309, 456, 709, 609, 845, 722, 256, 382, 382, 559, 633, 257, 420, 249, 533, 663, 663, 663, 663, 663, 663, 663,
  663, 663, 663, 249, 249, 633, 633, 633, 509, 843, 730, 702, 636, 720, 633, 579, 679, 728, 300, 561, 724, 569, 811,
  722, 720, 641, 721, 698, 618, 609, 720, 692, 851, 703, 698, 636, 399, 533, 399, 633, 498, 499, 568, 582, 555, 582,
  564, 372, 582, 602, 293, 293, 569, 301, 886, 602, 569, 583, 582, 426, 500, 397, 602, 573, 759, 597, 581, 556, 387,
  311, 387, 633,
];

/** A space at which no line is broken: between a figure and its unit. */
const FIRM_SPACE = '\u00a0';
const SPACE = WIDTHS[0] ?? 255;

/** Signs outside the table (a small 2, accents, other scripts) count as an ordinary letter. */
const OTHER = 600;

/** Width of a line of letters, in the unit of `size`. Near enough to place plates and break lines without a browser. */
export function textWidth(text: string, size: number): number {
  let sum = 0;
  for (const sign of text) sum += sign === FIRM_SPACE ? SPACE : (WIDTHS[(sign.codePointAt(0) ?? 0) - 32] ?? OTHER);
  return (sum * size) / 1000;
}

/** Words that stay in one line: a figure and its unit. */
export function firm(text: string): string {
  return text.replaceAll(' ', FIRM_SPACE);
}

/** The words of a text, as lines may be broken between them. */
export function wordsOf(text: string): string[] {
  return text.split(/[^\S\u00a0]+/).filter((word) => word !== '');
}

/** Breaks words into lines no wider than `width`. A word that is wider than a line gets one of its own. */
export function wrapText(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of wordsOf(text)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}
