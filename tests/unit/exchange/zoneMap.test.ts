import { describe, expect, test } from 'vitest';
import { PAPER_SCALES, SHEETS, type Sheet } from '../../../src/exchange/paper.ts';
import { primSvg } from '../../../src/exchange/primsSvg.ts';
import { zoneMapPages, zoneMapScale } from '../../../src/exchange/zoneMap.ts';
import type { ZoneMapInput } from '../../../src/exchange/zoneMapInput.ts';
import type { Cell, Json, RecordId } from '../../../src/model/cell.ts';
import { applyCells, type Doc } from '../../../src/model/doc.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { paperWords } from '../../../src/words/paperWords.ts';
import { hallPlan, HALL_FLOOR } from '../../support/paintedPlan.ts';

function input(doc: Doc, more: Partial<ZoneMapInput> = {}): ZoneMapInput {
  return {
    doc,
    floor: HALL_FLOOR,
    takeoff: takeoff(doc, HALL_FLOOR),
    units: 'metric',
    sheet: 'A4',
    scale: null,
    ...more,
  };
}

function cellsOf(id: RecordId, fields: Readonly<Record<string, Json>>): Cell[] {
  return Object.entries(fields).map(([slot, value]) => [id, slot, value] as const);
}

/** One bare slab of this size, mm. */
function room(width: number, depth: number): Doc {
  const corners = [
    [0, 0],
    [width, 0],
    [width, depth],
    [0, depth],
  ].map(([x = 0, y = 0]) => ({ x, y, edge: { kind: 'wall' } }));
  return applyCells(new Map(), [
    ...cellsOf('job:a', { name: 'Room', units: 'metric', currency: 'USD' }),
    ...cellsOf(HALL_FLOOR, { name: 'Floor' }),
    ...cellsOf('slab:a', { floor: HALL_FLOOR, tag: 'S1', outline: corners }),
  ]);
}

function textsOf(svg: string): string[] {
  return [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, inner = '']) =>
    inner.replaceAll(/<[^>]+>/g, '').replaceAll('\u00a0', ' '),
  );
}

/** Width and depth of the slab as drawn, paper mm. */
function drawnSlab(svg: string): readonly [number, number] {
  const d = /<g data-class="slab"><path d="([^"]+)"/.exec(svg)?.[1] ?? '';
  const points = [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

describe('true scale', () => {
  test('14 m at 1 : 50 are 280 mm', () => {
    const svg = primSvg(
      {
        kind: 'line',
        path: [
          [0, 0],
          [14_000, 0],
        ],
        ink: 'ink',
        px: 1,
      },
      { scale: 50, at: [3.3, 7] },
    );
    const [from = 0, to = 0] = [...svg.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
    expect(to - from).toBeCloseTo(280, 3);
  });

  test.each([...PAPER_SCALES.metric, ...PAPER_SCALES.imperial])(
    'a room drawn at 1 : %d measures true on the sheet, to a hundredth of a millimetre',
    (scale) => {
      const [width, depth] = [140 * scale, 90 * scale];
      const [page] = zoneMapPages(input(room(width, depth), { scale }));
      const [w, h] = drawnSlab(page?.svg ?? '');
      expect(Math.abs(w - width / scale)).toBeLessThan(0.01);
      expect(Math.abs(h - depth / scale)).toBeLessThan(0.01);
    },
  );

  // NIST SP 811: 1 in = 25.4 mm, 1 ft = 304.8 mm. By hand: 20 ft at 1/8 in to the foot are 20/8 in = 2.5 in = 63.5 mm.
  test(`20 ft by 12 ft at 1/8" = 1' are 63.5 mm by 38.1 mm on paper`, () => {
    const feet = input(room(20 * 304.8, 12 * 304.8), { units: 'imperial', sheet: 'letter', scale: 96 });
    const [page] = zoneMapPages(feet);
    const [w, h] = drawnSlab(page?.svg ?? '');
    expect(Math.abs(w - 63.5)).toBeLessThan(0.01);
    expect(Math.abs(h - 38.1)).toBeLessThan(0.01);
    expect(textsOf(page?.svg ?? '')).toContain(`1/8&quot; = 1' (1 : 96) on Letter`);
  });

  test.each(PAPER_SCALES.imperial)('1 : %d is stated in inches to feet, and the two agree', (scale) => {
    const said = /^(\d+)(?:\/(\d+))?" = (\d+)' \(1 : (\d+)\)$/.exec(paperWords.oneTo(scale));
    const [above, below, feet, oneTo] = [said?.[1], said?.[2] ?? 1, said?.[3], said?.[4]].map(Number);
    expect(oneTo).toBe(scale);
    expect(((feet ?? 0) * 12) / ((above ?? 0) / (below ?? 0))).toBe(scale);
  });

  test('the sheet says its own size in millimetres, one unit each', () => {
    for (const sheet of ['A4', 'letter'] as const) {
      const [page] = zoneMapPages(input(room(6000, 4000), { sheet }));
      const { widthMm, heightMm } = SHEETS[sheet];
      expect(page?.svg).toContain(`width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}"`);
    }
  });
});

describe('the scale', () => {
  const scaleOf = (doc: Doc, sheet: Sheet, scale: number | null): ReturnType<typeof zoneMapScale> =>
    zoneMapScale(input(doc, { sheet, scale }));

  test('is the largest that fits when none is asked for', () => {
    expect(scaleOf(room(6700, 5500), 'A4', null)).toEqual({ scale: 50, sentence: null });
    expect(scaleOf(hallPlan(), 'A4', null)).toEqual({ scale: 150, sentence: null });
    expect(scaleOf(hallPlan(), 'letter', null)).toEqual({ scale: 150, sentence: null });
  });

  test('is the one asked for when the floor fits, and says so when it does not', () => {
    expect(scaleOf(hallPlan(), 'A4', 250)).toEqual({ scale: 250, sentence: null });
    const small = scaleOf(hallPlan(), 'A4', 50);
    expect(small.scale).toBe(150);
    expect(small.sentence).toContain('does not fit on A4');
  });

  test('of a job in feet is one of a scale rule in feet', () => {
    const inFeet = (doc: Doc, scale: number | null): ReturnType<typeof zoneMapScale> =>
      zoneMapScale(input(doc, { sheet: 'letter', units: 'imperial', scale }));
    expect(inFeet(room(6000, 5000), null)).toEqual({ scale: 48, sentence: null });
    expect(inFeet(hallPlan(), null)).toEqual({ scale: 192, sentence: null });
    const large = inFeet(hallPlan(), 48);
    expect(large.scale).toBe(192);
    expect(large.sentence).toContain(`At 1/4" = 1' (1 : 48) the floor does not fit on Letter`);
    expect(large.sentence).toContain(`drawn at 1/16" = 1' (1 : 192)`);
    expect(inFeet(room(900_000, 900_000), null).sentence).toContain(`even at 1" = 200' (1 : 2400)`);
  });

  test('nothing to draw, or far too much of it, is a sentence and no sheet', () => {
    const empty = applyCells(new Map(), cellsOf(HALL_FLOOR, { name: 'Floor' }));
    expect(scaleOf(empty, 'A4', null)).toMatchObject({ scale: null });
    expect(scaleOf(empty, 'A4', null).sentence).toContain('no slab');
    expect(zoneMapPages(input(empty))).toEqual([]);
    expect(scaleOf(room(900_000, 900_000), 'A4', null).sentence).toContain('too large');
  });
});

describe('what stands on it', () => {
  const doc = hallPlan();
  const pages = zoneMapPages(input(doc));
  const texts = pages.flatMap(({ svg }) => textsOf(svg));
  const all = texts.join('\n');

  test('every crack, joint, finding, obstruction, door and zone by its tag', () => {
    for (const tag of ['C1', 'C2', 'C3', 'C4', 'C5', 'J1', 'J3', 'F1', 'F4', 'B1', 'B9', 'B10', 'T1', 'E1', 'X1'])
      expect(texts, tag).toContain(tag);
    expect(all).toContain('D1 stop line 4.00 m');
    expect(all).toContain('D2 0.90 m clear');
    expect(all).toContain('D3 is 0.70 m clear');
  });

  test('sizes, scale and the line on local law', () => {
    expect(texts).toContain('24.00 m');
    expect(texts).toContain('16.00 m');
    expect(texts).toContain('1 : 150 on A4');
    expect(all.replaceAll('\n', ' ')).toContain(
      'Local law and the site rules come first. Licensed people do electrical,',
    );
  });

  test('a held zone says STOP and why, and tells nobody to work in it', () => {
    expect(all).toContain('Maybe asbestos.');
    // F3 and C1 lie in held zones: their own treatment must not be read there.
    const [cracks] = [all.indexOf('Cracks')];
    expect(cracks).toBeGreaterThan(0);
    expect(all).not.toContain('if clear, scrape');
    expect(all.replaceAll('\n', ' ')).toContain('STOP, zone 3');
    expect(all).toContain('STOP, zone 1');
  });

  test('cutting waits until the slab is located', () => {
    expect(all).toContain('Do not cut, chase, core or drill');
    expect(all.replaceAll('\n', ' ')).toContain('only when the slab is located');
    const safe = applyCells(doc, [['job:hall', 'inSlab', { answer: 'no' }]]);
    const said = zoneMapPages(input(safe))
      .flatMap(({ svg }) => textsOf(svg))
      .join(' ');
    expect(said).not.toContain('only when the slab is located');
    expect(said).not.toContain('Do not cut');
  });

  test('a name full of markup stays a name', () => {
    const named = applyCells(doc, [['job:hall', 'name', '<script>alert("&")</script>']]);
    const [page] = zoneMapPages(input(named));
    expect(page?.svg).not.toContain('<script');
    expect(page?.svg).toContain('&lt;script&gt;');
  });

  test('black and white only', () => {
    const inks = new Set(
      pages.flatMap(({ svg }) => [...svg.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(([, ink = '']) => ink)),
    );
    expect([...inks].toSorted()).toEqual(['black', 'none', 'white']);
  });

  test('hatches are lines cut by their outline, not patterns, which browsers print as pictures', () => {
    const [sheet] = pages;
    const drawn = sheet?.svg ?? '';
    expect(drawn).not.toContain('<pattern');
    const cuts = [...drawn.matchAll(/<clipPath id="(cut\w+)">/g)].map(([, id]) => id);
    // Ten swatches, and at least one zone.
    expect(new Set(cuts).size).toBeGreaterThan(10);
    for (const id of cuts) expect(drawn).toContain(`clip-path="url(#${id})"`);
  });

  test('no figure is parted from its unit, no card or short table from its head', () => {
    for (const { svg } of pages) for (const text of textsOf(svg)) expect(text).not.toMatch(/^(m|m²|mm|ft|ft²)\b/);
    const second = textsOf(pages[1]?.svg ?? '');
    expect(second.filter((text) => text.endsWith(', continued'))).toEqual([]);
  });

  test('power, water and notes are told, readings and photographs stay in the office', () => {
    const item = (tag: string) => ({ floor: HALL_FLOOR, tag, at: [3000, 3000] });
    const said = zoneMapPages(
      input(
        applyCells(doc, [
          ...cellsOf('service:p', { ...item('P7'), kind: 'power', volts: 400, amps: 32, phases: 3 }),
          ...cellsOf('note:n', { ...item('N7'), text: 'Key at the gate.' }),
          ...cellsOf('reading:r', { ...item('R7'), kind: 'moisture', value: 75, unit: '%', takenBy: 'A. Surveyor' }),
        ]),
      ),
    ).flatMap(({ svg }) => textsOf(svg));
    expect(said).toEqual(expect.arrayContaining(['P7', 'power, 400 V, 32 A, 3 phases', 'N7', 'Key at the gate.']));
    expect(said).not.toContain('R7');
  });

  test('plates stay beside the line to the column, words above the frame', () => {
    const column = Number(/text x="([\d.]+)"[^>]*>Released by/.exec(pages[0]?.svg ?? '')?.[1]);
    const [frame] = /<clipPath id="map"><rect [^>]*>/.exec(pages[0]?.svg ?? '') ?? [''];
    const [, x, width] = /x="([\d.]+)"[^>]*width="([\d.]+)"/.exec(frame) ?? [];
    expect(Number(x) + Number(width)).toBeLessThan(column - 4);
  });

  test('the columns stay on the sheet', () => {
    for (const { svg, widthMm, heightMm } of pages) {
      for (const [, x, y] of svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"/g)) {
        expect(Number(x)).toBeLessThan(widthMm - 6);
        expect(Number(y)).toBeLessThan(heightMm - 6);
      }
    }
  });

  test('what does not fit goes on further sheets, and nothing is lost', () => {
    const many = applyCells(
      doc,
      Array.from({ length: 120 }, (_, i) =>
        cellsOf(`crack:m${i}`, {
          floor: HALL_FLOOR,
          tag: `C${i + 100}`,
          path: [
            [16_000 + i * 20, 5000],
            [16_000 + i * 20, 7000],
          ],
          widthMm: 1,
          depthMm: null,
          behaviour: 'static',
        }),
      ).flat(),
    );
    const more = zoneMapPages(input(many));
    expect(more.length).toBeGreaterThan(2);
    // Each stands in the table; on the map they crowd each other.
    const tables = more.slice(1).flatMap(({ svg }) => textsOf(svg));
    for (let i = 0; i < 120; i += 1) expect(tables, `C${i + 100}`).toContain(`C${i + 100}`);
    expect(tables).toContain(`Page 2 of ${more.length}`);
  });

  test('no money: amounts, wages and the currency never come near it', () => {
    const rich = applyCells(doc, [
      ...cellsOf('price:p', {
        code: 'wage',
        term: 'Wage',
        unit: 'h',
        amount: 765_432,
        source: 'own',
        provenance: 'own',
      }),
      ...cellsOf('pricing:p', {
        overheadPct: 12.345,
        marginPct: 23.456,
        burdenPct: 34.567,
        contingencyPct: { measured: 5.678, photo: 10, unknown: 20 },
        certainty: 'measured',
        minimumCrewDays: 0.5,
        crew: 2,
        hoursADay: 8,
      }),
      ...cellsOf('letter:l', { to: 'Invented Customer', body: 'We offer' }),
    ]);
    const bytes = zoneMapPages(input(rich))
      .map(({ svg }) => svg)
      .join('');
    for (const secret of [
      '7654',
      '7,654',
      '12.345',
      '23.456',
      '34.567',
      'USD',
      '$',
      'Wage',
      'Invented Customer',
      'We offer',
      'price',
      'margin',
      '/h',
    ]) {
      expect(bytes, secret).not.toContain(secret);
    }
  });
});

test('feet and inches on Letter', () => {
  const [page] = zoneMapPages(input(hallPlan(), { units: 'imperial', sheet: 'letter' }));
  const all = textsOf(page?.svg ?? '').join('\n');
  expect(all).toContain('ft²');
  expect(all).not.toContain(' m²');
  expect(all).toContain('on Letter');
});
