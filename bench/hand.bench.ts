import { hitAt } from '../src/canvas/hit.ts';
import { planIndex, type PlanIndex } from '../src/canvas/planIndex.ts';
import { snapTo } from '../src/canvas/snap/engine.ts';
import { snapSources } from '../src/canvas/snap/sources.ts';
import { pickTool } from '../src/canvas/tools/pickTool.ts';
import { slabTool } from '../src/canvas/tools/slabTool.ts';
import type { ToolEnv } from '../src/canvas/tools/tool.ts';
import type { Cell, RecordId } from '../src/model/cell.ts';
import { applyCells, cellsFor, EMPTY_DOC, type Doc } from '../src/model/doc.ts';
import type { Point } from '../src/geometry/floorShape.ts';
import { timed } from './timed.ts';

/** What a move of the hand costs on a floor of so many items: snapping and the hit test, a hundred places each. */
const FLOOR = 'floor:a';
const PLACES = 100;

/** Invented: a field of columns, cracks and findings, one each 2 m. */
function crowdedFloor(items: number): Doc {
  const across = Math.ceil(Math.sqrt(items));
  const cells: Cell[] = cellsFor(FLOOR, { name: 'Bench' });
  for (let number = 0; number < items; number++) {
    const x = (number % across) * 2000;
    const y = Math.floor(number / across) * 2000;
    cells.push(...itemCells(number, x, y));
  }
  return applyCells(EMPTY_DOC, cells);
}

function itemCells(number: number, x: number, y: number): readonly Cell[] {
  const item = { floor: FLOOR, tag: `${number}`, order: String(number).padStart(6, '0') } as const;
  if (number % 3 === 0) {
    const shape = { form: 'rectangle', at: [x, y], widthMm: 400, depthMm: 400, turnDeg: 15 } as const;
    return cellsFor(`obstruction:${number}`, { ...item, kind: 'column', under: 'none', shape });
  }
  if (number % 3 === 1) {
    const path = [
      [x, y],
      [x + 900, y + 300],
      [x + 1500, y - 200],
    ] as const;
    return cellsFor(`crack:${number}`, { ...item, path, widthMm: null, depthMm: null, behaviour: 'notJudged' });
  }
  const ring = [
    [x, y],
    [x + 1200, y],
    [x + 1200, y + 800],
    [x, y + 800],
  ] as const;
  return cellsFor(`finding:${number}`, { ...item, kind: 'oil_light', ring });
}

/** Spread over the floor, the same every time. */
function places(items: number): readonly Point[] {
  const span = Math.ceil(Math.sqrt(items)) * 2000;
  return Array.from({ length: PLACES }, (_, step): Point => [
    (step * 0.618 * span) % span,
    (step * 0.414 * span) % span,
  ]);
}

function snapAll(index: PlanIndex, where: readonly Point[]): number {
  let met = 0;
  for (const at of where) {
    const own: readonly Point[] = [
      [at[0] - 3000, at[1]],
      [at[0] - 1000, at[1] - 700],
    ];
    const query = {
      at,
      from: own.at(-1) ?? null,
      pxPerMm: 0.05,
      reachPx: 12,
      held: null,
      off: false,
      skip: new Set<RecordId>(),
    };
    if (snapTo(query, snapSources({ index, own }, null)).kind !== 'free') met += 1;
  }
  return met;
}

function hitAll(index: PlanIndex, where: readonly Point[]): number {
  return where.filter((at) => hitAt(index, { at, pxPerMm: 0.05, reachPx: 8, picked: [], aims: null })).length;
}

/** A slab with five corners set and a sixth under the hand; a wall carried by a corner. */
function drafts(doc: Doc): readonly { readonly what: string; readonly once: () => unknown }[] {
  const walled = applyCells(
    doc,
    cellsFor('wall:a', {
      floor: FLOOR,
      tag: 'W1',
      order: '1',
      path: [
        [0, 0],
        [5000, 0],
      ],
      thicknessMm: 100,
    }),
  );
  const env: ToolEnv = { doc: walled, floor: FLOOR, picked: ['wall:a'], newId: (type) => `${type}:b`, settings: {} };
  const points: readonly Point[] = [
    [0, 0],
    [9000, 0],
    [9000, 9000],
    [5000, 9500],
    [0, 9000],
  ];
  const drawing = { at: 'drawing', points, cursor: [-500, 4000] } as const;
  const carrying = {
    at: 'carrying',
    what: 'corner',
    ids: ['wall:a'],
    part: 1,
    from: [5000, 0],
    to: [6000, 100],
    before: [0, 0],
    rest: [],
  } as const;
  return [
    { what: 'draft of a slab being drawn', once: () => slabTool.draft(drawing, env) },
    { what: 'draft of a wall corner being carried', once: () => pickTool.draft(carrying, env) },
  ];
}

export async function run(print: (line: string) => void): Promise<void> {
  for (const size of [1000, 10_000]) {
    const doc = crowdedFloor(size);
    const index = planIndex(doc, FLOOR);
    const where = places(size);
    const measures = [
      { what: 'one point snapped', each: PLACES, once: () => snapAll(index, where) },
      { what: 'one hit test', each: PLACES, once: () => hitAll(index, where) },
      {
        what: 'index built after a change',
        each: 1,
        once: () => planIndex(applyCells(doc, [[FLOOR, 'level', 1]]), FLOOR),
      },
      ...drafts(doc).map(({ what, once }) => ({ what, each: 1, once })),
    ];
    for (const { what, each, once } of measures) {
      // One at a time: two measures at once would slow each other.
      // oxlint-disable-next-line no-await-in-loop
      const { medianMs, runs } = await timed(once);
      print(`${what}, ${size} items: median ${(medianMs / each).toFixed(3)} ms, ${runs} runs`);
    }
  }
}
