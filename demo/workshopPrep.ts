import { defaultMachine } from '../src/takeoff/fleet.ts';
import { rectangle, type Placer } from './place.ts';
import { HALL, WALL_X, WALL_Y } from './workshopFloor.ts';

/** What each part gets: fleet, recipes with their passes, zones, the order of work. */
export function placeWorkshopPrep(place: Placer): void {
  placeFleet(place);
  place.put('phase:weekend1', { name: 'First weekend', floor: 'floor:ground' });
  place.put('phase:weekend2', { name: 'Second weekend', floor: 'floor:ground' });
  placeRecipes(place);
  placeZones(place);
  place.put('person:foreman', { name: 'B. Foreman (invented)', role: 'foreman' });
  place.put('tick:cleared', {
    of: 'zone:hall',
    what: 'cleared',
    done: true,
    on: '2026-03-06',
    by: 'B. Foreman (invented)',
  });
}

function placeFleet(place: Placer): void {
  for (const method of ['grinder_large', 'grinder_small', 'shot_small', 'hand_grinder']) {
    const machine = defaultMachine(method);
    if (machine) place.put(`machine:${method}`, machine);
  }
}

function placeRecipes(place: Placer): void {
  const edge = { edgeMethod: 'hand_grinder', edgeAbrasive: 'cup_double' } as const;
  place.put('recipe:hall', { name: 'Grind 16, then 30' });
  place.put('pass:hall1', {
    recipe: 'recipe:hall',
    method: 'grinder_large',
    machine: 'machine:grinder_large',
    abrasive: 'd16',
    times: 1,
    ...edge,
    edgeTimes: 1,
  });
  place.put('pass:hall2', {
    recipe: 'recipe:hall',
    method: 'grinder_large',
    machine: 'machine:grinder_large',
    abrasive: 'd30',
    times: 1,
    ...edge,
    edgeTimes: 1,
  });
  place.put('recipe:stores', { name: 'Grind 16, then 40' });
  place.put('pass:stores1', {
    recipe: 'recipe:stores',
    method: 'grinder_small',
    machine: 'machine:grinder_small',
    abrasive: 'd16',
    times: 1,
    ...edge,
    edgeTimes: 1,
  });
  place.put('pass:stores2', {
    recipe: 'recipe:stores',
    method: 'grinder_small',
    machine: 'machine:grinder_small',
    abrasive: 'd40',
    times: 1,
    edgeMethod: null,
    edgeTimes: 0,
  });
  place.put('recipe:blast', { name: 'Shot blast' });
  place.put('pass:blast1', {
    recipe: 'recipe:blast',
    method: 'shot_small',
    machine: 'machine:shot_small',
    abrasive: 'shot_s230',
    times: 1,
    ...edge,
    edgeTimes: 1,
  });
  place.put('recipe:office', { name: 'After the laboratory: grind 30' });
  place.put('pass:office1', {
    recipe: 'recipe:office',
    method: 'grinder_small',
    machine: 'machine:grinder_small',
    abrasive: 'd30',
    times: 2,
    ...edge,
    edgeTimes: 1,
  });
}

function placeZones(place: Placer): void {
  place.item('zone:hall', {
    tag: 'Z1',
    name: 'Assembly hall',
    covers: 'ring',
    ring: rectangle(0, 0, WALL_X, HALL.depthMm),
    system: { kind: 'self_leveling_resin', thicknessMm: 2 },
    place: 'indoor',
    wetAllowed: false,
    hardness: 'hard',
    traffic: 'forklift',
    noiseHours: '7 to 20',
    time: 'normal',
    phase: 'phase:weekend1',
    recipe: 'recipe:hall',
  });
  place.item('zone:stores', {
    tag: 'Z2',
    name: 'Stores',
    covers: 'ring',
    ring: rectangle(WALL_X, 0, HALL.widthMm, WALL_Y),
    system: { kind: 'high_build', thicknessMm: 0.4 },
    place: 'indoor',
    wetAllowed: false,
    hardness: 'medium',
    traffic: 'light',
    time: 'normal',
    phase: 'phase:weekend2',
    recipe: 'recipe:stores',
  });
  place.put('alternate:storesBlast', {
    zone: 'zone:stores',
    recipe: 'recipe:blast',
    name: 'Shot blast the stores',
    chosen: false,
  });
  place.item('zone:office', {
    tag: 'Z3',
    name: 'Old office',
    note: 'Held until the adhesive and the paint have been tested.',
    covers: 'rest',
    system: { kind: 'thin_film', thicknessMm: 0.2 },
    place: 'indoor',
    wetAllowed: true,
    hardness: 'medium',
    traffic: 'foot',
    time: 'occupied',
    phase: 'phase:weekend2',
    recipe: 'recipe:office',
  });
}
