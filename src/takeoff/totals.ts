import type { FaceMetres, MachineField } from '../geometry/floorShape.ts';
import type { FloorTotals, HiddenFaces, ZoneTotals } from '../geometry/floorTotals.ts';
import { keptOf } from './keptShapes.ts';

/** Areas and lengths of one zone, or of the rest of the slab, small enough to be sent sixty times a second. m2 and m. */
export interface ZoneFigures {
  readonly zone: string;
  readonly machine: string | null;
  readonly netM2: number;
  readonly fieldM2: number;
  readonly stripM2: number;
  readonly tightM2: number;
  /** What each machine of a cascade works of the field. */
  readonly fields: readonly Omit<MachineField, 'region'>[];
  readonly facesM: FaceMetres;
  readonly hiddenFacesM: HiddenFaces;
  readonly crackM: number;
  readonly jointM: number;
  /** Findings that lie over each other count each by itself. */
  readonly findingM2: number;
}

/** The areas and lengths of a floor: what follows the hand, before hours, money and outlines do. */
export interface Totals {
  readonly floor: string;
  readonly netM2: number;
  readonly zones: readonly ZoneFigures[];
}

/** A zone smaller than this, m2, is not there: the rest of a slab that is covered whole. */
export const NOTHING_M2 = 1e-6;

/** What the screen shows at once, from what the engine has measured. */
export function totalsOf(floor: string, measure: FloorTotals): Totals {
  return {
    floor,
    netM2: measure.netM2,
    zones: measure.zones.filter((zone) => zone.netM2 > NOTHING_M2).map(zoneFigures),
  };
}

function zoneFigures(zone: ZoneTotals): ZoneFigures {
  const { machine, netM2, fieldM2, stripM2, tightM2 } = zone;
  return {
    zone: zone.id,
    machine,
    netM2,
    fieldM2,
    stripM2,
    tightM2,
    fields: zone.fields ?? (machine === null ? [] : [{ machine, areaM2: fieldM2 }]),
    facesM: zone.faces,
    hiddenFacesM: zone.hiddenFaces,
    ...runsOf(zone.lengthM),
    findingM2: sumOf(zone.findingM2),
  };
}

/** The engine gives a zone of which nothing has changed the same amounts again, and a floor has thousands of them. */
const runsOf = keptOf((lengthM: ZoneTotals['lengthM']): Pick<ZoneFigures, 'crackM' | 'jointM'> => {
  let [crackM, jointM] = [0, 0];
  for (const [id, metres] of Object.entries(lengthM)) {
    if (id.startsWith('crack:')) crackM += metres;
    else if (id.startsWith('joint:')) jointM += metres;
  }
  return { crackM, jointM };
});

const sumOf = keptOf((amounts: ZoneTotals['findingM2']): number =>
  Object.values(amounts).reduce((sum, amount) => sum + amount, 0),
);

/** One figure of all zones together. */
export function sumOfZones(totals: Totals, figure: (zone: ZoneFigures) => number): number {
  return totals.zones.reduce((sum, zone) => sum + figure(zone), 0);
}
