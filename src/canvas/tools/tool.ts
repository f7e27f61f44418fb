import type { Cell, CommandCall, RecordId } from '../../model/cell.ts';
import type { Doc } from '../../model/doc.ts';
import type { NewId } from '../../model/id.ts';
import type { Prim } from '../paint/prim.ts';
import type { Snap } from '../snap/snap.ts';

/** Everything a hand can do, whatever it holds. Pan, zoom and pinch are dealt with before tools. */
export type Input =
  | {
      readonly kind: 'move' | 'tap' | 'dragStart' | 'drag' | 'dragEnd';
      readonly at: Snap;
      readonly hit: Hit | null;
      readonly shift: boolean;
    }
  /** Typed length and turn for the next point; turn is counted from the last edge drawn, clockwise, degrees. */
  | { readonly kind: 'typed'; readonly lengthMm?: number; readonly turnDeg?: number }
  | { readonly kind: 'finish' | 'back' | 'cancel' };

/** What lies under the point: a record, and which corner or edge of it. */
export interface Hit {
  readonly id: RecordId;
  readonly corner: number | null;
  readonly edge: number | null;
}

export interface ToolEnv {
  readonly doc: Doc;
  readonly floor: RecordId;
  readonly picked: readonly RecordId[];
  readonly newId: NewId;
  /** Fields the entry bar holds for the next item: thickness, width, kind… by slot. */
  readonly settings: Readonly<Record<string, unknown>>;
}

export interface Step<S> {
  readonly state: S;
  readonly run?: CommandCall;
  readonly pick?: readonly RecordId[];
  readonly then?: 'stay' | 'pick';
  /** A sentence code when the input was refused: it changed nothing. */
  readonly refused?: string;
}

export interface Draft {
  /** Overlay on the plan while a gesture runs: painters and the takeoff preview see it. */
  readonly cells: readonly Cell[];
  readonly prims: readonly Prim[];
  /** Code of the hint sentence. */
  readonly hint: string;
  readonly cursor: string;
  /** The live line, for the Length and Turn boxes. */
  readonly live: { readonly lengthMm: number; readonly turnDeg: number } | null;
  /** Where the next line starts, for snapping. */
  readonly from: readonly [number, number] | null;
  /** Records that snapping must skip while they move. */
  readonly moving: readonly RecordId[];
}

export interface Tool<S> {
  readonly id: string;
  readonly idle: S;
  step(state: S, input: Input, env: ToolEnv): Step<S>;
  draft(state: S, env: ToolEnv): Draft;
}
