import type { Point } from '../../geometry/floorShape.ts';
import { FINGER } from '../look.ts';

/**
 * From plain pointer events to what the hand means. Pure: time and places come in with the events.
 *
 *   one pointer   tap, double tap, drag, long press
 *   two fingers   pan, zoom and turn together; they never draw, and what one finger had begun is broken off
 *   a palm        does nothing while a pen is near
 *   a finger that sets points aims from beneath: the point stands above it, and is set when it lifts
 *   a finger that may frame and moves off at once drags a rectangle; one that rests first aims
 */
export type PointerKind = 'mouse' | 'pen' | 'touch';

export interface PointerInput {
  readonly kind: 'down' | 'move' | 'up' | 'cancel';
  readonly id: number;
  readonly pointer: PointerKind;
  readonly at: Point;
  readonly timeMs: number;
  readonly shift: boolean;
  /** Middle or right button, or the space bar held: it pans. */
  readonly pans: boolean;
}

/** Time has passed with no event: long presses come from here. */
export interface ClockInput {
  readonly kind: 'clock';
  readonly timeMs: number;
}

export type GestureInput = PointerInput | ClockInput;

export type Gesture =
  | {
      readonly kind: 'move' | 'tap' | 'doubleTap' | 'dragStart' | 'drag' | 'dragEnd' | 'longPress';
      /** The point that is meant; for a finger that aims it stands above the contact. */
      readonly at: Point;
      readonly pointer: PointerKind;
      readonly shift: boolean;
    }
  /** What was begun must be forgotten. */
  | { readonly kind: 'breakOff' }
  | { readonly kind: 'pan'; readonly dx: number; readonly dy: number }
  | { readonly kind: 'pinch'; readonly about: Point; readonly factor: number; readonly turnDeg: number };

interface Contact {
  readonly id: number;
  readonly pointer: PointerKind;
  readonly start: Point;
  readonly at: Point;
  readonly startMs: number;
  readonly shift: boolean;
}

export interface GestureState {
  readonly contacts: readonly Contact[];
  readonly doing: 'nothing' | 'pressing' | 'dragging' | 'aiming' | 'panning' | 'pinching' | 'spent';
  readonly lastTap: { readonly at: Point; readonly timeMs: number } | null;
  /** When a pen was last seen. */
  readonly penMs: number;
}

export interface GestureStep {
  readonly state: GestureState;
  readonly out: readonly Gesture[];
}

export const NO_GESTURE: GestureState = { contacts: [], doing: 'nothing', lastTap: null, penMs: -Infinity };

/** A hand is never quite still: less than this is a tap. */
const SLOP_PX = { mouse: 4, pen: 6, touch: 10 } as const;
const DOUBLE_MS = 350;
/** Two taps this near are one double tap; further apart they are two corners of a quick hand. */
const DOUBLE_PX = { mouse: 5, pen: 8, touch: 24 } as const;
const LONG_MS = 550;
const AIM_MS = 200;
/** Where a drag frames a rectangle, a finger may be slower to move off. */
const FRAME_OR_AIM_MS = 400;
/** A palm lands just before or after the pen. */
const PEN_NEAR_MS = 800;

/** What a finger does with the tool in hand: sets points, sets points or frames a rectangle, or holds things where it is. */
export type Finger = 'points' | 'frames' | 'holds';

export function gestureStep(state: GestureState, input: GestureInput, finger: Finger): GestureStep {
  if (input.kind === 'clock') return clockStep(state, input.timeMs, finger);
  const seen = input.pointer === 'pen' ? { ...state, penMs: input.timeMs } : state;
  switch (input.kind) {
    case 'down':
      return downStep(seen, input);
    case 'move':
      return moveStep(seen, input, finger);
    case 'up':
      return upStep(seen, input, finger);
    case 'cancel':
      return cancelStep(seen, input);
  }
}

function downStep(state: GestureState, input: PointerInput): GestureStep {
  if (isPalm(state, input)) return { state, out: [] };
  const contact: Contact = {
    id: input.id,
    pointer: input.pointer,
    start: input.at,
    at: input.at,
    startMs: input.timeMs,
    shift: input.shift,
  };
  // A pen outranks the palm that came before it.
  const palms = input.pointer === 'pen' && state.contacts.some((other) => other.pointer === 'touch');
  const others = palms ? [] : state.contacts;
  const contacts = [...others, contact];
  if (others.length === 0) {
    const out: Gesture[] = palms && isBegun(state) ? [{ kind: 'breakOff' }] : [];
    return { state: { ...state, contacts, doing: input.pans ? 'panning' : 'pressing' }, out };
  }
  if (others.length === 1 && input.pointer === 'touch') {
    const out: Gesture[] = isBegun(state) ? [{ kind: 'breakOff' }] : [];
    return { state: { ...state, contacts, doing: 'pinching' }, out };
  }
  return { state: { ...state, contacts }, out: [] };
}

function moveStep(state: GestureState, input: PointerInput, finger: Finger): GestureStep {
  const was = state.contacts.find((contact) => contact.id === input.id);
  if (!was) {
    const hovers = state.contacts.length === 0 && input.pointer !== 'touch';
    return { state, out: hovers ? [{ kind: 'move', at: input.at, pointer: input.pointer, shift: input.shift }] : [] };
  }
  const now: Contact = { ...was, at: input.at, shift: input.shift };
  const contacts = state.contacts.map((contact) => (contact === was ? now : contact));
  const next = { ...state, contacts };
  switch (state.doing) {
    case 'pressing': {
      if (gap(now.start, now.at) <= SLOP_PX[now.pointer]) return { state: next, out: [] };
      if (aims(now, finger) && finger !== 'frames')
        return { state: { ...next, doing: 'aiming' }, out: [meant('move', now, true)] };
      const start = { ...meant('dragStart', now, false), at: now.start };
      return { state: { ...next, doing: 'dragging' }, out: [start, meant('drag', now, false)] };
    }
    case 'dragging':
      return { state: next, out: [meant('drag', now, false)] };
    case 'aiming':
      return { state: next, out: [meant('move', now, true)] };
    case 'panning':
      return { state: next, out: [{ kind: 'pan', dx: now.at[0] - was.at[0], dy: now.at[1] - was.at[1] }] };
    case 'pinching':
      return { state: next, out: pinched(state.contacts, contacts) };
    case 'nothing':
    case 'spent':
      return { state: next, out: [] };
  }
}

function upStep(state: GestureState, input: PointerInput, finger: Finger): GestureStep {
  const was = state.contacts.find((contact) => contact.id === input.id);
  if (!was) return { state, out: [] };
  const now: Contact = { ...was, at: input.at, shift: input.shift };
  const contacts = state.contacts.filter((contact) => contact !== was);
  const rest: GestureState = { ...state, contacts, doing: contacts.length > 0 ? 'spent' : 'nothing' };
  switch (state.doing) {
    case 'pressing':
      return tapped(rest, now, input.timeMs);
    case 'dragging':
      return { state: { ...rest, lastTap: null }, out: [meant('dragEnd', now, false)] };
    case 'aiming':
      return { state: { ...rest, lastTap: null }, out: [meant('tap', now, aims(now, finger))] };
    case 'nothing':
    case 'panning':
    case 'pinching':
    case 'spent':
      return { state: { ...rest, lastTap: null }, out: [] };
  }
}

function tapped(state: GestureState, contact: Contact, timeMs: number): GestureStep {
  const { lastTap } = state;
  const near = DOUBLE_PX[contact.pointer];
  const again = lastTap !== null && timeMs - lastTap.timeMs < DOUBLE_MS && gap(lastTap.at, contact.at) < near;
  return {
    state: { ...state, lastTap: again ? null : { at: contact.at, timeMs } },
    out: [meant(again ? 'doubleTap' : 'tap', { ...contact, at: contact.start }, false)],
  };
}

function cancelStep(state: GestureState, input: PointerInput): GestureStep {
  const contacts = state.contacts.filter((contact) => contact.id !== input.id);
  if (contacts.length === state.contacts.length) return { state, out: [] };
  const out: Gesture[] = isBegun(state) ? [{ kind: 'breakOff' }] : [];
  return { state: { ...state, contacts, doing: contacts.length > 0 ? 'spent' : 'nothing' }, out };
}

function clockStep(state: GestureState, timeMs: number, finger: Finger): GestureStep {
  const [contact] = state.contacts;
  if (state.doing !== 'pressing' || !contact) return { state, out: [] };
  const heldMs = timeMs - contact.startMs;
  if (aims(contact, finger)) {
    if (heldMs < (finger === 'frames' ? FRAME_OR_AIM_MS : AIM_MS)) return { state, out: [] };
    return { state: { ...state, doing: 'aiming' }, out: [meant('move', contact, true)] };
  }
  if (heldMs < LONG_MS || contact.pointer === 'mouse') return { state, out: [] };
  return { state: { ...state, doing: 'spent' }, out: [meant('longPress', contact, false)] };
}

function aims(contact: Contact, finger: Finger): boolean {
  return contact.pointer === 'touch' && finger !== 'holds';
}

/** Something was sent to the tool that has not come to its end. */
function isBegun(state: GestureState): boolean {
  return state.doing === 'dragging' || state.doing === 'aiming';
}

function isPalm(state: GestureState, input: PointerInput): boolean {
  if (input.pointer !== 'touch') return false;
  const penIsDown = state.contacts.some((contact) => contact.pointer === 'pen');
  const penIsNear = input.timeMs - state.penMs < PEN_NEAR_MS;
  return penIsDown || (penIsNear && state.contacts.length === 0);
}

function meant(
  kind: Extract<Gesture, { at: unknown }>['kind'],
  contact: Contact,
  raised: boolean,
): Extract<Gesture, { at: unknown }> {
  const [x, y] = contact.at;
  return { kind, at: raised ? [x, y - FINGER.abovePx] : contact.at, pointer: contact.pointer, shift: contact.shift };
}

function pinched(were: readonly Contact[], are: readonly Contact[]): Gesture[] {
  const [a, b] = were;
  const [c, d] = are;
  if (!a || !b || !c || !d) return [];
  const middleWas = halfway(a.at, b.at);
  const middle = halfway(c.at, d.at);
  const spanWas = gap(a.at, b.at);
  const span = gap(c.at, d.at);
  const turn = angle(c.at, d.at) - angle(a.at, b.at);
  return [
    { kind: 'pan', dx: middle[0] - middleWas[0], dy: middle[1] - middleWas[1] },
    {
      kind: 'pinch',
      about: middle,
      factor: spanWas > 1 ? span / spanWas : 1,
      turnDeg: (((turn + 540) % 360) - 180) % 360,
    },
  ];
}

function gap(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function halfway(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function angle(a: Point, b: Point): number {
  return (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
}
