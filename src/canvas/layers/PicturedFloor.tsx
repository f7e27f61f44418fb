import { useCallback, useMemo, type ReactElement } from 'react';
import Konva from 'konva/lib/Core.js';
import { Layer } from 'react-konva/lib/ReactKonvaCore.js';
import { painted, type Painted } from '../paint/kept.ts';
import { PAINT_ORDER, paintFloor, paintPicked, type Showing } from '../paint/paintFloor.ts';
import { changedPart } from '../paint/planPart.ts';
import type { Look, Prim } from '../paint/prim.ts';
import { paintVeil } from '../paint/veil.ts';
import type { PlanView } from '../paint/view.ts';
import { ClassShape } from './ClassShape.tsx';
import { drawPainted, type Drawing } from './drawPrims.ts';
import { drawPicture } from './floorPicture.ts';
import type { FloorLayersProps } from './FloorLayers.ts';
import { useFloorPicture } from './useFloorPicture.ts';

/** Areas that would hide what lies on them: of these only the lines are laid over the picture. */
const FLOORS: ReadonlySet<string> = new Set(['page', 'slab', 'hatch', 'reach']);

/** What has changed since the picture was drawn, in its new place, and a veil over where it was. */
function paintChanges(plan: PlanView, was: PlanView, look: Look, showing: Showing): readonly Painted[] {
  const gone = changedPart(was, plan);
  const part = changedPart(plan, was);
  return [...(gone ? paintVeil(gone) : []), ...(part ? paintPart(part, look, showing) : [])];
}

function paintPart(part: PlanView, look: Look, showing: Showing): readonly Painted[] {
  const floor = paintFloor(part, look, { ...showing, tags: false, reach: 'none', picked: [] });
  return PAINT_ORDER.flatMap((name) => (FLOORS.has(name) ? floor[name].map(linesOf) : floor[name]));
}

function linesOf({ id, box, prims }: Painted): Painted {
  return { id, box, prims: prims.filter((prim: Prim) => prim.kind === 'line') };
}

/** A crowded floor: one picture, and over it what changes under the hand. Only that is drawn while the hand moves. */
export function PicturedFloor({ plan, showing, drawing, moving, hand, drawGlass }: FloorLayersProps): ReactElement {
  const picture = useFloorPicture({ plan, showing, drawing, sharpness: Konva.pixelRatio }, moving);
  const drawFloor = useCallback((lent: Drawing) => picture && drawPicture(lent, picture), [picture]);
  const pxPerMm = drawing.camera.pxPerMm;
  const look = useMemo(() => ({ pxPerMm, picked: false, print: false }), [pxPerMm]);
  const changes = useMemo(
    () => (picture ? paintChanges(plan, picture.plan, look, showing) : []),
    [plan, picture, look, showing],
  );
  const picked = useMemo(() => paintPicked(plan, look, showing), [plan, look, showing]);
  const drawHand = useCallback(
    (lent: Drawing) => drawPainted(lent, [...changes, ...picked, painted('hand', hand)]),
    [changes, picked, hand],
  );
  return (
    <>
      <Layer listening={false}>
        <ClassShape name="picture" drawing={drawing} draw={drawFloor} />
      </Layer>
      <Layer listening={false}>
        <ClassShape name="glass" drawing={drawing} draw={drawGlass} />
      </Layer>
      <Layer listening={false}>
        <ClassShape name="hand" drawing={drawing} draw={drawHand} />
      </Layer>
    </>
  );
}
