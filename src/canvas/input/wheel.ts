/** Plain facts of a wheel event. */
export interface WheelInput {
  readonly dx: number;
  readonly dy: number;
  /** 0 pixels, 1 lines, 2 pages. */
  readonly mode: number;
  /** Also set by browsers while two fingers pinch on a trackpad. */
  readonly ctrl: boolean;
  readonly shift: boolean;
}

export type WheelMeaning =
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'pan'; readonly dx: number; readonly dy: number };

/** A notch of a wheel: a fifth nearer or farther. */
const NOTCH_PX = 100;
const ZOOM_A_NOTCH = 1.2;
const LINE_PX = 33;
const PAGE_PX = 400;
/** A pinch on a trackpad comes in small numbers. */
const PINCH_GAIN = 4;

/**
 * A wheel zooms, two fingers on a trackpad pan, a pinch zooms. Browsers tell them apart only by size: a
 * wheel turns in whole notches straight up or down, fingers slide in small or slanting steps.
 */
export function wheelMeaning(wheel: WheelInput): WheelMeaning {
  const unit = wheel.mode === 1 ? LINE_PX : wheel.mode === 2 ? PAGE_PX : 1;
  const dx = wheel.dx * unit;
  const dy = wheel.dy * unit;
  const isNotch = wheel.mode !== 0 || (dx === 0 && Math.abs(dy) >= NOTCH_PX / 2 && Number.isInteger(dy));
  if (wheel.ctrl) return zoom(isNotch ? dy : dy * PINCH_GAIN);
  if (wheel.shift && isNotch) return { kind: 'pan', dx: -dy, dy: 0 };
  return isNotch ? zoom(dy) : { kind: 'pan', dx: -dx, dy: -dy };
}

function zoom(dyPx: number): WheelMeaning {
  const notches = Math.max(-3, Math.min(3, dyPx / NOTCH_PX));
  return { kind: 'zoom', factor: ZOOM_A_NOTCH ** -notches };
}
