import type { Family } from './drawn.ts';
import {
  columnsOnOutline,
  columnsOnWalls,
  oddTurned,
  zonesEverywhere,
  findingsOverlap,
  cracksAlongEdges,
  entrancesAnywhere,
  openEdges,
  doorsAtEnds,
  manySlabs,
  hardlyAnything,
  exactNecks,
  outOfScopeAreas,
  brokenRecords,
} from './floorFamilies.ts';
import {
  sharedEdges,
  teeJunctions,
  nearCollinear,
  duplicatePoints,
  duplicateColumns,
  crossingOutlines,
  flatRings,
  slivers,
  nested,
  oneCorner,
  touchingCorners,
  roundThings,
  keyholes,
  extremeSizes,
  crowded,
} from './ringFamilies.ts';

/*
 * Plans that are hard to measure, one family a kind of trouble. A family says what is drawn; plan.ts adds machines and
 * what it leaves out, and may turn the plan, put it far away or shake it by 1e-9 mm.
 */
export const FAMILIES = {
  sharedEdges,
  teeJunctions,
  nearCollinear,
  duplicatePoints,
  duplicateColumns,
  columnsOnOutline,
  columnsOnWalls,
  crossingOutlines,
  flatRings,
  slivers,
  oddTurned,
  nested,
  oneCorner,
  touchingCorners,
  zonesEverywhere,
  findingsOverlap,
  cracksAlongEdges,
  entrancesAnywhere,
  openEdges,
  doorsAtEnds,
  manySlabs,
  hardlyAnything,
  roundThings,
  exactNecks,
  outOfScopeAreas,
  brokenRecords,
  keyholes,
  extremeSizes,
  crowded,
} as const satisfies Record<string, Family>;

export type FamilyName = keyof typeof FAMILIES;

export const FAMILY_NAMES = Object.keys(FAMILIES) as FamilyName[];
