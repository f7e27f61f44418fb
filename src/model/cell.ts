/** A cell is the only way a plan changes: one field of one record takes one value. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json | undefined };

/** `type:random`, for example `slab:x7k2…`; the part before the colon is the record's type. */
export type RecordId = `${string}:${string}`;

/** `undefined` takes the field away again (undo of a first write). */
export type Cell = readonly [id: RecordId, slot: string, value: Json | undefined];

/** Counts, not clock time: a log can be merged later without trusting anybody's clock. */
export interface Stamp {
  readonly tick: number;
  readonly device: string;
}

export type Origin = 'local' | 'remote' | 'undo' | 'redo' | 'load';

/** What was done, frozen, logged as it is. At most one cell a field. */
export interface Change {
  readonly label: string;
  readonly origin: Origin;
  readonly stamp: Stamp;
  readonly writes: readonly Cell[];
  readonly before: readonly Cell[];
}

export interface CommandCall {
  readonly name: string;
  readonly args: Json;
}

/** The type a record id speaks of. */
export function typeOf(id: RecordId): string {
  return id.slice(0, id.indexOf(':'));
}
