import { describe, expect, test } from 'vitest';
import { paintCrack } from '../../../../src/canvas/paint/crack.ts';
import { paintJoint } from '../../../../src/canvas/paint/joint.ts';
import { shiftPath, strip } from '../../../../src/canvas/paint/pathShift.ts';
import type { LinePrim, Look } from '../../../../src/canvas/paint/prim.ts';
import { paintSlabEdges } from '../../../../src/canvas/paint/slab.ts';
import { strokesOf } from '../../../../src/canvas/paint/strokes.ts';
import { pathBetween, wallPieces } from '../../../../src/canvas/paint/wall.ts';
import type { Point } from '../../../../src/geometry/floorShape.ts';
import { boxOf } from '../../../../src/geometry/box.ts';
import type { Held } from '../../../../src/model/doc.ts';

const look: Look = { pxPerMm: 0.1, picked: false, print: false };
const square: readonly Point[] = [
  [0, 0],
  [1000, 0],
  [1000, 1000],
  [0, 1000],
];

type Edge = Held<'slab'>['outline'][number]['edge'];

function slab(edges: readonly Edge[], ring = square): Held<'slab'> {
  return {
    id: 'slab:a',
    floor: 'floor:a',
    tag: 'S1',
    outline: ring.map(([x, y], i) => ({ x, y, edge: edges[i] ?? { kind: 'wall' } })),
  };
}

function linesOf(record: Held<'slab'>): LinePrim[] {
  return paintSlabEdges(record, undefined, look).filter((prim) => prim.kind === 'line');
}

describe('a path moved sideways', () => {
  test('goes to the left of its direction, with mitred corners', () => {
    expect(
      shiftPath(
        [
          [0, 0],
          [100, 0],
        ],
        5,
        false,
      ),
    ).toEqual([
      [0, -5],
      [100, -5],
    ]);
    expect(shiftPath(square, 10, true)).toEqual([
      [-10, -10],
      [1010, -10],
      [1010, 1010],
      [-10, 1010],
    ]);
  });

  test('cuts a mitre off where a corner is so sharp that it would fly away', () => {
    const spike = shiftPath(
      [
        [0, 0],
        [1000, 0],
        [0, 1],
      ],
      10,
      false,
    );
    expect(boxOf(spike).maxX).toBeLessThan(1050);
  });

  test('of zero length stays what it is', () => {
    expect(
      shiftPath(
        [
          [5, 5],
          [5, 5],
        ],
        10,
        false,
      ),
    ).toEqual([[5, 5]]);
  });

  test('makes the body of a wall', () => {
    expect(
      strip(
        [
          [0, 0],
          [1000, 0],
        ],
        200,
      ),
    ).toEqual([
      [0, -100],
      [1000, -100],
      [1000, 100],
      [0, 100],
    ]);
  });
});

describe('edges of a slab', () => {
  test.each([
    ['one way round', square],
    ['the other way round', square.toReversed()],
  ])('walls lie outside the floor, %s', (_name, ring) => {
    const [wall] = linesOf(slab([], [...ring]));
    if (!wall) throw new Error('no wall');
    expect(wall.closed).toBe(true);
    // 8 px wide and moved by 4: at 0.1 px a mm its middle is 40 mm outside.
    expect(boxOf(strokesOf(wall, 0.1).path)).toEqual({ minX: -40, minY: -40, maxX: 1040, maxY: 1040 });
    expect(wall.px).toBe(8);
  });

  test("a doorway stops: threshold in the floor's colour, a line with teeth that point outwards", () => {
    const lines = linesOf(slab([{ kind: 'wall' }, { kind: 'wall' }, { kind: 'doorway' }]));
    expect(lines.map(({ ink, px }) => `${ink} ${px}`)).toEqual(['slab 8', 'ink 3', 'ink 8']);
    const stop = lines.find(({ teeth }) => teeth);
    if (!stop) throw new Error('no stop line');
    const { bars } = strokesOf(stop, 0.1);
    // 1000 mm are 100 px: teeth at 8, 24 ... 88.
    expect(bars).toHaveLength(6);
    for (const [from, to] of bars) {
      expect(from[1]).toBeCloseTo(1000);
      expect(to[1]).toBeCloseTo(1080);
    }
  });

  test('an open edge runs on, dotted, and a drop has triangles; both can be told otherwise', () => {
    const [, run] = linesOf(slab([{ kind: 'open' }])).toReversed();
    expect(linesOf(slab([{ kind: 'open' }])).some(({ dashPx }) => dashPx !== undefined)).toBe(true);
    expect(run).toBeDefined();
    expect(linesOf(slab([{ kind: 'open', beyond: 'stop' }])).some(({ teeth }) => teeth?.shape === 'bar')).toBe(true);
    expect(linesOf(slab([{ kind: 'drop' }])).some(({ teeth }) => teeth?.shape === 'triangle')).toBe(true);
  });

  test('an upstand is a thin line inside; neighbouring walls stay one mitred path', () => {
    const upstand = { kind: 'stemWall', heightMm: 150, treat: 'prepare' } as const;
    const lines = linesOf(slab([{ kind: 'wall', upstand }]));
    expect(lines.filter(({ px }) => px === 8)).toHaveLength(1);
    const thin = lines.find(({ px }) => px === 1.6);
    if (!thin) throw new Error('no upstand');
    expect(strokesOf(thin, 0.1).path.map(([, y]) => y)).toEqual([80, 80]);
  });
});

describe('walls on the slab', () => {
  const wall: Held<'wall'> = {
    id: 'wall:w',
    floor: 'floor:a',
    tag: 'W1',
    path: [
      [0, 0],
      [1000, 0],
      [1000, 1000],
    ],
    thicknessMm: 100,
  };
  const opening = (atMm: number, widthMm: number): Held<'opening'> => ({
    id: `opening:o${atMm}`,
    wall: 'wall:w',
    tag: 'D1',
    atMm,
    widthMm,
    heightMm: 2000,
  });

  test('have gaps where openings are, also round a corner', () => {
    expect(wallPieces({ wall, openings: [opening(900, 200)] })).toEqual([
      [
        [0, 0],
        [900, 0],
      ],
      [
        [1000, 100],
        [1000, 1000],
      ],
    ]);
    expect(wallPieces({ wall, openings: [opening(0, 500)] })).toEqual([
      [
        [500, 0],
        [1000, 0],
        [1000, 1000],
      ],
    ]);
  });

  test('a part of a path keeps its corners', () => {
    expect(pathBetween(wall.path, 500, 1500)).toEqual([
      [500, 0],
      [1000, 0],
      [1000, 500],
    ]);
  });
});

describe('cracks and joints are told apart by shape as well as weight', () => {
  const crack = (behaviour: Held<'crack'>['behaviour'], widthMm: number | null): string =>
    JSON.stringify(
      paintCrack(
        {
          id: 'crack:c',
          floor: 'floor:a',
          tag: 'C1',
          path: [
            [0, 0],
            [1, 1],
          ],
          behaviour,
          widthMm,
          depthMm: null,
        },
        undefined,
        look,
      ),
    );
  const joint = (kind: Held<'joint'>['kind']): string =>
    JSON.stringify(
      paintJoint(
        {
          id: 'joint:j',
          floor: 'floor:a',
          tag: 'J1',
          path: [
            [0, 0],
            [1, 1],
          ],
          kind,
          treat: 'carried',
        },
        undefined,
        look,
      ),
    );

  test('no two classes look alike', () => {
    const looks = [
      crack('static', 0.2),
      crack('static', 1),
      crack('working', 1),
      crack('structural', 1),
      joint('control'),
      joint('construction'),
      joint('isolation'),
    ];
    expect(new Set(looks).size).toBe(looks.length);
  });

  test('under 0.3 mm is a hairline (ACI 224 class); a working crack never is, and an unmeasured one is not either', () => {
    expect(crack('notJudged', 0.2)).toBe(crack('static', 0.2));
    expect(crack('working', 0.1)).toBe(crack('working', 2));
    expect(crack('notJudged', null)).toBe(crack('static', 1));
  });
});
