import type { Cell } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import type { FloorMeasure } from '../geometry/floorShape.ts';
import type { Fault, Hold, Line } from './line.ts';

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

export interface Answer {
  readonly tick: number;
  readonly takeoff: Takeoff;
  /** True while it shows an overlay of a drag that is not in the plan. */
  readonly preview: boolean;
}

/** The same contract in a worker and inline. The newest tick wins; cells of a preview are dropped, never merged. */
export interface TakeoffPort {
  load(doc: Doc, floor: string, tick: number): void;
  change(cells: readonly Cell[], tick: number): void;
  preview(cells: readonly Cell[] | null, tick: number): void;
  listen(on: (answer: Answer) => void): () => void;
  close(): void;
}
