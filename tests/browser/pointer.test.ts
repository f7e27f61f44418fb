import { afterEach, beforeEach, expect, test } from 'vitest';
import { listenToPointers } from '../../src/canvas/input/pointer.ts';
import type { Gesture } from '../../src/canvas/input/gesture.ts';
import type { WheelMeaning } from '../../src/canvas/input/wheel.ts';

let element: HTMLDivElement;
let gestures: Gesture[];
let wheels: WheelMeaning[];
let left: number;
let letGo: () => void;

beforeEach(() => {
  element = document.createElement('div');
  element.style.cssText = 'position:absolute;left:40px;top:30px;width:400px;height:300px';
  document.body.append(element);
  gestures = [];
  wheels = [];
  left = 0;
  letGo = listenToPointers(element, {
    gesture: (gesture) => gestures.push(gesture),
    wheel: (meaning) => wheels.push(meaning),
    left: () => {
      left += 1;
    },
    finger: () => 'holds',
    panning: () => false,
  });
});

afterEach(() => {
  letGo();
  element.remove();
});

function send(type: string, pointerId: number, x: number, y: number, more: PointerEventInit = {}): boolean {
  const event = new PointerEvent(type, {
    pointerId,
    pointerType: 'mouse',
    clientX: 40 + x,
    clientY: 30 + y,
    bubbles: true,
    cancelable: true,
    ...more,
  });
  return element.dispatchEvent(event);
}

test('places are counted from the corner of the element', () => {
  send('pointermove', 1, 10, 20);
  send('pointerdown', 1, 10, 20);
  send('pointerup', 1, 10, 20);
  expect(gestures.map((gesture) => [gesture.kind, 'at' in gesture && gesture.at])).toEqual([
    ['move', [10, 20]],
    ['tap', [10, 20]],
  ]);
});

test('two fingers pinch; a pointer that went down elsewhere is nothing to us', () => {
  const touch = { pointerType: 'touch' };
  send('pointermove', 9, 5, 5, touch);
  send('pointerup', 9, 5, 5, touch);
  expect(gestures).toEqual([]);
  send('pointerdown', 1, 100, 100, touch);
  send('pointerdown', 2, 200, 100, touch);
  send('pointermove', 2, 300, 100, touch);
  send('pointerup', 1, 100, 100, touch);
  send('pointercancel', 2, 300, 100, touch);
  expect(gestures).toEqual([
    { kind: 'pan', dx: 50, dy: 0 },
    { kind: 'pinch', about: [200, 100], factor: 2, turnDeg: 0 },
  ]);
});

test('the middle button pans, and its own scrolling is kept from the browser', () => {
  expect(send('pointerdown', 1, 10, 10, { button: 1 })).toBe(false);
  send('pointermove', 1, 30, 40, { button: -1, buttons: 4 });
  send('pointerup', 1, 30, 40, { button: 1 });
  expect(gestures).toEqual([{ kind: 'pan', dx: 20, dy: 30 }]);
});

test('a long press of a finger is heard without another event', async () => {
  send('pointerdown', 1, 100, 100, { pointerType: 'touch' });
  await expect.poll(() => gestures.map(({ kind }) => kind), { timeout: 3000 }).toEqual(['longPress']);
  send('pointerup', 1, 100, 100, { pointerType: 'touch' });
  expect(gestures).toHaveLength(1);
});

test('the wheel zooms the plan and not the page', () => {
  const wheel = new WheelEvent('wheel', { deltaY: -100, clientX: 50, clientY: 50, cancelable: true, ctrlKey: true });
  element.dispatchEvent(wheel);
  expect(wheel.defaultPrevented).toBe(true);
  expect(wheels).toEqual([{ kind: 'zoom', factor: 1.2 }]);
});

test('leaving is told while nothing is held; after letting go nothing is heard', () => {
  send('pointerdown', 1, 10, 10);
  send('pointerleave', 1, 500, 10);
  expect(left).toBe(0);
  send('pointerup', 1, 500, 10);
  send('pointerleave', 1, 500, 10);
  expect(left).toBe(1);
  letGo();
  const before = gestures.length;
  send('pointermove', 1, 10, 10);
  expect(gestures).toHaveLength(before);
});

test('a finger that slides throws nothing: the browser would swallow the tap after it', () => {
  const touch = new Touch({ identifier: 1, target: element, clientX: 60, clientY: 60 });
  const slide = (): TouchEvent =>
    new TouchEvent('touchmove', { touches: [touch], changedTouches: [touch], bubbles: true, cancelable: true });
  expect(element.dispatchEvent(slide())).toBe(false);
  letGo();
  expect(element.dispatchEvent(slide())).toBe(true);
});
