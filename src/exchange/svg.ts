import type { Point } from '../geometry/floorShape.ts';

/** Small pieces of SVG, all in millimetres of the sheet. */

/** To a thousandth of a millimetre: finer than any printer, and short to read. */
export function mm(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

export function pathData(points: readonly Point[], closed: boolean): string {
  const moves = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${mm(x)} ${mm(y)}`);
  return moves.join('') + (closed ? 'Z' : '');
}

export interface Letters {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight?: 500 | 600 | 700 | 800;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly ink?: 'black' | 'white';
}

export function letters(text: string, { x, y, size, weight = 500, anchor = 'start', ink = 'black' }: Letters): string {
  const side = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return `<text x="${mm(x)}" y="${mm(y)}" font-size="${mm(size)}" font-weight="${weight}" fill="${ink}"${side}>${escaped(text)}</text>`;
}

/** Strong words and what follows them, in one line. */
export function ledLetters(lead: string, text: string, at: Pick<Letters, 'x' | 'y' | 'size'>): string {
  if (lead === '') return letters(text, at);
  const strong = `<tspan font-weight="700">${escaped(lead)}</tspan>`;
  return `<text x="${mm(at.x)}" y="${mm(at.y)}" font-size="${mm(at.size)}" font-weight="500" fill="black">${strong}  ${escaped(text)}</text>`;
}

export function rule(x1: number, y1: number, x2: number, y2: number, width = 0.25): string {
  return `<path d="M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}" stroke="black" stroke-width="${mm(width)}" fill="none"/>`;
}

export interface BoxLook {
  readonly fill?: string;
  readonly line?: number;
}

export function box(
  x: number,
  y: number,
  width: number,
  height: number,
  { fill = 'none', line = 0 }: BoxLook = {},
): string {
  const stroke = line > 0 ? ` stroke="black" stroke-width="${mm(line)}"` : '';
  return `<rect x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}" fill="${fill}"${stroke}/>`;
}
