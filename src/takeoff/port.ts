import type { Cell } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import type { FloorMeasure } from '../geometry/floorShape.ts';
import type { Fault, Hold, Line } from './line.ts';
import type { Totals } from './totals.ts';

/** Everything the takeoff says of one floor of a job. Derived, never stored. */
export interface Takeoff {
  readonly floor: string;
  readonly measure: FloorMeasure;
  readonly lines: readonly Line[];
  readonly holds: readonly Hold[];
  readonly faults: readonly Fault[];
  /** Why this is not an offer yet: open questions and holds, as codes for the words. Empty: it may be issued. */
  readonly notAnOffer: readonly string[];
  /** Codes of prices that the work needs and nobody has set (`day/hand_peener`): the money page asks for them. */
  readonly missingPrices: readonly string[];
  /** What must be said beside the price without blocking it, as codes ('samplePrices', 'gasAppliance'). */
  readonly notices: readonly string[];
  /** Why there are no quantities at all ('pageNotTrued', 'noSlab', 'noFloor'), or null. */
  readonly blocked: string | null;
}

/** To which question something is the answer: asks are counted from one, by every call of load, change and preview. */
export interface Answered {
  readonly ask: number;
  readonly tick: number;
  /** True while it shows an overlay of a drag that is not in the plan. */
  readonly preview: boolean;
  /** Null when there are no quantities (`Takeoff.blocked`). */
  readonly totals: Totals | null;
}

export interface Answer extends Answered {
  readonly takeoff: Takeoff;
}

/**
 * The same contract in a worker and inline. The newest tick wins; cells of a preview are dropped, never merged.
 *
 *   ask ---> totals (areas and lengths, at once) ---> answer (hours, money, outlines: with the totals where that is
 *                                                     quick, else when nothing has been asked for a while)
 *
 * load, change and preview answer the number of the ask.
 */
export interface TakeoffPort {
  load(doc: Doc, floor: string, tick: number): number;
  change(cells: readonly Cell[], tick: number): number;
  preview(cells: readonly Cell[] | null, tick: number): number;
  /** `onTotals` hears only what comes ahead of its answer. */
  listen(on: (answer: Answer) => void, onTotals?: (totals: Answered) => void): () => void;
  close(): void;
}
