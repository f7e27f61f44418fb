import type { Showing } from '../paint/paintFloor.ts';
import type { Prim } from '../paint/prim.ts';
import type { PlanView } from '../paint/view.ts';
import type { Drawing } from './drawPrims.ts';

/** What the layers of a floor are drawn from, whether item by item or as one picture. */
export interface FloorLayersProps {
  readonly plan: PlanView;
  readonly showing: Showing;
  readonly drawing: Omit<Drawing, 'context'>;
  /** A pan or zoom gesture runs. */
  readonly moving: boolean;
  readonly hand: readonly Prim[];
  /** Scale bar and north, on the glass. */
  readonly drawGlass: (drawing: Drawing) => void;
}
