import type { Point } from '../../../../src/geometry/floorShape.ts';
import { describe, expect, test } from 'vitest';
import { kept } from '../../../../src/canvas/paint/kept.ts';
import { litPrims } from '../../../../src/canvas/paint/lit.ts';
import { insideRing } from '../../../../src/canvas/paint/obstruction.ts';
import { formRing } from '../../../../src/geometry/formRing.ts';
import { PAINT_ORDER, paintFloor, SHOW_ALL } from '../../../../src/canvas/paint/paintFloor.ts';
import { pickedRing, withRoom } from '../../../../src/canvas/paint/picked.ts';
import { pickedPrims } from '../../../../src/canvas/paint/pickedItem.ts';
import { boxOfPrims } from '../../../../src/canvas/paint/kept.ts';
import type { Look } from '../../../../src/canvas/paint/prim.ts';
import { northArrow, scaleBar } from '../../../../src/canvas/paint/scaleBar.ts';
import { chalkTick, handPoint } from '../../../../src/canvas/paint/guides.ts';
import { hatchTile } from '../../../../src/canvas/paint/hatchTile.ts';
import { planView } from '../../../../src/canvas/paint/view.ts';
import { ringArea } from '../../../../src/geometry/ring.ts';
import { applyCells } from '../../../../src/model/doc.ts';
import { viewNotes } from '../../../../src/exchange/viewNotes.ts';
import { takeoff } from '../../../../src/takeoff/takeoff.ts';
import { hallPlan, HALL_FLOOR } from '../../../support/paintedPlan.ts';

const look: Look = { pxPerMm: 0.05, picked: false, print: false };
const doc = hallPlan();
const measured = takeoff(doc, HALL_FLOOR);
const view = planView(doc, HALL_FLOOR, viewNotes(doc, HALL_FLOOR, measured, 'metric'));

describe('a painted floor', () => {
  const floor = paintFloor(view, look, { ...SHOW_ALL, reach: 'all' });

  test('shows something of every class but pages and picked', () => {
    const empty = PAINT_ORDER.filter((name) => floor[name].length === 0);
    expect(empty).toEqual(['page', 'picked']);
  });

  test('stays on the floor, but for dimensions', () => {
    for (const name of PAINT_ORDER) {
      for (const work of floor[name]) {
        if (work.prims.length === 0 || work.id.startsWith('dimension:')) continue;
        const box = boxOfPrims(work.prims);
        expect(box.minX, work.id).toBeGreaterThanOrEqual(-1);
        expect(box.minY, work.id).toBeGreaterThanOrEqual(-1);
        expect(box.maxX, work.id).toBeLessThanOrEqual(24_001);
        expect(box.maxY, work.id).toBeLessThanOrEqual(16_001);
      }
    }
  });

  test('keeps the work of records that did not change, and only theirs', () => {
    const moved = applyCells(doc, [['crack:c1', 'widthMm', 0.1]]);
    const next = paintFloor(
      planView(moved, HALL_FLOOR, viewNotes(moved, HALL_FLOOR, measured, 'metric')),
      look,
      SHOW_ALL,
    );
    const changed = next.cracks.filter((work, i) => work !== floor.cracks[i]).map(({ id }) => id);
    expect(changed).toEqual(['crack:c1']);
    expect(next.walls).toEqual(floor.walls);
    expect(next.findings[1]).toBe(floor.findings[1]);
  });

  test('a held zone is crossed out instead of hatched', () => {
    const hatch = Object.fromEntries(
      floor.hatch.map((work) => [work.id, work.prims.find((prim) => prim.kind === 'area')]),
    );
    expect(hatch['zone:z3']).toMatchObject({ texture: 'crosses' });
    expect(hatch['zone:z2']).toMatchObject({ hatchCsp: 3 });
  });

  test('is bare but for what is lit', () => {
    const lit = paintFloor(view, look, {
      ...SHOW_ALL,
      reach: 'all',
      lit: { zone: null, parts: ['wall'], records: [] },
    });
    expect(lit.hatch).toEqual([]);
    expect(lit.reach.flatMap(({ prims }) => prims).every((prim) => prim.kind === 'line' && prim.ink === 'chalk')).toBe(
      true,
    );
  });
});

describe('what lights up', () => {
  test('measured parts of one zone, else the records of the line', () => {
    const field = litPrims(view, { zone: 'zone:z2', parts: ['field'], records: ['slab:s1'] });
    expect(field).toHaveLength(1);
    expect(field[0]).toMatchObject({ kind: 'area', fill: 'chalk' });
    const cracks = litPrims(view, { zone: null, parts: [], records: ['crack:c1', 'crack:c5', 'obstruction:b9'] });
    expect(cracks.map(({ kind }) => kind)).toEqual(['line', 'line', 'area']);
  });
});

describe('obstructions', () => {
  test('a rectangle turns about its middle and keeps its area', () => {
    const ring = formRing({ form: 'rectangle', at: [100, 200], widthMm: 400, depthMm: 300, turnDeg: 30 });
    expect(ringArea(ring)).toBeCloseTo(120_000);
    expect(ring[0]).not.toEqual([-100, 50]);
  });

  test('a cross stays inside an outline with a notch', () => {
    const notched = [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 2],
      [0, 10],
    ] as const;
    const parts = insideRing([0, 8], [10, 8], notched);
    expect(parts).toHaveLength(2);
    expect(parts[0]?.[1][0]).toBeCloseTo(1.25);
  });
});

describe('the picked look', () => {
  test('an outline: doubled, two ticks and a number a corner, no box', () => {
    const prims = pickedPrims(view, 'finding:f2');
    expect(prims.filter(({ kind }) => kind === 'line')).toMatchObject([
      { ink: 'chalk', px: 9 },
      { ink: 'slab', px: 4 },
    ]);
    expect(prims.filter(({ kind }) => kind === 'mark')).toHaveLength(8);
    const numbers = prims.filter((prim) => prim.kind === 'text');
    expect(numbers.map((prim) => prim.kind === 'text' && prim.text)).toEqual(['1', '2', '3', '4']);
    const [dx, dy] = numbers[0]?.kind === 'text' ? (numbers[0].offsetPx ?? [0, 0]) : [0, 0];
    expect(Math.hypot(dx, dy)).toBeCloseTo(24);
    // The first corner is the top left one: out is up and to the left.
    expect(dx < 0 && dy < 0).toBe(true);
  });

  test.each([
    'slab:s1',
    'wall:w1',
    'opening:d2',
    'zone:z1',
    'crack:c1',
    'joint:j1',
    'obstruction:b10',
    'entrance:e1',
    'reading:r1',
    'note:n1',
    'dimension:m1',
    'steps:t1',
    'outOfScope:x1',
  ])('%s can be picked', (id) => expect(pickedPrims(view, id).length).toBeGreaterThan(1));

  test('an item of another floor is not', () => expect(pickedPrims(view, 'crack:elsewhere')).toEqual([]));
});

describe('on the glass', () => {
  test.each([
    [0.04, 200, 'metric', '5 m', 200],
    [0.06, 200, 'metric', '2 m', 120],
    [0.04, 200, 'imperial', '10 ft', 121.92],
  ] as const)('a scale bar at %d px a mm in %d px of %s is %s', (pxPerMm, width, units, text, px) => {
    const bar = scaleBar([0, 0], pxPerMm, width, units);
    const right = Math.max(...bar.flatMap((prim) => (prim.kind === 'mark' ? prim.paths.flat().map(([x]) => x) : [])));
    expect(right).toBeCloseTo(px);
    expect(bar.some((prim) => prim.kind === 'text' && prim.text === text)).toBe(true);
  });

  test('north turns, its letter does not', () => {
    const [arrow, letter] = northArrow([0, 0], 30);
    expect(arrow).toMatchObject({ turnDeg: 30 });
    expect(letter).not.toHaveProperty('turnDeg');
  });

  test('a finger never covers its point: the ring is 56 across and 72 below', () => {
    const rings = handPoint([0, 0], true).flatMap((prim) =>
      prim.kind === 'mark' && prim.filled ? prim.paths.flat() : [],
    );
    const ys = rings.map(([, y]) => y);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([44, 100]);
    expect(handPoint([0, 0], false)).toHaveLength(1);
  });

  test('the word of a chalk tick stands away from the finger', () => {
    const word = (above: boolean): number | undefined =>
      chalkTick([0, 0], [1, 0], { reason: 'corner', above, left: false }).flatMap((prim) =>
        prim.kind === 'text' ? [prim.offsetPx?.[1]] : [],
      )[0];
    expect(word(true)).toBeLessThan(0);
    expect(word(false)).toBeGreaterThan(0);
  });
});

describe('the hatch', () => {
  test('gets coarser with every step, and even numbers lean', () => {
    const tiles = Array.from({ length: 10 }, (_, i) => hatchTile(i + 1));
    for (const of of ['height', 'stroke'] as const) {
      const sizes = tiles.map((tile) => tile[of]);
      expect(sizes).toEqual([...new Set(sizes)].toSorted((a, b) => a - b));
    }
    expect(tiles.map(({ leanDeg }) => leanDeg === 0)).toEqual(tiles.map((_, i) => i % 2 === 0));
  });
});

describe('kept work', () => {
  test('is painted again only when what it was given changes', () => {
    const record = { id: 'a:b' };
    let times = 0;
    const paint = (given: number): unknown => kept(record, 'p', [given], () => ((times += 1), []));
    expect(paint(1)).toBe(paint(1));
    paint(2);
    expect(times).toBe(2);
  });
});

describe('corner numbers', () => {
  const numbers = (pxPerMm: number, numbered: boolean): readonly string[] =>
    withRoom(pickedPrims(view, 'finding:f2'), pxPerMm, numbered).flatMap((prim) =>
      prim.kind === 'text' ? [prim.text] : [],
    );

  // A wall with a narrow pier: two corners 300 mm apart, then two more.
  const jagged: readonly Point[] = [
    [0, 0],
    [4000, 0],
    [4000, 2000],
    [3700, 2000],
    [3700, 2300],
    [4000, 2300],
    [4000, 6000],
    [0, 6000],
  ];

  test('near enough, every corner has its number', () => expect(numbers(1, true).length).toBeGreaterThan(3));

  test('from afar those without room are left out, and the ticks stay', () => {
    const far = withRoom(pickedRing(jagged), 0.003, true);
    const near = withRoom(pickedRing(jagged), 1, true);
    const count = (prims: readonly { readonly kind: string }[]): number =>
      prims.filter((prim) => prim.kind === 'text').length;
    expect(count(near)).toBe(jagged.length);
    expect(count(far)).toBeLessThan(jagged.length);
    const ticks = (prims: readonly { readonly kind: string }[]): number =>
      prims.filter((prim) => prim.kind === 'mark').length;
    expect(ticks(far)).toBe(ticks(near));
  });

  test('with several items picked nobody counts corners', () => expect(numbers(1, false)).toEqual([]));

  test('where nothing is moved, as at the crew, the picked zone has none', () => {
    const shown = (cornerNumbers: boolean): number =>
      paintFloor(view, { ...look, pxPerMm: 1 }, { ...SHOW_ALL, picked: ['zone:z1'], cornerNumbers })
        .picked.flatMap(({ prims }) => prims)
        .filter(({ kind }) => kind === 'text').length;
    expect(shown(true)).toBeGreaterThan(3);
    expect(shown(false)).toBe(0);
  });
});
