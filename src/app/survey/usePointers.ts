import { useEffect, useLayoutEffect, useRef } from 'react';
import { MM_PER_IN, type Units } from '../../model/units.ts';
import { pannedBy, toFloor, turnedAbout, zoomedAbout, type Camera, type View } from '../../canvas/camera.ts';
import type { Gesture } from '../../canvas/input/gesture.ts';
import { FINGER } from '../../canvas/look.ts';
import { listenToPointers } from '../../canvas/input/pointer.ts';
import { breakOff, carriesCorner, fingerNow, leaveCanvas, sendMove } from './hand.ts';
import { keysDown } from './useKeys.ts';

/** How near counts as met, px. */
const REACH_PX = { mouse: 12, pen: 12, touch: 24 } as const;
const LEAST_GRID_PX = 7;
const GRIDS = { metric: [10, 50, 100, 500, 1000], imperial: [1, 3, 6, 12, 48].map((inches) => inches * MM_PER_IN) };
/** Less than this is a hand that only meant to zoom. */
const LEAST_TURN_DEG = 0.2;

function gridFor(pxPerMm: number, units: Units, tracing: boolean): number | null {
  if (tracing) return null;
  return GRIDS[units].find((mm) => mm * pxPerMm >= LEAST_GRID_PX) ?? null;
}

export interface PointerSetting {
  readonly camera: Camera;
  readonly view: View;
  readonly units: Units;
  /** A page lies under the plan: its lines are the grid. */
  readonly tracing: boolean;
  readonly change: (next: (camera: Camera) => Camera) => void;
}

function onGesture(gesture: Gesture, now: PointerSetting): void {
  switch (gesture.kind) {
    case 'breakOff':
      return breakOff();
    case 'pan':
      return now.change((camera) => pannedBy(camera, gesture.dx, gesture.dy));
    case 'pinch': {
      const turn = Math.abs(gesture.turnDeg) < LEAST_TURN_DEG ? 0 : gesture.turnDeg;
      return now.change((camera) =>
        turnedAbout(zoomedAbout(camera, now.view, gesture.about, gesture.factor), now.view, gesture.about, turn),
      );
    }
    default: {
      const { camera, view } = now;
      // A long press takes one more, as shift does with a keyboard.
      const long = gesture.kind === 'longPress';
      const dragged = gesture.kind === 'drag' || gesture.kind === 'dragEnd';
      const raised = gesture.pointer === 'touch' && dragged && carriesCorner();
      const [x, y] = gesture.at;
      sendMove(
        {
          kind: gesture.kind === 'longPress' ? 'tap' : gesture.kind,
          at: toFloor(camera, view, raised ? [x, y - FINGER.abovePx] : gesture.at),
          shift: gesture.shift || long,
          pxPerMm: camera.pxPerMm,
          reachPx: REACH_PX[gesture.pointer],
          off: keysDown.alt,
          gridMm: gridFor(camera.pxPerMm, now.units, now.tracing),
        },
        // The ring is shown while a finger aims; a tap sets the point where it is.
        gesture.pointer === 'touch' && (gesture.kind === 'move' || (raised && gesture.kind === 'drag')),
      );
    }
  }
}

/** What was typed is taken before the plan is touched: a tap by finger takes the focus only after it is over. */
function leaveField(): void {
  const field = document.activeElement;
  if (field instanceof HTMLElement && field.matches('input, textarea')) field.blur();
}

/** Joins the canvas element to the hand and the camera. */
export function usePointers(element: HTMLElement | null, setting: PointerSetting): void {
  const latest = useRef(setting);
  useLayoutEffect(() => {
    latest.current = setting;
  });
  useEffect(() => {
    if (!element) return;
    element.addEventListener('pointerdown', leaveField, true);
    const unlisten = listenToPointers(element, {
      gesture: (gesture) => onGesture(gesture, latest.current),
      wheel(meaning, at) {
        const { change, view } = latest.current;
        if (meaning.kind === 'pan') change((camera) => pannedBy(camera, meaning.dx, meaning.dy));
        else change((camera) => zoomedAbout(camera, view, at, meaning.factor));
      },
      left: leaveCanvas,
      finger: fingerNow,
      panning: () => keysDown.space,
    });
    return () => {
      element.removeEventListener('pointerdown', leaveField, true);
      unlisten();
    };
  }, [element]);
}
