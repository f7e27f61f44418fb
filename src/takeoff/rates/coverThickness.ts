import { practiceRow as row } from './practiceRow.ts';
import type { RateRow } from './rateRow.ts';

/** Code of the thickness of a covering that nobody has measured. */
export function thicknessCode(kind: string): string {
  return `consumables/thickness/${kind}`;
}

/** Code of the density of a covering: mineral ones have their own, the rest that of coatings. */
export function densityCode(kind: string): string {
  return `consumables/density/${MINERAL.includes(kind) ? 'mineral' : 'coating'}`;
}

const MINERAL: readonly string[] = ['thinset', 'gypsum', 'ceramic', 'levelling'];

const thick = (kind: string, term: string, mm: readonly [number, number, number]): RateRow =>
  row(thicknessCode(kind), `${term}, if not measured`, 'mm', mm);

/** What comes off with a covering: its thickness, mm, where none is measured, and its mass. Common practice, no source. */
export const coverThickness: readonly RateRow[] = [
  row('consumables/density/coating', 'Old coatings and adhesives', 'kg per m3', [1200, 1450, 1700]),
  row('consumables/density/mineral', 'Mortar beds, levelling, gypsum, ceramic', 'kg per m3', [1400, 1900, 2200]),
  thick('cure', 'Curing compound', [0.05, 0.1, 0.2]),
  thick('sealer', 'Sealer', [0.05, 0.1, 0.2]),
  thick('paint', 'Paint or thin coating', [0.1, 0.25, 0.5]),
  thick('elastomer', 'Rubbery coating', [1, 1.5, 3]),
  thick('tyre_lifted', 'Coating lifted by tyres', [0.25, 0.5, 1]),
  thick('tape', 'Tape, line marking', [0.1, 0.2, 0.4]),
  thick('adhesive', 'Carpet or tile adhesive', [0.3, 1, 2]),
  thick('tile_sheet', 'Resilient tile or sheet', [2, 3, 4]),
  thick('mastic_black', 'Black mastic', [0.3, 0.8, 1.5]),
  thick('thinset', 'Thinset mortar', [3, 5, 8]),
  thick('gypsum', 'Gypsum underlayment', [10, 25, 40]),
  thick('ceramic', 'Ceramic tile and its bed', [12, 20, 40]),
  thick('levelling', 'Levelling compound', [3, 6, 12]),
];
