import { describe, expect, test } from 'vitest';
import { plateOf, plateSize } from '../../../../src/canvas/paint/plate.ts';
import { paintFloor, SHOW_ALL } from '../../../../src/canvas/paint/paintFloor.ts';
import type { TextPrim } from '../../../../src/canvas/paint/prim.ts';
import { placeTags, type TagWish } from '../../../../src/canvas/paint/tagPlaces.ts';
import { textWidth, wrapText } from '../../../../src/canvas/paint/textWidth.ts';
import { planView } from '../../../../src/canvas/paint/view.ts';
import { hallPlan, HALL_FLOOR } from '../../../support/paintedPlan.ts';

const view = planView(hallPlan(), HALL_FLOOR);

function plates(pxPerMm: number): TextPrim[] {
  const floor = paintFloor(view, { pxPerMm, picked: false, print: false }, SHOW_ALL);
  return floor.tags.flatMap(({ prims }) => prims).filter((prim) => prim.kind === 'text');
}

function boxOfPlate(plate: TextPrim, pxPerMm: number): readonly [number, number, number, number] {
  const { width, height } = plateSize(plate);
  const [dx, dy] = plate.offsetPx ?? [0, 0];
  const x = plate.at[0] * pxPerMm + dx;
  const y = plate.at[1] * pxPerMm + dy;
  return [x - width / 2, y - height / 2, x + width / 2, y + height / 2];
}

describe('tags of a full floor', () => {
  test.each([0.03, 0.045, 0.08])('do not cover each other at %d px a mm', (pxPerMm) => {
    const boxes = plates(pxPerMm).map((plate) => boxOfPlate(plate, pxPerMm));
    const pairs = boxes.flatMap((a, i) =>
      boxes.slice(i + 1).filter((b) => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]),
    );
    expect(boxes.length).toBeGreaterThan(30);
    expect(pairs).toEqual([]);
  });

  test('below 20 px a metre what stands on the floor gives way to cracks, findings and ways through', () => {
    const kinds = new Set(plates(0.0199).map(({ text }) => text[0]));
    expect(kinds).toContain('C');
    expect(kinds).toContain('F');
    expect(kinds).not.toContain('B');
    expect(kinds).not.toContain('J');
    expect(new Set(plates(0.045).map(({ text }) => text[0]))).toContain('B');
  });

  test('below 12 px a metre only zone numbers stay', () => {
    expect(
      plates(0.0119)
        .map(({ text }) => text)
        .toSorted(),
    ).toEqual(['1', '2', '3']);
    expect(plates(0.0121).length).toBeGreaterThan(10);
    expect(plates(0.04).length).toBeGreaterThan(30);
  });

  test('what is picked has a chalk plate', () => {
    const floor = paintFloor(
      view,
      { pxPerMm: 0.04, picked: false, print: false },
      { ...SHOW_ALL, picked: ['crack:c1'] },
    );
    const chalk = floor.tags
      .flatMap(({ prims }) => prims)
      .filter((prim) => prim.kind === 'text' && prim.plate === 'chalk');
    expect(chalk.map((prim) => prim.kind === 'text' && prim.text)).toEqual(['C1']);
  });
});

describe('placing', () => {
  const text: TextPrim = { kind: 'text', at: [0, 0], text: 'C1', px: 14.5, weight: 800, ink: 'ink', plate: 'outlined' };
  const wish = (id: string): TagWish => ({ id, anchors: [[0, 0]], text, rank: 1, on: false });

  test('a plate far from its place gets a leader', () => {
    const crowd = Array.from({ length: 12 }, (_, i) => wish(`w${i}`));
    const placed = placeTags(crowd, [], 1, { keepAll: true, within: null });
    // On the screen a plate so far off stays away until there is room.
    expect(placeTags(crowd, [], 1).length).toBeLessThan(crowd.length);
    expect(placed.some(({ leader }) => leader)).toBe(true);
    expect(placed.filter(({ leader }) => !leader).length).toBeGreaterThan(1);
  });

  test('of thousands in one place the screen shows those that have room, paper shows all', () => {
    const crowd = Array.from({ length: 2000 }, (_, i) => wish(`w${i}`));
    expect(placeTags(crowd, [], 1).length).toBeLessThan(10);
    expect(placeTags(crowd, [], 1, { keepAll: true, within: null })).toHaveLength(2000);
  });

  test('what is first in rank is never left out', () => {
    const crowd = Array.from({ length: 1000 }, (_, i) => ({ ...wish(`w${i}`), rank: i === 999 ? -1 : 3 }));
    expect(placeTags(crowd, [], 1)[0]).toBeDefined();
    const first = { ...wish('first'), rank: -1, text: { ...text, text: 'C999' } };
    expect(placeTags([...crowd, first], [], 1).some((plate) => plate.text === 'C999')).toBe(true);
  });

  test('a line is not covered when there is room beside it', () => {
    const [placed] = placeTags(
      [wish('w')],
      [
        [
          [-500, 0],
          [500, 0],
        ],
        [
          [5, -500],
          [5, -1],
        ],
      ],
      1,
    );
    if (!placed) throw new Error('no plate');
    const [, top, , bottom] = boxOfPlate(placed, 1);
    expect(top > 0 || bottom < 0).toBe(true);
  });

  test('a plate stays on the sheet', () => {
    const [placed] = placeTags([wish('w')], [], 1, {
      keepAll: false,
      within: { minX: -100, minY: -100, maxX: 10, maxY: 10 },
    });
    if (!placed) throw new Error('no plate');
    const [, , right, bottom] = boxOfPlate(placed, 1);
    expect(right).toBeLessThanOrEqual(10);
    expect(bottom).toBeLessThanOrEqual(10);
  });
});

describe('letters', () => {
  test('figures are as wide as each other, and a plate is 24 high about letters of 14.5', () => {
    expect(textWidth('111', 10)).toBe(textWidth('888', 10));
    const plate = plateOf({
      kind: 'text',
      at: [0, 0],
      text: 'C12',
      px: 14.5,
      weight: 800,
      ink: 'ink',
      plate: 'outlined',
    });
    expect(plate.height).toBeCloseTo(24);
  });

  test('words break into lines that fit, and lose none', () => {
    const words = 'Local law and the site rules come first';
    const lines = wrapText(words, 3, 25);
    expect(lines.join(' ')).toBe(words);
    for (const line of lines) expect(textWidth(line, 3)).toBeLessThanOrEqual(25);
    expect(wrapText('unbreakablyLongWordOfOnePiece', 3, 5)).toEqual(['unbreakablyLongWordOfOnePiece']);
  });
});

const NUMBER: TextPrim = { kind: 'text', at: [0, 0], text: '1', px: 31, weight: 800, ink: 'board', plate: 'solid' };

test('a plate that stays stands on an anchor although a line runs there', () => {
  const wish = { id: 'zone:a', anchors: [[0, 0]] as const, text: NUMBER, rank: 0, on: true } as const;
  const across = [
    [
      [-50, 0],
      [50, 0],
    ] as const,
  ];
  expect(placeTags([{ ...wish, stays: true }], across, 1)[0]?.offsetPx).toEqual([0, 0]);
  expect(placeTags([wish], across, 1)[0]?.offsetPx).not.toEqual([0, 0]);
});
