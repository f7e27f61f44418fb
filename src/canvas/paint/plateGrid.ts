/** A box in px, counted from the floor's origin at this scale. */
export interface PxBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export interface PlateGrid {
  add(box: PxBox): void;
  /** How many plates a box would cover, at least in part. */
  covered(box: PxBox): number;
}

const CELL_PX = 96;

function meets(a: PxBox, b: PxBox): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

function* cellsOf(box: PxBox): Iterable<string> {
  for (let x = Math.floor(box.minX / CELL_PX); x <= Math.floor(box.maxX / CELL_PX); x += 1) {
    for (let y = Math.floor(box.minY / CELL_PX); y <= Math.floor(box.maxY / CELL_PX); y += 1) yield `${x} ${y}`;
  }
}

/** Plates that have their place, by cells of the screen: thousands of them must not be asked one by one. */
export function plateGrid(): PlateGrid {
  const cells = new Map<string, PxBox[]>();
  return {
    add(box) {
      for (const key of cellsOf(box)) {
        const list = cells.get(key);
        if (list) list.push(box);
        else cells.set(key, [box]);
      }
    },
    covered(box) {
      const met = new Set<PxBox>();
      for (const key of cellsOf(box)) for (const other of cells.get(key) ?? []) if (meets(box, other)) met.add(other);
      return met.size;
    },
  };
}
