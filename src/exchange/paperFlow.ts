import type { Row } from './paperRows.ts';

/** A column that rows may fill, top to bottom. */
export interface FlowColumn {
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly heightMm: number;
}

export interface Flowed {
  readonly page: number;
  readonly svg: string;
}

/** Rows that must not be parted: those that keep with the next, and the one they keep to. */
function blocksOf(rows: readonly Row[]): Row[][] {
  const blocks: Row[][] = [];
  let block: Row[] = [];
  for (const row of rows) {
    block.push(row);
    if (row.keepWithNext) continue;
    blocks.push(block);
    block = [];
  }
  if (block.length > 0) blocks.push(block);
  return blocks;
}

function heightOf(rows: readonly Row[]): number {
  return rows.reduce((sum, row) => sum + row.heightMm, 0);
}

/**
 * Fills columns one after the other. A column that begins in the middle of a card repeats its head.
 * `columns` is asked for as many as are needed; a block that is higher than a whole column is drawn all the same.
 */
export function flow(rows: readonly Row[], columns: (nth: number) => FlowColumn): Flowed[] {
  const drawn: Flowed[] = [];
  let nth = 0;
  let column = columns(nth);
  let y = 0;
  const put = (row: Row): void => {
    drawn.push({ page: column.page, svg: row.draw(column.x, column.y + y) });
    y += row.heightMm;
  };
  for (const block of blocksOf(rows)) {
    const [first] = block;
    if (y > 0 && y + heightOf(block) > column.heightMm) {
      nth += 1;
      column = columns(nth);
      y = 0;
      if (first?.head && !block.includes(first.head)) put(first.head);
    }
    for (const row of block) put(row);
  }
  return drawn;
}
