import { MM_PER_IN } from '../../model/units.ts';
import type { Settings, Units } from '../session.ts';

/** What each tool draws with until somebody says otherwise: usual sizes (common practice, no source). */
const METRIC: Readonly<Record<string, Settings>> = {
  wall: { thicknessMm: 200 },
  opening: { widthMm: 900, heightMm: 2100 },
  obstruction: {
    kind: 'column',
    form: 'rectangle',
    widthMm: 400,
    depthMm: 400,
    diameterMm: 400,
    turnDeg: 0,
    under: 'none',
  },
  edgeKind: { kind: 'doorway', beyond: 'stop' },
  upstand: { kind: 'stemWall', heightMm: 150, treat: 'prepare' },
  crack: { widthMm: null, depthMm: null, behaviour: 'notJudged' },
  joint: { kind: 'control', treat: 'carried' },
  finding: { kind: 'oil_light' },
  entrance: { widthMm: null, heightMm: null },
  reading: { kind: 'rh_in_situ', unit: '%', value: null },
  note: { text: '' },
  steps: { count: 3, riseMm: 170, goingMm: 290 },
  pick: { touchingToo: false },
};

const IMPERIAL: Readonly<Record<string, Settings>> = {
  wall: { thicknessMm: 8 * MM_PER_IN },
  opening: { widthMm: 36 * MM_PER_IN, heightMm: 80 * MM_PER_IN },
  obstruction: {
    ...METRIC['obstruction'],
    widthMm: 16 * MM_PER_IN,
    depthMm: 16 * MM_PER_IN,
    diameterMm: 16 * MM_PER_IN,
  },
  upstand: { ...METRIC['upstand'], heightMm: 6 * MM_PER_IN },
};

export function settingsOf(tool: string, set: Readonly<Record<string, Settings>>, units: Units): Settings {
  return { ...METRIC[tool], ...(units === 'imperial' ? IMPERIAL[tool] : {}), ...set[tool] };
}
