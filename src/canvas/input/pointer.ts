import type { Point } from '../../geometry/floorShape.ts';
import { gestureStep, NO_GESTURE, type Gesture, type GestureInput, type PointerKind, type Finger } from './gesture.ts';
import { wheelMeaning, type WheelMeaning } from './wheel.ts';

/** What the canvas is told; screen px from its top left corner. */
export interface PointerEars {
  readonly gesture: (gesture: Gesture) => void;
  readonly wheel: (meaning: WheelMeaning, at: Point) => void;
  /** The pointer has left: nothing is hovered. */
  readonly left: () => void;
  /** Of the tool in hand. */
  readonly finger: () => Finger;
  /** The space bar is down. */
  readonly panning: () => boolean;
}

const CLOCK_MS = 50;

/** Joins an element's pointer and wheel events to plain gestures. Answers how to let go of it again. */
export function listenToPointers(element: HTMLElement, ears: PointerEars): () => void {
  let state = NO_GESTURE;
  let clock: ReturnType<typeof setInterval> | null = null;
  /** Pointers that went down here: events of others are not ours. */
  const down = new Map<number, PointerKind>();

  const feed = (input: GestureInput): void => {
    const step = gestureStep(state, input, ears.finger());
    state = step.state;
    for (const gesture of step.out) ears.gesture(gesture);
    const waits = state.doing === 'pressing';
    if (waits && clock === null)
      clock = setInterval(() => feed({ kind: 'clock', timeMs: performance.now() }), CLOCK_MS);
    if (!waits && clock !== null) {
      clearInterval(clock);
      clock = null;
    }
  };

  const placeOf = (event: MouseEvent): Point => {
    const box = element.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const send = (kind: 'down' | 'move' | 'up' | 'cancel', event: PointerEvent): void =>
    feed({
      kind,
      id: event.pointerId,
      pointer: kindOf(event),
      at: placeOf(event),
      timeMs: performance.now(),
      shift: event.shiftKey,
      pans: event.pointerType !== 'touch' && (event.button === 1 || event.button === 2 || ears.panning()),
    });

  const onDown = (event: PointerEvent): void => {
    if (down.has(event.pointerId)) return;
    down.set(event.pointerId, kindOf(event));
    try {
      element.setPointerCapture(event.pointerId);
    } catch {
      // The pointer was up again before we heard of it; its own `up` follows.
    }
    // The middle button would start the browser's own scrolling.
    if (event.button === 1) event.preventDefault();
    send('down', event);
  };
  const onMove = (event: PointerEvent): void => {
    if (down.has(event.pointerId) || event.pointerType !== 'touch') send('move', event);
  };
  const onUp = (event: PointerEvent): void => {
    if (down.delete(event.pointerId)) send('up', event);
  };
  const onCancel = (event: PointerEvent): void => {
    if (down.delete(event.pointerId)) send('cancel', event);
  };
  const onLeave = (event: PointerEvent): void => {
    if (down.size === 0 && event.pointerType !== 'touch') ears.left();
  };
  const onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const { deltaX: dx, deltaY: dy, deltaMode: mode, ctrlKey, metaKey, shiftKey: shift } = event;
    ears.wheel(wheelMeaning({ dx, dy, mode, ctrl: ctrlKey || metaKey, shift }), placeOf(event));
  };
  // With `touch-action: none` nothing scrolls, yet a browser takes a finger that lifts fast for a throw, and swallows the
  // next tap, wherever it lands, as the one that stops it. A move that is ours throws nothing.
  const onTouchMove = (event: TouchEvent): void => {
    if (event.cancelable) event.preventDefault();
  };
  const onMenu = (event: Event): void => event.preventDefault();

  element.addEventListener('pointerdown', onDown);
  element.addEventListener('pointermove', onMove);
  element.addEventListener('pointerup', onUp);
  element.addEventListener('pointercancel', onCancel);
  element.addEventListener('pointerleave', onLeave);
  element.addEventListener('wheel', onWheel, { passive: false });
  element.addEventListener('touchmove', onTouchMove, { passive: false });
  element.addEventListener('contextmenu', onMenu);
  return () => {
    if (clock !== null) clearInterval(clock);
    element.removeEventListener('pointerdown', onDown);
    element.removeEventListener('pointermove', onMove);
    element.removeEventListener('pointerup', onUp);
    element.removeEventListener('pointercancel', onCancel);
    element.removeEventListener('pointerleave', onLeave);
    element.removeEventListener('wheel', onWheel);
    element.removeEventListener('touchmove', onTouchMove);
    element.removeEventListener('contextmenu', onMenu);
  };
}

function kindOf(event: PointerEvent): PointerKind {
  return event.pointerType === 'pen' || event.pointerType === 'touch' ? event.pointerType : 'mouse';
}
