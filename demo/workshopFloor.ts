import type { Edge } from '../src/model/records/slab.ts';
import { FLOOR, type Placer, type Point } from './place.ts';

/*
 * An invented building, 24 x 16 m inside, north up.
 *
 *      0       3        9    12   15.1                24
 *    0 +-------+--------+::::+-----+-------------------+     :::: the floor runs on into a link hall
 *      | cut   |   hall            |  stores     [ ]   |     [ ]  compressor plinth, 0.65 m from the wall
 *      | off  D4                   |                   |
 *      +--^----+                  D2 0.90 clear        |
 *   10 >                           |                   |     >    dock edge, a drop
 *   13 >                           +--D3---------------+ 12.1
 *      |                           |  old office       |
 *   16 +------====-----------------+-------------------+     ==== doorway D1, 4.00 m, stops at the driveway
 *            5.6  9.6
 */
export const HALL = { widthMm: 24_000, depthMm: 16_000 } as const;
export const COLUMNS: readonly Point[] = [3800, 7600, 11_400, 19_200].flatMap((x): Point[] => [
  [x, 5200],
  [x, 10_800],
]);
export const COLUMN_MM = 400;
/** The wall between hall and stores, and that of the office, along their middles. */
export const WALL_X = 15_100;
export const WALL_Y = 12_100;
export const WALL_MM = 200;

const wall: Edge = { kind: 'wall' };
const stemWall: Edge = { kind: 'wall', upstand: { kind: 'stemWall', heightMm: 150, treat: 'prepare' } };

export function placeWorkshopFloor(place: Placer): void {
  place.put(FLOOR, { name: 'Ground floor', level: 0, northDeg: 0, noneFound: ['hollow'], doorTags: 4 });
  placeSlab(place);
  placeWalls(place);
  placeObstructions(place);
  place.item('outOfScope:weighbridge', {
    tag: 'X1',
    name: 'Weighing platform',
    reason: 'The tenant has it taken out later.',
    ring: [
      [11_800, 12_900],
      [13_900, 12_900],
      [13_900, 14_600],
      [11_800, 14_600],
    ],
  });
  place.item('entrance:driveway', {
    tag: 'M1',
    name: 'From the driveway',
    at: [7600, 16_000],
    widthMm: 4000,
    heightMm: 3000,
    stairs: 0,
  });
  place.item('service:power', {
    tag: 'P1',
    kind: 'power',
    at: [300, 14_500],
    volts: 400,
    amps: 32,
    phases: 3,
    circuits: 1,
  });
  place.item('service:water', { tag: 'P2', kind: 'water', at: [300, 9200] });
  place.item('dimension:length', { tag: 'L1', from: [0, 0], to: [24_000, 0], offsetMm: 900 });
  place.item('dimension:depth', { tag: 'L2', from: [0, 16_000], to: [0, 0], offsetMm: 900 });
}

function placeSlab(place: Placer): void {
  const corners: readonly (readonly [x: number, y: number, edge: Edge])[] = [
    [0, 0, stemWall],
    [9000, 0, { kind: 'open', beyond: 'run' }],
    [12_000, 0, stemWall],
    [15_000, 0, wall],
    [24_000, 0, wall],
    [24_000, 16_000, wall],
    [9600, 16_000, { kind: 'doorway', beyond: 'stop', heightMm: 3000, tag: 'D1' }],
    [5600, 16_000, wall],
    [0, 16_000, wall],
    [0, 13_000, { kind: 'drop' }],
    [0, 10_000, stemWall],
  ];
  place.item('slab:hall', {
    tag: 'S1',
    name: 'Ground slab',
    note: 'Power-floated, no hardener known.',
    thicknessMm: 180,
    builtUp: 'onGround',
    outline: corners.map(([x, y, edge]) => ({ x, y, edge })),
  });
}

function placeWalls(place: Placer): void {
  place.item('wall:stores', {
    tag: 'W1',
    name: 'Hall to stores',
    path: [
      [WALL_X, 0],
      [WALL_X, HALL.depthMm],
    ],
    thicknessMm: WALL_MM,
  });
  place.item('wall:office', {
    tag: 'W2',
    name: 'Stores to office',
    path: [
      [WALL_X + 100, WALL_Y],
      [HALL.widthMm, WALL_Y],
    ],
    thicknessMm: WALL_MM,
  });
  place.item('wall:switchRoom', {
    tag: 'W3',
    name: 'Switch room',
    path: [
      [3100, 0],
      [3100, 2500],
      [0, 2500],
    ],
    thicknessMm: WALL_MM,
  });
  place.put('opening:stores', {
    wall: 'wall:stores',
    tag: 'D2',
    name: 'To the stores',
    atMm: 8100,
    widthMm: 900,
    heightMm: 2100,
  });
  place.put('opening:office', {
    wall: 'wall:office',
    tag: 'D3',
    name: 'To the office',
    atMm: 1000,
    widthMm: 900,
    heightMm: 2100,
  });
  place.put('opening:switchRoom', {
    wall: 'wall:switchRoom',
    tag: 'D4',
    name: 'To the switch room',
    atMm: 3700,
    widthMm: 700,
    heightMm: 2000,
  });
}

function placeObstructions(place: Placer): void {
  for (const [index, at] of COLUMNS.entries()) {
    place.item(`obstruction:column${index + 1}`, {
      tag: `B${index + 1}`,
      kind: 'column',
      shape: { form: 'rectangle', at, widthMm: COLUMN_MM, depthMm: COLUMN_MM, turnDeg: 0 },
      under: 'none',
    });
  }
  place.item('obstruction:plinth', {
    tag: 'B9',
    name: 'Compressor plinth',
    kind: 'equipment',
    shape: { form: 'rectangle', at: [22_850, 2900], widthMm: 1000, depthMm: 1800, turnDeg: 0 },
    under: 'none',
    upstand: { kind: 'platformSide', heightMm: 150, treat: 'prepare' },
  });
  place.item('obstruction:drain', {
    tag: 'B10',
    name: 'Floor drain',
    kind: 'drain',
    shape: { form: 'circle', at: [17_400, 3000], diameterMm: 300 },
    under: 'none',
  });
}
