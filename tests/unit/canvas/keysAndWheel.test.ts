import { expect, test } from 'vitest';
import { keyAction, letterOf, TOOL_LETTERS, type KeyPress } from '../../../src/canvas/input/keys.ts';
import { wheelMeaning } from '../../../src/canvas/input/wheel.ts';
import { toolbox, toolOf } from '../../../src/canvas/tools/toolbox.ts';

const press = (key: string, more: Partial<KeyPress> = {}) =>
  keyAction({ key, shift: false, command: false, alt: false, typing: false, ...more });

test('letters take tools in hand, and every tool with a letter is in the box', () => {
  expect(press('s')).toEqual({ kind: 'tool', id: 'slab' });
  expect(press('S')).toEqual({ kind: 'tool', id: 'slab' });
  expect(Object.values(TOOL_LETTERS).filter((id) => !Object.hasOwn(toolbox, id))).toEqual([]);
  expect(Object.keys(toolbox).filter((id) => letterOf(id) === null)).toEqual(['pick', 'true']);
  expect(toolOf('no such tool').id).toBe('pick');
});

test('Esc leaves, Enter sets, Delete removes, arrows nudge', () => {
  expect(press('Escape', { typing: true })).toEqual({ kind: 'cancel' });
  expect(press('Enter')).toEqual({ kind: 'finish' });
  expect(press('Backspace')).toEqual({ kind: 'back' });
  expect(press('Delete')).toEqual({ kind: 'remove' });
  expect(press('ArrowUp', { shift: true })).toEqual({ kind: 'nudge', dx: 0, dy: -1, large: true });
});

test('undo and redo; other keys with Ctrl belong to the browser', () => {
  expect(press('z', { command: true })).toEqual({ kind: 'undo' });
  expect(press('Z', { command: true, shift: true })).toEqual({ kind: 'redo' });
  expect(press('y', { command: true })).toEqual({ kind: 'redo' });
  expect(press('s', { command: true })).toBeNull();
  expect(press('c', { command: true })).toBeNull();
});

test('in a field letters are letters', () => {
  expect(press('s', { typing: true })).toBeNull();
  expect(press('Backspace', { typing: true })).toBeNull();
  expect(press('q')).toBeNull();
  expect(press('toString')).toBeNull();
});

test('a wheel zooms, two fingers pan, a pinch zooms', () => {
  const wheel = (dy: number, more = {}) => wheelMeaning({ dx: 0, dy, mode: 0, ctrl: false, shift: false, ...more });
  expect(wheel(100)).toMatchObject({ kind: 'zoom' });
  expect(wheel(-100)).toEqual({ kind: 'zoom', factor: 1.2 });
  expect(wheel(3, { mode: 1 })).toMatchObject({ kind: 'zoom' });
  expect(wheel(4.5, { dx: 2 })).toEqual({ kind: 'pan', dx: -2, dy: -4.5 });
  expect(wheel(-2.5, { ctrl: true })).toMatchObject({ kind: 'zoom' });
  expect(wheel(100, { shift: true })).toEqual({ kind: 'pan', dx: -100, dy: 0 });
  const back = wheel(100);
  expect(back.kind === 'zoom' && back.factor * 1.2).toBeCloseTo(1, 12);
});
