import { expect, test } from 'vitest';
import { entranceTool } from '../../../src/canvas/tools/entranceTool.ts';
import { noteTool } from '../../../src/canvas/tools/noteTool.ts';
import { obstructionTool } from '../../../src/canvas/tools/obstructionTool.ts';
import { readingTool } from '../../../src/canvas/tools/readingTool.ts';
import { recordsOf } from '../../../src/model/doc.ts';
import { openingOn, planWith, room } from '../../support/handPlan.ts';
import { play } from '../../support/play.ts';

const plan = planWith([room]);

test('a tap each: entrance, reading, note', () => {
  const entrance = play(entranceTool, plan, 'tap 0,2000', { settings: { widthMm: 900, heightMm: 2000 } });
  expect(recordsOf(entrance.doc, 'entrance')[0]).toMatchObject({
    tag: 'M1',
    at: [0, 2000],
    widthMm: 900,
    heightMm: 2000,
  });
  const reading = play(readingTool, plan, 'tap 1000,1000', {
    settings: { kind: 'rh_slab', value: 78, unit: '%' },
    off: true,
  });
  expect(recordsOf(reading.doc, 'reading')[0]).toMatchObject({
    tag: 'R1',
    at: [1000, 1000],
    kind: 'rh_slab',
    value: 78,
    unit: '%',
  });
  const note = play(noteTool, plan, 'tap 1000,1000  tap 2000,1000', {
    settings: { text: 'Key at the gate' },
    off: true,
  });
  expect(recordsOf(note.doc, 'note').map(({ tag, text }) => [tag, text])).toEqual([
    ['N1', 'Key at the gate'],
    ['N2', 'Key at the gate'],
  ]);
});

test('an obstruction of typed size by a tap at its middle', () => {
  const round = play(obstructionTool, plan, 'tap 3000,2000', {
    settings: { form: 'circle', diameterMm: 450 },
    off: true,
  });
  expect(recordsOf(round.doc, 'obstruction')[0]).toMatchObject({
    tag: 'B1',
    kind: 'column',
    under: 'none',
    shape: { form: 'circle', at: [3000, 2000], diameterMm: 450 },
  });
  const square = play(obstructionTool, plan, 'tap 3000,2000', {
    settings: { kind: 'equipment', under: 'byHand', widthMm: 1200, depthMm: 600, turnDeg: 30 },
    off: true,
  });
  expect(recordsOf(square.doc, 'obstruction')[0]).toMatchObject({
    kind: 'equipment',
    under: 'byHand',
    shape: { form: 'rectangle', at: [3000, 2000], widthMm: 1200, depthMm: 600, turnDeg: 30 },
  });
});

test('by a drag it is a rectangle with sizes that stay editable, whatever size was typed', () => {
  const { doc } = play(obstructionTool, plan, 'sweep 1000,1000 2500,1800', { settings: { widthMm: 400 }, off: true });
  expect(recordsOf(doc, 'obstruction')[0]?.shape).toEqual({
    form: 'rectangle',
    at: [1750, 1400],
    widthMm: 1500,
    depthMm: 800,
    turnDeg: 0,
  });
});

test('as a polygon it is drawn corner by corner', () => {
  const { doc } = play(obstructionTool, plan, 'tap 1000,1000  tap 2000,1000  tap 1500,2000  finish', {
    settings: { form: 'polygon', kind: 'pit' },
    off: true,
  });
  expect(recordsOf(doc, 'obstruction')[0]).toMatchObject({
    kind: 'pit',
    shape: {
      form: 'polygon',
      ring: [
        [1000, 1000],
        [2000, 1000],
        [1500, 2000],
      ],
    },
  });
});

test('a size of zero is refused', () => {
  const { doc, refused } = play(obstructionTool, plan, 'tap 3000,2000', { settings: { widthMm: 0 } });
  expect(refused).toEqual(['noSize']);
  expect(doc).toBe(plan);
});

test('an entrance beside a doorway is that doorway, at its middle; set freely it stays where it is', () => {
  // A doorway of 900 mm in the upper wall, from 2000 to 2900 mm.
  const withDoor = planWith([room, openingOn('slab:a', 0, 2000)]);
  const at = (sentence: string, off = false) =>
    recordsOf(play(entranceTool, withDoor, sentence, { off }).doc, 'entrance')[0]?.at;
  expect(at('tap 2020,30')).toEqual([2450, 0]);
  expect(at('tap 3100,-20')).toEqual([2450, 0]);
  expect(at('tap 5000,30')).toEqual([5000, 0]);
  expect(at('tap 2020,30', true)).toEqual([2020, 30]);
});
