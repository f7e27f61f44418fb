import { zoneRecipe, type ZoneRecipe } from './zoneRecipe.ts';
import { useDoc } from '../plan.ts';
import type { Held } from '../../model/doc.ts';

const NOTHING: ZoneRecipe = {
  prep: { zone: 'rest', record: null, passes: [], machine: null, followers: [], planned: false },
  machine: null,
  edgeTool: null,
  passageMm: null,
};

export function useZoneRecipe(zone: Held<'zone'>): ZoneRecipe {
  return useDoc((doc) => zoneRecipe(doc, zone) ?? NOTHING);
}
