import { expect, test } from 'vitest';
import {
  gestureStep,
  NO_GESTURE,
  type Finger,
  type Gesture,
  type GestureInput,
  type PointerKind,
} from '../../../src/canvas/input/gesture.ts';
import { FINGER } from '../../../src/canvas/look.ts';

/** Feeds events given as [kind, pointer, id, x, y, timeMs]; 'clock' needs only its time. */
type Event =
  | readonly ['down' | 'move' | 'up' | 'cancel', PointerKind, number, number, number, number]
  | readonly ['clock', number];

function play(events: readonly Event[], finger: Finger = 'holds', pans = false): readonly Gesture[] {
  let state = NO_GESTURE;
  const out: Gesture[] = [];
  for (const event of events) {
    const input: GestureInput =
      event[0] === 'clock'
        ? { kind: 'clock', timeMs: event[1] }
        : {
            kind: event[0],
            pointer: event[1],
            id: event[2],
            at: [event[3], event[4]],
            timeMs: event[5],
            shift: false,
            pans,
          };
    const step = gestureStep(state, input, finger);
    state = step.state;
    out.push(...step.out);
  }
  return out;
}

const kinds = (gestures: readonly Gesture[]): readonly string[] => gestures.map(({ kind }) => kind);
const places = (gestures: readonly Gesture[]) =>
  gestures.map((gesture) => ('at' in gesture ? [gesture.kind, ...gesture.at] : [gesture.kind]));

test('a mouse hovers, taps, taps twice, drags', () => {
  expect(kinds(play([['move', 'mouse', 1, 5, 5, 0]]))).toEqual(['move']);
  expect(
    kinds(
      play([
        ['down', 'mouse', 1, 5, 5, 0],
        ['move', 'mouse', 1, 7, 6, 20],
        ['up', 'mouse', 1, 7, 6, 40],
      ]),
    ),
  ).toEqual(['tap']);
  const twice = play([
    ['down', 'mouse', 1, 5, 5, 0],
    ['up', 'mouse', 1, 5, 5, 40],
    ['down', 'mouse', 1, 6, 5, 200],
    ['up', 'mouse', 1, 6, 5, 240],
    ['down', 'mouse', 1, 6, 5, 400],
    ['up', 'mouse', 1, 6, 5, 440],
  ]);
  expect(kinds(twice)).toEqual(['tap', 'doubleTap', 'tap']);
  const apart = play([
    ['down', 'mouse', 1, 5, 5, 0],
    ['up', 'mouse', 1, 5, 5, 40],
    ['down', 'mouse', 1, 13, 5, 200],
    ['up', 'mouse', 1, 13, 5, 240],
  ]);
  expect(kinds(apart)).toEqual(['tap', 'tap']);
  const dragged = play([
    ['down', 'mouse', 1, 5, 5, 0],
    ['move', 'mouse', 1, 20, 5, 20],
    ['move', 'mouse', 1, 30, 9, 40],
    ['up', 'mouse', 1, 30, 9, 60],
  ]);
  expect(places(dragged)).toEqual([
    ['dragStart', 5, 5],
    ['drag', 20, 5],
    ['drag', 30, 9],
    ['dragEnd', 30, 9],
  ]);
});

test('the middle button or the space bar pans', () => {
  expect(
    play(
      [
        ['down', 'mouse', 1, 5, 5, 0],
        ['move', 'mouse', 1, 25, 15, 20],
        ['up', 'mouse', 1, 25, 15, 40],
      ],
      'holds',
      true,
    ),
  ).toEqual([{ kind: 'pan', dx: 20, dy: 10 }]);
});

test('two fingers pan, zoom and turn, and never draw', () => {
  const gestures = play(
    [
      ['down', 'touch', 1, 100, 300, 0],
      ['down', 'touch', 2, 200, 300, 30],
      ['move', 'touch', 1, 50, 300, 60],
      ['move', 'touch', 2, 250, 300, 90],
      ['up', 'touch', 2, 250, 300, 120],
      ['move', 'touch', 1, 90, 390, 150],
      ['up', 'touch', 1, 90, 390, 180],
    ],
    'points',
  );
  expect(new Set(kinds(gestures))).toEqual(new Set(['pan', 'pinch']));
  const factor = gestures.reduce((product, gesture) => product * (gesture.kind === 'pinch' ? gesture.factor : 1), 1);
  expect(factor).toBeCloseTo(2, 9);
  const turned = play([
    ['down', 'touch', 1, 100, 300, 0],
    ['down', 'touch', 2, 200, 300, 30],
    ['move', 'touch', 2, 100, 400, 60],
  ]);
  expect(turned.at(-1)).toMatchObject({ kind: 'pinch', turnDeg: 90 });
});

test('a second finger breaks off what the first one had begun', () => {
  const gestures = play([
    ['down', 'touch', 1, 100, 300, 0],
    ['move', 'touch', 1, 140, 300, 30],
    ['down', 'touch', 2, 200, 300, 60],
    ['up', 'touch', 1, 140, 300, 90],
    ['up', 'touch', 2, 200, 300, 120],
  ]);
  expect(kinds(gestures)).toEqual(['dragStart', 'drag', 'breakOff']);
});

test('a finger that sets points aims from 72 px beneath and sets on lifting; a quick tap sets where it is', () => {
  const aimed = play(
    [
      ['down', 'touch', 1, 100, 300, 0],
      ['move', 'touch', 1, 130, 320, 60],
      ['up', 'touch', 1, 140, 330, 300],
    ],
    'points',
  );
  expect(places(aimed)).toEqual([
    ['move', 130, 248],
    ['tap', 140, 258],
  ]);
  const held = play(
    [
      ['down', 'touch', 1, 100, 300, 0],
      ['clock', 250],
      ['up', 'touch', 1, 100, 300, 300],
    ],
    'points',
  );
  expect(places(held)).toEqual([
    ['move', 100, 228],
    ['tap', 100, 228],
  ]);
  const quick = play(
    [
      ['down', 'touch', 1, 100, 300, 0],
      ['clock', 50],
      ['up', 'touch', 1, 100, 300, 80],
    ],
    'points',
  );
  expect(places(quick)).toEqual([['tap', 100, 300]]);
});

test('a finger that holds things drags them where it is, and a long press is told apart', () => {
  const gestures = play([
    ['down', 'touch', 1, 100, 300, 0],
    ['move', 'touch', 1, 130, 320, 60],
    ['up', 'touch', 1, 130, 320, 90],
  ]);
  expect(places(gestures)).toEqual([
    ['dragStart', 100, 300],
    ['drag', 130, 320],
    ['dragEnd', 130, 320],
  ]);
  const long = play([
    ['down', 'touch', 1, 100, 300, 0],
    ['clock', 300],
    ['clock', 600],
    ['up', 'touch', 1, 100, 300, 700],
  ]);
  expect(kinds(long)).toEqual(['longPress']);
});

test('a palm does nothing while a pen is near, and gives way to one that comes', () => {
  const near = play([
    ['move', 'pen', 1, 50, 50, 0],
    ['down', 'touch', 2, 300, 400, 100],
    ['up', 'touch', 2, 300, 400, 200],
  ]);
  expect(kinds(near)).toEqual(['move']);
  const first = play([
    ['down', 'touch', 2, 300, 400, 0],
    ['down', 'pen', 1, 50, 50, 100],
    ['move', 'pen', 1, 90, 50, 120],
    ['up', 'touch', 2, 300, 400, 150],
    ['up', 'pen', 1, 90, 50, 200],
  ]);
  expect(kinds(first)).toEqual(['dragStart', 'drag', 'dragEnd']);
  const later = play([
    ['move', 'pen', 1, 50, 50, 0],
    ['down', 'touch', 2, 300, 400, 2000],
    ['up', 'touch', 2, 300, 400, 2050],
  ]);
  expect(kinds(later)).toEqual(['move', 'tap']);
});

test('a pointer that the system takes away breaks off', () => {
  expect(
    kinds(
      play([
        ['down', 'mouse', 1, 5, 5, 0],
        ['move', 'mouse', 1, 40, 5, 20],
        ['cancel', 'mouse', 1, 40, 5, 30],
      ]),
    ),
  ).toEqual(['dragStart', 'drag', 'breakOff']);
  expect(
    play([
      ['cancel', 'mouse', 9, 5, 5, 0],
      ['up', 'mouse', 9, 5, 5, 0],
    ]),
  ).toEqual([]);
});

test('with a tool that frames a finger that moves off at once drags a rectangle; one that rests first aims', () => {
  const framed = play(
    [
      ['down', 'touch', 1, 40, 40, 0],
      ['move', 'touch', 1, 80, 90, 60],
      ['move', 'touch', 1, 200, 180, 300],
      ['up', 'touch', 1, 200, 180, 400],
    ],
    'frames',
  );
  expect(places(framed)).toEqual([
    ['dragStart', 40, 40],
    ['drag', 80, 90],
    ['drag', 200, 180],
    ['dragEnd', 200, 180],
  ]);
  const aimed = play(
    [
      ['down', 'touch', 1, 40, 140, 0],
      ['clock', 420],
      ['move', 'touch', 1, 80, 190, 460],
      ['up', 'touch', 1, 80, 190, 600],
    ],
    'frames',
  );
  expect(kinds(aimed)).toEqual(['move', 'move', 'tap']);
  expect(places(aimed).at(-1)).toEqual(['tap', 80, 190 - FINGER.abovePx]);
});

test('a tap right after a fast finger is a tap: a drag, an aim, a pinch and what was broken off leave nothing behind', () => {
  const tap: readonly Event[] = [
    ['down', 'touch', 9, 300, 20, 130],
    ['up', 'touch', 9, 300, 20, 135],
  ];
  const slide: readonly Event[] = [
    ['down', 'touch', 1, 60, 100, 0],
    ['move', 'touch', 1, 190, 210, 10],
    ['move', 'touch', 1, 320, 320, 20],
  ];
  const lifted: Event = ['up', 'touch', 1, 320, 320, 30];
  for (const finger of ['holds', 'frames', 'points'] as const) {
    const last = (events: readonly Event[]): string | undefined => kinds(play([...events, ...tap], finger)).at(-1);
    expect(last([...slide, lifted]), finger).toBe('tap');
    expect(last([...slide, ['cancel', 'touch', 1, 320, 320, 30]]), finger).toBe('tap');
    expect(last([...slide, ['down', 'touch', 2, 80, 90, 22], ['up', 'touch', 2, 80, 90, 28], lifted]), finger).toBe(
      'tap',
    );
  }
});
