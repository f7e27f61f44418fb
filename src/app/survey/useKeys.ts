import { useEffect } from 'react';
import type { Point } from '../../geometry/floorShape.ts';
import { MM_PER_IN, type Units } from '../../model/units.ts';
import { keyAction, type KeyAction } from '../../canvas/input/keys.ts';
import { redo, undo, unitsNow } from '../plan.ts';
import { arm, askWhy, hush, session, trueThe } from '../session.ts';
import { askFit } from './fit.ts';
import { send, startInMiddle, useHand } from './hand.ts';
import { removePicked } from './removePicked.ts';
import { startTyping } from './typing.ts';

/** Keys that change what the pointer does while they are held. */
export const keysDown = { alt: false, space: false };

/** Arrow steps: small, and with shift ten times as far. */
const STEP_MM: Readonly<Record<Units, number>> = { metric: 10, imperial: MM_PER_IN / 2 };
const LARGE = 10;

type Zoom = (factor: number) => void;

function nudgeBy({ dx, dy, large }: Extract<KeyAction, { kind: 'nudge' }>): Point {
  const step = STEP_MM[unitsNow()] * (large ? LARGE : 1);
  return [dx * step, dy * step];
}

function cancel(): void {
  hush();
  if (session().why !== null) return askWhy(null);
  // A page being trued is left with its own button: Esc only drops what has been picked on it.
  if (session().truing && session().toolState === null) return trueThe(null);
  send({ kind: 'cancel' });
}

/** Enter ends a line; with no line in hand it sets the first point, so that drawing needs no pointer. */
function finish(): void {
  const { tool } = session();
  const resting = session().toolState === null;
  if (resting && tool !== 'pick') startInMiddle();
  else send({ kind: 'finish' });
}

function act(action: KeyAction, zoom: Zoom): void {
  switch (action.kind) {
    case 'tool':
      return arm(action.id);
    case 'undo':
      return undo();
    case 'redo':
      return redo();
    case 'fit':
      return askFit();
    case 'zoomIn':
      return zoom(1.25);
    case 'zoomOut':
      return zoom(0.8);
    case 'nudge':
      return send({ kind: 'nudge', by: nudgeBy(action) });
    case 'remove':
    case 'back':
      if (session().tool === 'pick') void removePicked();
      else send({ kind: action.kind });
      return;
    case 'cancel':
      return cancel();
    case 'finish':
      return finish();
  }
}

const FIELDS = 'input, textarea, select, [contenteditable="true"]';
/** What opens over the page keeps its keys to itself. */
const OVERLAYS = '[role="dialog"], [role="menu"], [role="listbox"]';
/** A focused control keeps the keys that press it and move within it. */
const CONTROLS = 'button, a, summary, [role="tab"]';
const OF_CONTROLS = new Set(['Enter', ' ', 'Backspace', 'Delete', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown']);

function belongsElsewhere(event: KeyboardEvent): boolean {
  const target = event.target instanceof Element ? event.target : null;
  if (!target) return false;
  if (target.closest(OVERLAYS) || document.querySelector('[role="dialog"]')) return true;
  return target.closest(CONTROLS) !== null && OF_CONTROLS.has(event.key);
}

/** A figure typed over the plan while a line is being drawn goes into the Length box. */
function goesToLength(event: KeyboardEvent): boolean {
  const drawing = (useHand.getState().draft?.from ?? null) !== null;
  return drawing && /^[\d.,]$/.test(event.key) && !event.ctrlKey && !event.metaKey && startTyping();
}

/** Letters take tools in hand, Enter ends, Esc leaves, arrows nudge; fields and open menus keep their keys. */
export function useKeys(zoom: Zoom, canDraw: boolean): void {
  useEffect(() => {
    const onDown = (event: KeyboardEvent): void => {
      keysDown.alt = event.altKey;
      if (event.defaultPrevented || belongsElsewhere(event)) return;
      const target = event.target instanceof Element ? event.target : null;
      const typing = target?.matches(FIELDS) ?? false;
      if (event.key === ' ' && !typing) {
        keysDown.space = true;
        event.preventDefault();
        return;
      }
      if (!typing && goesToLength(event)) return;
      // Esc in a field gives the keys back to the plan; the next one leaves the tool.
      if (typing && event.key === 'Escape' && target instanceof HTMLElement) return target.blur();
      const { key, shiftKey: shift, altKey: alt } = event;
      const action = keyAction({ key, shift, alt, command: event.ctrlKey || event.metaKey, typing });
      if (!action || (action.kind === 'tool' && !canDraw)) return;
      event.preventDefault();
      act(action, zoom);
    };
    const onUp = (event: KeyboardEvent): void => {
      keysDown.alt = event.altKey;
      if (event.key === ' ') keysDown.space = false;
    };
    window.addEventListener('keydown', onDown);
    window.addEventListener('keyup', onUp);
    return () => {
      window.removeEventListener('keydown', onDown);
      window.removeEventListener('keyup', onUp);
    };
  }, [zoom, canDraw]);
}
