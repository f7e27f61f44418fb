import type { Cell } from './cells.ts';
import type { LedgerState, Stale } from './ledgerState.ts';
import type { KnownCell, SumsMemory } from './sumsMemory.ts';

/*
 * The cells of all tiles added up.
 *
 *     tile 1    zone a, strip   1.2       Each cell of the floor, by zone, part and findings, has a number. Tiles are
 *     tile 2    zone a, strip   0.4       taken in one order, always the same, so that a sum does not depend on which
 *               -------------------       of them changed last.
 *     cell 7    zone a, strip   1.6
 */

/** Adds the areas up again; answers the zones in which one changed. */
export function addAreas(state: LedgerState, stale: Stale): Set<number> {
  const { sums } = state;
  if (stale.pieces.size === 0) return new Set();
  for (const tile of stale.pieces) tile.cellNumbers = tile.cells.map((cell) => cellNumber(sums, cell));
  const before = sums.areas;
  const areas = new Float64Array(sums.cells.length);
  for (const { cells, cellNumbers } of state.grid.tiles) {
    for (let i = 0; i < cells.length; i += 1) {
      const number = cellNumbers[i] as number;
      areas[number] = (areas[number] as number) + (cells[i] as Cell).areaMm2;
    }
  }
  sums.areas = areas;
  const changed = new Set<number>();
  sums.isFindingMoved = false;
  for (let number = 0; number < areas.length; number += 1) {
    const [area, old] = [areas[number] as number, before[number] ?? 0];
    if (area === old) continue;
    const { zone, findings } = sums.cells[number] as KnownCell;
    changed.add(zone);
    if (findings.length > 0 && area > 0 !== old > 0) sums.isFindingMoved = true;
  }
  return changed;
}

function cellNumber(sums: SumsMemory, { zone, part, findings }: Cell): number {
  const key = `${zone} ${part} ${findings.join()}`;
  const known = sums.cellNumbers.get(key);
  if (known !== undefined) return known;
  const number = sums.cells.push({ zone, part, findings }) - 1;
  sums.cellNumbers.set(key, number);
  const ofZone = sums.cellsOfZone.get(zone) ?? [];
  sums.cellsOfZone.set(zone, ofZone);
  ofZone.push(number);
  return number;
}

/** Numbers of the cells of a zone by part and findings, whenever they were first met: sums are always taken in one order. */
export function cellsInOrder({ cells, cellsOfZone }: SumsMemory, zone: number): number[] {
  const keyOf = (number: number): string => {
    const cell = cells[number];
    return cell ? `${cell.part} ${cell.findings.join()}` : '';
  };
  const keyed = (cellsOfZone.get(zone) ?? []).map((number) => ({ number, key: keyOf(number) }));
  return keyed.toSorted((a, b) => (a.key < b.key ? -1 : 1)).map(({ number }) => number);
}
