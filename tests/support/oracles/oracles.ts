import { clipperTsSets } from './clipperTsSets.ts';
import { clipperWasmSets } from './clipperWasmSets.ts';
import { areaTrueLibrary, modelAnswers } from './floorModel.ts';
import { geosSets } from './geosSets.ts';
import type { Oracle } from './oracle.ts';
import type { PlaneSets } from './planeSets.ts';

/** Digits of a mm that the integer libraries keep: with these, floors up to a kilometre. */
const DIGITS = 5;

export async function geosOracle(segments = 256): Promise<Oracle> {
  return oracleBy(await geosSets(segments / 4), segments);
}

export async function clipperWasmOracle(segments = 256): Promise<Oracle> {
  return oracleBy(await clipperWasmSets(segments / 4, DIGITS), segments);
}

export function clipperTsOracle(segments = 256): Oracle {
  return oracleBy(clipperTsSets(segments / 4, DIGITS), segments);
}

function oracleBy<S>(sets: PlaneSets<S>, segments: number): Oracle {
  const library = areaTrueLibrary(sets, segments);
  return { name: sets.name, answer: (shape) => modelAnswers(shape, library) };
}
