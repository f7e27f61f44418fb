import type { Cell } from '../src/model/cell.ts';
import { applyCells, cellsFor, EMPTY_DOC, type Doc } from '../src/model/doc.ts';
import { keyBetween } from '../src/model/order.ts';
import type { RecordOf, RecordType } from '../src/model/records/all.ts';

export const FLOOR = 'floor:ground' as const;

/** The fields of an item but for those that every item of the demo has alike. */
export type Item<T extends RecordType> = Omit<RecordOf<T>, 'floor' | 'order'>;

/** Builds a job record by record, in the order in which it was surveyed. Coordinates in mm, x right, y down. */
export interface Placer {
  put<T extends RecordType>(id: `${T}:${string}`, fields: RecordOf<T>): void;
  item<T extends RecordType>(id: `${T}:${string}`, fields: Item<T>): void;
  cells(cells: readonly Cell[]): void;
  doc(): Doc;
}

export function placer(): Placer {
  const all: Cell[] = [];
  let order = '';
  const nextOrder = (): string => {
    order = keyBetween(order, null);
    return order;
  };
  return {
    put(id, fields) {
      all.push(...cellsFor(id, { order: nextOrder(), ...fields }));
    },
    item(id, fields) {
      all.push(...cellsFor(id, { floor: FLOOR, order: nextOrder(), ...fields } as never));
    },
    cells(cells) {
      all.push(...cells);
    },
    doc: () => applyCells(EMPTY_DOC, all),
  };
}

export type Point = readonly [x: number, y: number];

export function rectangle(left: number, top: number, right: number, bottom: number): Point[] {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}
