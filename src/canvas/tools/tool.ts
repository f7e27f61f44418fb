import type { Point } from '../../geometry/floorShape.ts';
import type { Cell, CommandCall, RecordId } from '../../model/cell.ts';
import type { Doc } from '../../model/doc.ts';
import type { NewId } from '../../model/id.ts';
import type { Prim } from '../paint/prim.ts';
import type { Snap, SnapKind } from '../snap/snap.ts';

/** Everything a hand can do, whatever it holds. Pan, zoom and pinch are dealt with before tools. */
export type Input =
  | {
      /** A double tap comes in place of the second of two taps; a drag that two fingers broke off ends in `cancel`. */
      readonly kind: 'move' | 'tap' | 'doubleTap' | 'dragStart' | 'drag' | 'dragEnd';
      readonly at: Snap;
      readonly hit: Hit | null;
      readonly shift: boolean;
    }
  /** Typed length and turn for the next point; turn is counted from the last edge drawn, clockwise, degrees. */
  | { readonly kind: 'typed'; readonly lengthMm?: number; readonly turnDeg?: number }
  /** Arrow keys: a step on the floor, mm. */
  | { readonly kind: 'nudge'; readonly by: Point }
  /** Enter or Done; Backspace; Esc; Delete. */
  | { readonly kind: 'finish' | 'back' | 'cancel' | 'remove' };

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
  /** Edges of the picked slab that the sheet speaks of. */
  readonly pickedEdges?: readonly number[];
  readonly newId: NewId;
  /** Fields the entry bar holds for the next item: thickness, width, kind… by slot. */
  readonly settings: Readonly<Record<string, unknown>>;
}

export interface Step<S> {
  readonly state: S;
  readonly run?: CommandCall;
  readonly pick?: readonly RecordId[];
  readonly pickEdges?: readonly number[];
  readonly after?: 'stay' | 'pick';
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
  readonly from: Point | null;
  /** Records that snapping must skip while they move. */
  readonly moving: readonly RecordId[];
  /** Corners set so far, which are in no record yet: snapping knows them too. */
  readonly own?: readonly Point[];
}

export interface Tool<S> {
  readonly id: string;
  /** Types that a tap is meant for; others under the point are looked through. Not given: everything. */
  readonly aims?: readonly string[];
  /** A finger sets points from beneath (the point stands above it), or takes hold of things where it is. */
  readonly finger: 'points' | 'holds';
  /** At rest a drag frames a rectangle, by finger too. */
  readonly frames?: true;
  /** False: points stay where they are set (picks on a page's pixels). Some kinds: others mean nothing for what is drawn. */
  readonly snaps?: false | readonly SnapKind[];
  readonly idle: S;
  step(state: S, input: Input, env: ToolEnv): Step<S>;
  draft(state: S, env: ToolEnv): Draft;
}
