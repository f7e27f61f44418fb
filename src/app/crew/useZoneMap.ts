import { useMemo } from 'react';
import { zoneMapPages, zoneMapScale } from '../../exchange/zoneMap.ts';
import type { Sheet } from '../../exchange/paper.ts';
import type { ZoneMapPage } from '../../exchange/zoneMapInput.ts';
import { useDoc, useFloor, useTakeoff, useUnits } from '../plan.ts';

/** Pages of the zone map, drawn again when the plan or its numbers change; a sentence when the scale is not as asked. */
export function useZoneMap(
  sheet: Sheet,
  scale: number | null,
): { readonly pages: readonly ZoneMapPage[]; readonly fault: string | null } {
  const doc = useDoc((now) => now);
  const floor = useFloor();
  const units = useUnits();
  const { takeoff } = useTakeoff();
  return useMemo(() => {
    if (!floor || !takeoff) return { pages: [], fault: null };
    const input = { doc, floor: floor.id, takeoff, units, sheet, scale };
    return { pages: zoneMapPages(input), fault: zoneMapScale(input).sentence };
  }, [doc, floor, units, takeoff, sheet, scale]);
}
