import Flatbush from 'flatbush';
import type { Box } from './box.ts';

/** A box index that may be empty: numbers of the boxes that meet a given one, touching included. */
export interface BoxIndex {
  meeting(box: Box): readonly number[];
}

export function boxIndex(boxes: readonly Box[]): BoxIndex {
  if (boxes.length === 0) return { meeting: () => [] };
  const tree = new Flatbush(boxes.length);
  for (const box of boxes) tree.add(box.minX, box.minY, box.maxX, box.maxY);
  tree.finish();
  return { meeting: (box) => tree.search(box.minX, box.minY, box.maxX, box.maxY) };
}
