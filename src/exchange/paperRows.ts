import { pictograms, PICTOGRAM_STROKE, type PictogramName } from '../canvas/paint/pictograms.ts';
import { textWidth, wordsOf, wrapText } from '../canvas/paint/textWidth.ts';
import { box, ledLetters, letters, rule } from './svg.ts';

/** A strip of a column: how high it is, and how it is drawn at a place. All mm. */
export interface Row {
  readonly heightMm: number;
  readonly draw: (x: number, y: number) => string;
  /** Must not be the last of a column. */
  readonly keepWithNext?: boolean;
  /** Repeated, as "…, continued", where a column begins in the middle of what it heads. */
  readonly head?: Row;
}

const BODY = 2.85;
const LEADING = 4;
const HEAD = 4.2;

export function gapRow(heightMm: number): Row {
  return { heightMm, draw: () => '' };
}

export function ruleRow(width: number, weight = 0.35): Row {
  return { heightMm: 2.2, draw: (x, y) => rule(x, y + 1.1, x + width, y + 1.1, weight), keepWithNext: true };
}

export function titleRow(text: string, size = HEAD): Row {
  return {
    heightMm: size * 1.5,
    keepWithNext: true,
    draw: (x, y) => letters(text, { x, y: y + size * 1.1, size, weight: 800 }),
  };
}

/** Rows that stay together: all of them keep with the next, unless they are higher than any column. */
export function keptWhole(rows: readonly Row[], columnMm: number): Row[] {
  const heightMm = rows.reduce((sum, row) => sum + row.heightMm, 0);
  if (heightMm > columnMm) return [...rows];
  return rows.map((row, i) => (i < rows.length - 1 ? { ...row, keepWithNext: true } : row));
}

const MARK_MM = 5;

export interface TextLook {
  /** A number before the text, which then stands in a column of its own. */
  readonly mark?: string;
  /** Strong words to begin with, as what is to be done. */
  readonly lead?: string;
  readonly size?: number;
}

/** Text in as many lines as it takes. */
export function textRows(text: string, width: number, { mark = '', lead = '', size = BODY }: TextLook = {}): Row[] {
  const indent = mark === '' ? 0 : MARK_MM;
  const leadWidth = lead === '' ? 0 : textWidth(`${lead}  `, size);
  const room = width - indent;
  // The strong words take room in the first line only.
  const words = wordsOf(text);
  let first = '';
  while (words.length > 0 && leadWidth + textWidth(`${first} ${words[0] ?? ''}`, size) <= room) {
    first = `${first} ${words.shift() ?? ''}`.trim();
  }
  const height = (size / BODY) * LEADING;
  const baseline = height * 0.75;
  const rest = wrapText(words.join(' '), size, room);
  const firstRow: Row = {
    heightMm: height,
    draw: (x, y) =>
      (mark === '' ? '' : letters(mark, { x, y: y + baseline, size, weight: 700 })) +
      ledLetters(lead, first, { x: x + indent, y: y + baseline, size }),
    keepWithNext: rest.length > 0,
  };
  return [
    firstRow,
    ...rest.map((line): Row => ({
      heightMm: height,
      draw: (x, y) => letters(line, { x: x + indent, y: y + baseline, size }),
    })),
  ];
}

const PLATE = 9;

/** Number, name and profile of a zone; a held one says STOP in a block of ink. */
export function zoneHeadRow(number: string, name: string, right: string, stopped: boolean, width: number): Row {
  const size = 5;
  const block = textWidth(right, size) + 4;
  const nameRoom = width - PLATE - 5 - block;
  const nameSize = Math.min(HEAD, (HEAD * nameRoom) / Math.max(nameRoom, textWidth(name, HEAD)));
  return {
    heightMm: PLATE + 1.6,
    keepWithNext: true,
    draw: (x, y) =>
      box(x, y, PLATE, PLATE, { fill: 'black' }) +
      letters(number, { x: x + PLATE / 2, y: y + PLATE * 0.72, size: 6, weight: 800, anchor: 'middle', ink: 'white' }) +
      letters(name, { x: x + PLATE + 3, y: y + PLATE * 0.66, size: nameSize, weight: 800 }) +
      (stopped ? box(x + width - block, y + 0.6, block, PLATE - 1.2, { fill: 'black' }) : '') +
      letters(right, {
        x: stopped ? x + width - block / 2 : x + width,
        y: y + PLATE * 0.68,
        size,
        weight: 800,
        anchor: stopped ? 'middle' : 'end',
        ink: stopped ? 'white' : 'black',
      }),
  };
}

const PICTURE = 6;

/** A caution's drawing: board-coloured strokes on a plate of ink. */
export function pictogramSvg(name: PictogramName, x: number, y: number, side: number): string {
  const strokes = pictograms[name].map((d) => `<path d="${d}"/>`).join('');
  return `<g transform="translate(${x} ${y}) scale(${side / 48})"><rect width="48" height="48" rx="4"/><g fill="none" stroke="white" stroke-width="${PICTOGRAM_STROKE}">${strokes}</g></g>`;
}

export interface Captioned {
  readonly picture: PictogramName;
  readonly words: string;
}

/** Cautions two in a row, each with its words. */
export function cautionRows(cautions: readonly Captioned[], width: number): Row[] {
  const half = width / 2;
  const size = 2.5;
  const pairs = Array.from({ length: Math.ceil(cautions.length / 2) }, (_, i) => cautions.slice(2 * i, 2 * i + 2));
  return pairs.map((pair): Row => {
    const wrapped = pair.map(({ words }) => wrapText(words, size, half - PICTURE - 3.5));
    const height = Math.max(PICTURE, ...wrapped.map((lines) => lines.length * size * 1.2)) + 1.2;
    return {
      heightMm: height,
      draw: (x, y) =>
        pair
          .map(({ picture }, i) => {
            const left = x + i * half;
            const lines = wrapped[i] ?? [];
            const top = y + Math.max(0, (PICTURE - lines.length * size * 1.2) / 2);
            return (
              pictogramSvg(picture, left, y, PICTURE) +
              lines
                .map((line, nth) =>
                  letters(line, { x: left + PICTURE + 1.8, y: top + size * (0.95 + nth * 1.2), size, weight: 600 }),
                )
                .join('')
            );
          })
          .join(''),
    };
  });
}

/** A sentence of a hold beside its drawing. */
export function stopRow(sentence: string, picture: PictogramName, width: number): Row {
  const side = 9;
  const size = 3;
  const lines = wrapText(sentence, size, width - side - 3);
  return {
    heightMm: Math.max(side, lines.length * size * 1.35) + 1.6,
    draw: (x, y) =>
      pictogramSvg(picture, x, y, side) +
      lines
        .map((line, i) => letters(line, { x: x + side + 3, y: y + size * (1.1 + i * 1.35), size, weight: 700 }))
        .join(''),
  };
}

export interface Column {
  readonly at: number;
  readonly text: string;
  readonly widthMm: number;
}

const CELL = 2.7;

/** A row of a table: cells at given places, in as many lines as they take, with a box to tick at the right. */
export function tableRow(cells: readonly Column[], width: number, look: { head?: boolean; box?: boolean } = {}): Row {
  const wrapped = cells.map((cell) => wrapText(cell.text, CELL, cell.widthMm));
  const height = Math.max(1, ...wrapped.map((lines) => lines.length)) * CELL * 1.3 + 1.6;
  return {
    heightMm: height,
    keepWithNext: look.head ?? false,
    draw: (x, y) =>
      cells
        .map((cell, i) =>
          (wrapped[i] ?? [])
            .map((line, nth) =>
              letters(line, {
                x: x + cell.at,
                y: y + CELL * (1.2 + nth * 1.3),
                size: CELL,
                weight: look.head || i === 0 ? 700 : 500,
              }),
            )
            .join(''),
        )
        .join('') +
      (look.box ? box(x + width - 3.6, y + 0.5, 3.2, 3.2, { line: 0.3 }) : '') +
      rule(x, y + height - 0.2, x + width, y + height - 0.2, look.head ? 0.35 : 0.15),
  };
}
