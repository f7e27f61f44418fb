import type { Doc } from '../src/model/doc.ts';
import type { Edge } from '../src/model/records/slab.ts';
import { defaultMachine, FIRST_FLEET } from '../src/takeoff/fleet.ts';
import { defaultMoneyCells, defaultRateCells } from '../src/takeoff/rates/defaults.ts';
import { FLOOR, placer, rectangle, type Placer } from './place.ts';

/*
 * An invented garage for two cars, 6.70 x 6.50 m, sketched from tape measurements: no page.
 *
 *      +----------+--+
 *      |          |##| platform of the water heater, 0.90 x 0.80
 *      |             |
 *      |             | side door, 0.90
 *      |             |
 *      +--========---+ garage door, 4.88
 */
const BY = { by: 'A. Surveyor (invented)', on: '2026-03-09' } as const;

export function garageDoc(): Doc {
  const place = placer();
  place.put('job:demo-garage', {
    name: 'Garage for two cars',
    number: 'Example 2',
    place: 'An invented house',
    customer: 'An invented customer',
    units: 'metric',
    currency: 'USD',
    startedAs: 'garage',
    startedOn: '2026-03-09',
    invented: true,
    builtBefore1981: { answer: 'no', ...BY },
    coatingOrTile: { answer: 'no', ...BY },
    inSlab: { answer: 'no', ...BY },
    gasAppliance: { answer: 'yes', ...BY },
  });
  place.put(FLOOR, { name: 'Garage', level: 0, doorTags: 2 });
  placeSlab(place);
  placeMarks(place);
  placePrep(place);
  place.cells([...defaultRateCells(), ...defaultMoneyCells()]);
  return place.doc();
}

function placeSlab(place: Placer): void {
  const wall: Edge = { kind: 'wall' };
  const stem: Edge = { kind: 'wall', upstand: { kind: 'stemWall', heightMm: 150, treat: 'prepare' } };
  const corners: readonly (readonly [x: number, y: number, edge: Edge])[] = [
    [0, 0, stem],
    [5800, 0, wall],
    [6700, 0, wall],
    [6700, 800, stem],
    [6700, 4200, { kind: 'doorway', beyond: 'stop', heightMm: 2050, tag: 'D2' }],
    [6700, 5100, stem],
    [6700, 6500, stem],
    [5790, 6500, { kind: 'doorway', beyond: 'stop', heightMm: 2150, tag: 'D1' }],
    [910, 6500, stem],
    [0, 6500, stem],
  ];
  const outline = corners.map(([x, y, edge]) => ({ x, y, edge }));
  place.item('slab:garage', { tag: 'S1', thicknessMm: 100, builtUp: 'onGround', outline });
  place.item('obstruction:platform', {
    tag: 'B1',
    name: 'Water heater platform',
    kind: 'platform',
    shape: { form: 'rectangle', at: [6250, 400], widthMm: 900, depthMm: 800, turnDeg: 0 },
    under: 'none',
    upstand: { kind: 'platformSide', heightMm: 450, treat: 'prepare' },
  });
  place.item('entrance:door', {
    tag: 'M1',
    name: 'Garage door',
    at: [3350, 6500],
    widthMm: 4880,
    heightMm: 2150,
    stairs: 0,
  });
}

function placeMarks(place: Placer): void {
  place.item('joint:j1', {
    tag: 'J1',
    path: [
      [0, 3250],
      [6700, 3250],
    ],
    kind: 'control',
    treat: 'filled',
    widthMm: 4,
    depthMm: 25,
  });
  place.item('joint:j2', {
    tag: 'J2',
    path: [
      [3350, 0],
      [3350, 6500],
    ],
    kind: 'control',
    treat: 'filled',
    widthMm: 4,
    depthMm: 25,
  });
  place.item('crack:c1', {
    tag: 'C1',
    path: [
      [3350, 3250],
      [4200, 2500],
      [4900, 1400],
      [5800, 800],
    ],
    widthMm: 0.8,
    depthMm: null,
    behaviour: 'static',
  });
  place.item('crack:c2', {
    tag: 'C2',
    path: [
      [0, 1900],
      [1300, 2400],
      [2100, 1700],
      [3350, 1600],
    ],
    widthMm: 0.2,
    depthMm: null,
    behaviour: 'notJudged',
  });
  place.item('crack:c3', {
    tag: 'C3',
    path: [
      [910, 6500],
      [1500, 5300],
      [1400, 4300],
      [2200, 3250],
    ],
    widthMm: 1.6,
    depthMm: 15,
    behaviour: 'static',
  });
  place.item('finding:tyres1', { tag: 'F1', kind: 'rubber', ring: rectangle(1200, 1600, 1800, 5700) });
  place.item('finding:tyres2', { tag: 'F2', kind: 'rubber', ring: rectangle(2500, 1600, 3100, 5700) });
  place.item('finding:oil', {
    tag: 'F3',
    kind: 'oil_light',
    ring: [
      [4700, 3600],
      [5200, 3550],
      [5350, 4000],
      [5000, 4350],
      [4600, 4100],
    ],
  });
  place.item('note:n1', {
    tag: 'N1',
    at: [5900, 1100],
    text: 'Gas water heater on the platform: off, and cold, before anybody sands or uses solvent near it.',
  });
}

function placePrep(place: Placer): void {
  for (const method of FIRST_FLEET) {
    const machine = defaultMachine(method);
    if (machine) place.put(`machine:${method}`, machine);
  }
  place.put('recipe:flake', { name: 'Grind 30, twice' });
  place.put('pass:flake1', {
    recipe: 'recipe:flake',
    method: 'grinder_small',
    machine: 'machine:grinder_small',
    abrasive: 'd30',
    times: 2,
    edgeMethod: 'hand_grinder',
    edgeAbrasive: 'cup_double',
    edgeTimes: 1,
  });
  place.item('zone:floor', {
    tag: 'Z1',
    name: 'Garage floor',
    covers: 'ring',
    ring: rectangle(0, 0, 6700, 6500),
    system: { kind: 'flake_broadcast', thicknessMm: 0.9 },
    place: 'indoor',
    wetAllowed: false,
    hardness: 'medium',
    traffic: 'light',
    time: 'normal',
    recipe: 'recipe:flake',
  });
}
