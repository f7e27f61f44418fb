import { rectangle, type Placer } from './place.ts';

const SURVEYED = '2026-03-02';
const BY = 'A. Surveyor (invented)';

/** What was found on the floor: cracks of each behaviour, joints of each kind, findings, readings, notes. */
export function placeWorkshopMarks(place: Placer): void {
  placeCracks(place);
  placeJoints(place);
  placeFindings(place);
  placeReadings(place);
  place.item('note:key', {
    tag: 'N1',
    at: [4300, 15_200],
    text: 'The driveway is let from six in the evening: park the truck before.',
  });
  place.item('note:photo', {
    tag: 'N2',
    at: [21_600, 13_600],
    text: 'Paint over black adhesive. No photograph yet: take one when the desks are out.',
  });
}

function placeCracks(place: Placer): void {
  place.item('crack:c1', {
    tag: 'C1',
    path: [
      [1600, 16_000],
      [1900, 13_600],
      [2600, 12_200],
      [3650, 10_950],
    ],
    widthMm: 0.4,
    depthMm: null,
    behaviour: 'static',
  });
  place.item('crack:c2', {
    tag: 'C2',
    path: [
      [13_500, 0],
      [12_800, 2200],
      [12_500, 3600],
      [11_550, 5050],
    ],
    widthMm: 1,
    depthMm: 25,
    behaviour: 'working',
    note: 'Opens in winter, says the caretaker.',
  });
  place.item('crack:c3', {
    tag: 'C3',
    path: [
      [0, 3400],
      [1400, 3800],
      [3650, 5050],
    ],
    widthMm: null,
    depthMm: null,
    behaviour: 'notJudged',
  });
  place.item('crack:c4', {
    tag: 'C4',
    path: [
      [9600, 16_000],
      [9900, 14_700],
      [10_700, 13_700],
    ],
    widthMm: 0.1,
    depthMm: null,
    behaviour: 'static',
  });
  place.item('crack:c5', {
    tag: 'C5',
    path: [
      [19_350, 5050],
      [20_600, 4300],
      [21_500, 3900],
      [22_350, 3700],
    ],
    widthMm: 1.5,
    depthMm: 20,
    behaviour: 'static',
  });
  place.item('crack:c6', {
    tag: 'C6',
    path: [
      [19_350, 10_950],
      [21_200, 11_000],
      [22_600, 11_500],
      [24_000, 11_700],
    ],
    widthMm: 3.5,
    depthMm: 60,
    behaviour: 'structural',
    note: 'One side 2 mm higher: an engineer looks at it first.',
  });
}

function placeJoints(place: Placer): void {
  place.item('joint:j1', {
    tag: 'J1',
    path: [
      [0, 8000],
      [15_000, 8000],
    ],
    kind: 'control',
    treat: 'carried',
    widthMm: 4,
    depthMm: 45,
  });
  place.item('joint:j2', {
    tag: 'J2',
    path: [
      [7600, 0],
      [7600, 16_000],
    ],
    kind: 'construction',
    treat: 'filled',
    widthMm: 6,
    depthMm: 25,
  });
  place.item('joint:j3', {
    tag: 'J3',
    path: [
      [15_200, 6000],
      [24_000, 6000],
    ],
    kind: 'control',
    treat: 'filled',
    widthMm: 4,
    depthMm: 45,
  });
  place.item('joint:j4', {
    tag: 'J4',
    path: [
      [18_800, 4800],
      [19_600, 4800],
      [19_600, 5600],
      [18_800, 5600],
      [18_800, 4800],
    ],
    kind: 'isolation',
    treat: 'carried',
    widthMm: 10,
    depthMm: 25,
  });
}

function placeFindings(place: Placer): void {
  place.item('finding:oil', {
    tag: 'F1',
    kind: 'oil_deep',
    ring: [
      [9700, 6300],
      [10_900, 6100],
      [11_900, 6600],
      [11_700, 7400],
      [10_300, 7600],
      [9600, 7000],
    ],
    depthMm: 6,
    ageYears: 10,
  });
  place.item('finding:tyres', { tag: 'F2', kind: 'rubber', ring: rectangle(5900, 13_800, 9300, 15_800), layers: 1 });
  place.item('finding:adhesive', {
    tag: 'F3',
    kind: 'mastic_black',
    ring: rectangle(15_200, 12_200, 24_000, 16_000),
    thicknessMm: 1.5,
    bond: 'sound',
    ageYears: 60,
    note: 'Under old tiles, most of them gone.',
  });
  place.item('finding:paint', {
    tag: 'F4',
    kind: 'paint',
    ring: rectangle(19_800, 12_600, 23_600, 15_200),
    layers: 2,
    bond: 'fair',
    thicknessMm: 0.3,
  });
}

function placeReadings(place: Placer): void {
  const taken = { takenOn: `${SURVEYED}T09:30:00Z`, takenBy: BY };
  place.item('reading:r1', {
    ...taken,
    tag: 'R1',
    kind: 'rh_in_situ',
    at: [5600, 6800],
    value: 78,
    unit: '%',
    limit: '75 %',
    passes: false,
    instrument: 'Probe in a sleeve',
    serial: 'X-01',
    calibratedOn: '2026-01-12',
  });
  place.item('reading:r2', {
    ...taken,
    tag: 'R2',
    kind: 'pull_off_light',
    at: [13_000, 9600],
    value: 1.9,
    unit: 'MPa',
    limit: '1.5 MPa',
    passes: true,
    instrument: 'Pull-off tester',
    serial: 'X-02',
    calibratedOn: '2026-01-12',
  });
  place.item('reading:r3', {
    ...taken,
    tag: 'R3',
    kind: 'slab_temp',
    at: [17_200, 8600],
    value: 14,
    unit: '°C',
    passes: null,
  });
}
