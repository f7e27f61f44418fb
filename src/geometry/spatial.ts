import Flatbush from 'flatbush';
import { type Box, boxesMeet } from './box.ts';

/** A box index that may be empty: numbers of the boxes that meet a given one, touching included. */
export interface BoxIndex {
  meeting(box: Box): readonly number[];
}

const FEW = 12;

export function boxIndex(boxes: readonly Box[]): BoxIndex {
  // Of a few boxes looking at all costs less than a tree.
  if (boxes.length <= FEW) return { meeting: (box) => boxes.flatMap((each, i) => (boxesMeet(each, box) ? [i] : [])) };
  const tree = new Flatbush(boxes.length);
  for (const box of boxes) tree.add(box.minX, box.minY, box.maxX, box.maxY);
  tree.finish();
  return { meeting: (box) => tree.search(box.minX, box.minY, box.maxX, box.maxY) };
}
