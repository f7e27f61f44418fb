import type { CommandCall, RecordId } from '../model/cell.ts';
import type { Point } from '../geometry/floorShape.ts';

/** Low, likely and high of one number. For what is measured all three are the same. */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** R read, R2 second-hand, M from memory of a named document, P common practice without source, A arithmetic, own: the user's. */
export type Provenance = 'R' | 'R2' | 'R/P' | 'M' | 'P' | 'A' | 'own' | 'measured';

/**
 * One number that went into a line. `source` is an id of docs/sources.md, 'common practice, no source', or 'the plan'.
 * `value.low` is what it is in the low case of the line: hours are low where the rate is high, so the low case of a
 * rate of 15, 25, 40 m2/h is 40.
 */
export interface Term {
  readonly name: string;
  readonly value: Range;
  readonly unit: string;
  readonly source: string;
  readonly provenance: Provenance;
  readonly fromMemory: boolean;
  /** The line or record it was taken from, to walk on to. */
  readonly from: string | null;
}

/**
 * How a quantity follows from its terms, low, likely and high case each by itself. Formulas are data, so that a test
 * and the Why panel compute the line again: names refer to terms. 'round' goes to the whole, half up.
 */
export type Formula =
  | { readonly op: 'term'; readonly name: string }
  | { readonly op: 'number'; readonly value: number }
  | { readonly op: 'add' | 'multiply' | 'max'; readonly of: readonly Formula[] }
  | { readonly op: 'subtract' | 'divide'; readonly left: Formula; readonly right: Formula }
  | { readonly op: 'ceil' | 'round'; readonly of: Formula };

export type Trade = 'floor' | 'edge' | 'line' | 'spot' | 'hours' | 'material' | 'dust' | 'money';

export interface Line {
  /** Unique in a takeoff: code, zone and record joined, for Why and for tests. */
  readonly key: string;
  readonly code: string;
  readonly trade: Trade;
  readonly quantity: Range;
  /** m2, m, number, h, m3, L, kg, sets ...; 'minor' is whole minor units (cents) of the job's currency. */
  readonly unit: string;
  /** null: the whole floor. */
  readonly zone: RecordId | 'rest' | null;
  readonly phase: RecordId | null;
  readonly alternate: RecordId | null;
  /** Records that made it: what lights up on the plan. */
  readonly records: readonly RecordId[];
  readonly working: { readonly formula: Formula; readonly terms: readonly Term[] };
  /** Set when a hold stands: a quantity, and no rate, hour or price of it. */
  readonly held: HoldKind | null;
}

export interface Fault {
  readonly record: RecordId;
  readonly code: string;
  readonly at: Point | null;
  readonly fix: CommandCall | null;
}

export type HoldKind = 'asbestos' | 'lead' | 'inSlab';

export interface Hold {
  readonly kind: HoldKind;
  /** The zone that is held, or null for the whole job (what lies in the slab). */
  readonly zone: RecordId | 'rest' | null;
  readonly records: readonly RecordId[];
  /** finding: something drawn calls for it. building: an old or undated building whose covering is not known. cutting: work that cuts. */
  readonly reason: 'finding' | 'building' | 'cutting';
}
