import { useEffect, useMemo } from 'react';
import { tightPlate } from './tightReason.ts';
import { usePickedZone } from './usePickedZone.ts';
import { zoneRecipe } from './zoneRecipe.ts';
import { tightAt } from '../../canvas/tightAt.ts';
import { narrowLineOf, type AskedSpot } from '../../canvas/paint/narrowPlace.ts';
import type { PlanView } from '../../canvas/paint/view.ts';
import { useDoc, useUnits } from '../plan.ts';
import { askSpot, pick, session, useSession } from '../session.ts';
import { listenToTaps } from '../survey/hand.ts';

/** While the hand moves something, a piece that was asked about may move so far, mm, and is still meant. */
const STILL_MEANT_MM = 300;

/** In Prep a tap on floor that no machine works asks why. */
export function useSpotTaps(plan: PlanView): void {
  const stage = useSession((now) => now.stage);
  useEffect(() => {
    if (stage !== 'prep') return;
    return listenToTaps((at, reachMm) => {
      const { picked } = session();
      if (picked.some((id) => !id.startsWith('zone:'))) return;
      for (const { zone, measure } of plan.zones) {
        const piece = measure ? tightAt(measure, at, reachMm) : null;
        if (!piece) continue;
        if (!picked.includes(zone.id)) pick([zone.id]);
        askSpot(piece.at);
        return;
      }
      askSpot(null);
    });
  }, [stage, plan]);
}

/** The place that is asked about, ready to be painted: live, while the plan under it changes. */
export function useAskedSpot(plan: PlanView): AskedSpot | null {
  const spot = useSession((now) => (now.stage === 'prep' ? now.spot : null));
  const zone = usePickedZone();
  const doc = useDoc((now) => now);
  const units = useUnits();
  return useMemo(() => {
    const measure = plan.zones.find((each) => each.zone.id === zone?.id)?.measure;
    const piece = spot && measure ? tightAt(measure, spot, STILL_MEANT_MM) : null;
    const recipe = zone ? zoneRecipe(doc, zone) : null;
    if (!piece || !recipe) return null;
    const says = tightPlate(piece, { units, doc, prep: recipe.prep, passageMm: recipe.passageMm });
    return { at: piece.at, line: narrowLineOf(plan, piece), says };
  }, [plan, spot, zone, doc, units]);
}
