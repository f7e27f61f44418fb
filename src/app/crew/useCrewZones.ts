import { NOTHING_M2 } from '../../exchange/zoneCards.ts';
import { zoneSteps, type ZoneStep } from '../../exchange/zoneSteps.ts';
import type { ZoneMeasure } from '../../geometry/floorShape.ts';
import type { RecordId } from '../../model/cell.ts';
import type { Held } from '../../model/doc.ts';
import type { HoldKind } from '../../takeoff/line.ts';
import { prepOfFloor, type ZonePrep } from '../../takeoff/prep.ts';
import { cspText, zoneName, zoneNumber } from '../prep/zoneNames.ts';
import { requiredCsp } from '../../takeoff/profile.ts';
import { useDoc, useFloor, useTakeoff } from '../plan.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** One zone as the crew meets it: no hours, no money. */
export interface CrewZone {
  /** The zone's record, or the floor for the rest of the slab that no zone covers. */
  readonly id: RecordId;
  readonly key: RecordId | 'rest';
  readonly number: string;
  readonly name: string;
  readonly csp: string | null;
  readonly measure: ZoneMeasure;
  readonly prep: ZonePrep;
  readonly steps: readonly ZoneStep[];
  /** Holds that stand on it: nothing is done here. */
  readonly stops: readonly Exclude<HoldKind, 'inSlab'>[];
  /** What lies in the slab is not located: nothing here is chased, sawn or drilled. */
  readonly noCutting: boolean;
}

export function useCrewZones(): readonly CrewZone[] {
  const floor = useFloor();
  const { takeoff } = useTakeoff();
  return useDoc((doc) => {
    if (!floor || !takeoff || takeoff.floor !== floor.id) return [];
    return prepOfFloor(doc, floor.id)
      .flatMap((prep): CrewZone[] => {
        const measure = takeoff.measure.zones.find((zone) => zone.id === prep.zone);
        if (!measure || measure.netM2 < NOTHING_M2) return [];
        const zone = prep.record;
        const steps = zoneSteps({ doc, floor: floor.id, takeoff, prep, measure });
        const kinds = takeoff.holds.filter((hold) => hold.zone === prep.zone).map(({ kind }) => kind);
        const stops = [...new Set(kinds)].filter((kind) => kind !== 'inSlab');
        const noCutting = takeoff.holds.some(
          ({ kind, records }) => kind === 'inSlab' && records.some((id) => (measure.lengthM[id] ?? 0) > 0),
        );
        return [{ id: zone?.id ?? floor.id, key: prep.zone, ...titled(zone), measure, prep, steps, stops, noCutting }];
      })
      .toSorted((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true }));
  });
}

function titled(zone: Held<'zone'> | null): Pick<CrewZone, 'number' | 'name' | 'csp'> {
  if (!zone) return { number: '–', name: takeoffText.rest, csp: null };
  return { number: zoneNumber(zone), name: zoneName(zone), csp: cspText(requiredCsp(zone)) };
}
