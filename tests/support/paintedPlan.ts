import type { Json, RecordId } from '../../src/model/cell.ts';
import { applyCells, EMPTY_DOC, type Doc } from '../../src/model/doc.ts';
import { checkRecord } from '../../src/model/records/all.ts';

/** An invented hall of 24 by 16 m with one of everything that is drawn. For painters and paper. */
export const HALL_FLOOR = 'floor:hall' as const;

type Fields = Readonly<Record<string, Json>>;
const item = (tag: string): Fields => ({ floor: HALL_FLOOR, tag });
const wall = { kind: 'wall' } as const;

function corners(points: readonly (readonly [number, number, Fields?])[]): Json {
  return points.map(([x, y, edge]) => ({ x, y, edge: edge ?? wall }));
}

function rectangle(x: number, y: number, width: number, height: number): Json {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

function column(n: number, x: number, y: number): readonly [RecordId, Fields] {
  return [
    `obstruction:b${n}`,
    {
      ...item(`B${n}`),
      kind: 'column',
      shape: { form: 'rectangle', at: [x, y], widthMm: 400, depthMm: 400, turnDeg: 0 },
      under: 'none',
    },
  ];
}

const zone = { covers: 'ring', place: 'indoor', wetAllowed: false, hardness: 'medium' } as const;

const RECORDS: readonly (readonly [RecordId, Fields])[] = [
  ['job:hall', { name: 'Invented hall', number: '26-114', units: 'metric', currency: 'USD', invented: true }],
  [HALL_FLOOR, { name: 'Ground floor', northDeg: 0 }],
  [
    'slab:s1',
    {
      ...item('S1'),
      outline: corners([
        [0, 0],
        [24000, 0],
        [24000, 16000, { kind: 'wall', upstand: { kind: 'stemWall', heightMm: 150, treat: 'prepare' } }],
        [9600, 16000, { kind: 'doorway', beyond: 'stop', heightMm: 3000, tag: 'D1' }],
        [5600, 16000],
        [0, 16000, { kind: 'wall', upstand: { kind: 'stemWall', heightMm: 150, treat: 'prepare' } }],
        [0, 8000, { kind: 'open', beyond: 'run' }],
        [0, 6000],
      ]),
    },
  ],
  [
    'wall:w1',
    {
      ...item('W1'),
      path: [
        [15100, 0],
        [15100, 16000],
      ],
      thicknessMm: 200,
    },
  ],
  ['opening:d2', { wall: 'wall:w1', tag: 'D2', atMm: 8100, widthMm: 900, heightMm: 2100 }],
  [
    'wall:w2',
    {
      ...item('W2'),
      path: [
        [20000, 12900],
        [20000, 16000],
      ],
      thicknessMm: 100,
    },
  ],
  [
    'wall:w3',
    {
      ...item('W3'),
      path: [
        [24000, 12900],
        [19950, 12900],
      ],
      thicknessMm: 100,
    },
  ],
  ['opening:d3', { wall: 'wall:w3', tag: 'D3', atMm: 2000, widthMm: 700, heightMm: 2100 }],
  column(1, 3800, 5200),
  column(2, 7600, 5200),
  column(3, 11400, 5200),
  column(4, 19000, 5200),
  column(5, 3800, 10800),
  column(6, 7600, 10800),
  column(7, 11400, 10800),
  column(8, 19000, 10800),
  [
    'obstruction:b9',
    {
      ...item('B9'),
      kind: 'equipment',
      shape: { form: 'rectangle', at: [22850, 2900], widthMm: 1000, depthMm: 1800, turnDeg: 0 },
      under: 'outOfScope',
    },
  ],
  [
    'obstruction:b10',
    { ...item('B10'), kind: 'drain', shape: { form: 'circle', at: [17000, 14000], diameterMm: 300 }, under: 'none' },
  ],
  [
    'obstruction:b11',
    {
      ...item('B11'),
      kind: 'pit',
      shape: {
        form: 'polygon',
        ring: [
          [1000, 13000],
          [2600, 13000],
          [2600, 14500],
          [1600, 14500],
          [1000, 14000],
        ],
      },
      under: 'none',
    },
  ],
  [
    'crack:c1',
    {
      ...item('C1'),
      path: [
        [3600, 11000],
        [2600, 12200],
        [1900, 13600],
        [1600, 16000],
      ],
      widthMm: 0.6,
      depthMm: null,
      behaviour: 'static',
    },
  ],
  [
    'crack:c2',
    {
      ...item('C2'),
      path: [
        [11600, 5000],
        [12600, 3600],
        [12900, 2100],
        [13600, 0],
      ],
      widthMm: 0.2,
      depthMm: null,
      behaviour: 'notJudged',
    },
  ],
  [
    'crack:c3',
    {
      ...item('C3'),
      path: [
        [0, 3400],
        [1400, 3800],
        [2500, 4400],
        [3600, 5000],
      ],
      widthMm: 1.2,
      depthMm: null,
      behaviour: 'working',
    },
  ],
  [
    'crack:c4',
    {
      ...item('C4'),
      path: [
        [9600, 16000],
        [9900, 14800],
        [10800, 13700],
      ],
      widthMm: 2,
      depthMm: 40,
      behaviour: 'structural',
    },
  ],
  [
    'crack:c5',
    {
      ...item('C5'),
      path: [
        [19200, 5000],
        [20200, 4400],
        [21100, 4000],
        [22300, 3800],
      ],
      widthMm: null,
      depthMm: null,
      behaviour: 'notJudged',
    },
  ],
  [
    'joint:j1',
    {
      ...item('J1'),
      path: [
        [7600, 0],
        [7600, 16000],
      ],
      kind: 'control',
      treat: 'filled',
    },
  ],
  [
    'joint:j2',
    {
      ...item('J2'),
      path: [
        [0, 8000],
        [15000, 8000],
      ],
      kind: 'construction',
      treat: 'carried',
    },
  ],
  [
    'joint:j3',
    {
      ...item('J3'),
      path: [
        [15200, 8000],
        [24000, 8000],
      ],
      kind: 'isolation',
      treat: 'carried',
    },
  ],
  [
    'finding:f1',
    {
      ...item('F1'),
      kind: 'oil_deep',
      ring: [
        [4600, 12600],
        [6200, 12200],
        [6900, 13100],
        [6000, 14300],
        [4700, 13900],
      ],
    },
  ],
  ['finding:f2', { ...item('F2'), kind: 'adhesive', ring: rectangle(12000, 10900, 2500, 1800) }],
  ['finding:f3', { ...item('F3'), kind: 'mastic_black', ring: rectangle(20050, 12950, 3950, 3050) }],
  ['finding:f4', { ...item('F4'), kind: 'pitting', ring: rectangle(9000, 1200, 1800, 1400) }],
  [
    'zone:z1',
    { ...item('Z1'), ...zone, name: 'Assembly hall', ring: rectangle(0, 0, 15000, 16000), csp: { min: 4, max: 5 } },
  ],
  [
    'zone:z2',
    { ...item('Z2'), ...zone, name: 'Stores', ring: rectangle(15200, 0, 8800, 16000), csp: { min: 3, max: 3 } },
  ],
  [
    'zone:z3',
    { ...item('Z3'), ...zone, name: 'Old office', ring: rectangle(20050, 12950, 3950, 3050), csp: { min: 2, max: 3 } },
  ],
  ['outOfScope:x1', { ...item('X1'), ring: rectangle(200, 200, 2200, 1600) }],
  ['steps:t1', { ...item('K1'), ring: rectangle(13400, 14600, 1500, 1200), count: 4, riseMm: 170, goingMm: 300 }],
  ['entrance:e1', { ...item('E1'), at: [7600, 16000], widthMm: 4000, heightMm: 3000 }],
  ['reading:r1', { ...item('R1'), kind: 'moisture', at: [5200, 3000], value: 4.1, unit: '%' }],
  ['note:n1', { ...item('N1'), at: [9200, 9300], text: 'Rack marks' }],
  ['dimension:m1', { ...item('M1'), from: [0, 0], to: [15000, 0], offsetMm: 900 }],
  ['dimension:m2', { ...item('M2'), from: [15200, 0], to: [24000, 0], offsetMm: 900 }],
];

/** The hall, each record checked against its schema. */
export function hallPlan(): Doc {
  for (const [id, fields] of RECORDS) {
    const fault = checkRecord(id, fields);
    if (fault) throw new Error(`${id}: ${fault}`);
  }
  return applyCells(
    EMPTY_DOC,
    RECORDS.flatMap(([id, fields]) => Object.entries(fields).map(([slot, value]) => [id, slot, value] as const)),
  );
}
