import { clipperTsSets } from '../../tests/support/oracles/clipperTsSets.ts';
import { clipperWasmSets } from '../../tests/support/oracles/clipperWasmSets.ts';
import { geosSets } from '../../tests/support/oracles/geosSets.ts';
import type { Library } from '../../tests/support/oracles/floorModel.ts';
import type { PlaneSets } from '../../tests/support/oracles/planeSets.ts';
import type { FloorShape } from '../../src/geometry/floorShape.ts';
import type { Answers } from '../engineAnswers.ts';
import { tiledAnswers, wholeAnswers } from './libraryAnswers.ts';

/** A library doing our work, by its own offsets with 64 segments a circle. */
export interface Baseline {
  readonly name: string;
  /** False: what cannot be got to is not told from the rest. */
  readonly looksForWaysIn: boolean;
  /** Takes minutes on the largest floor. */
  readonly isSlow: boolean;
  full(shape: FloorShape): Answers;
}

const QUADRANT_SEGMENTS = 16;
/** Digits of a mm that integer libraries keep: 372 m are 3.7e9 steps. */
const DIGITS = 4;
/** Smaller and larger tiles took longer. */
const TILE_MM = 13_000;

export async function baselines(): Promise<readonly Baseline[]> {
  const wasm = plain(await clipperWasmSets(QUADRANT_SEGMENTS, DIGITS));
  const geos = plain(await geosSets(QUADRANT_SEGMENTS));
  const script = plain(clipperTsSets(QUADRANT_SEGMENTS, DIGITS));
  return [
    whole('clipper2-wasm', wasm),
    {
      name: 'clipper2-wasm tiled',
      looksForWaysIn: false,
      isSlow: false,
      full: (shape) => tiledAnswers(shape, wasm, TILE_MM),
    },
    whole('geos-wasm', geos),
    { ...whole('clipper2-ts', script), isSlow: true },
  ];
}

function plain<S>(sets: PlaneSets<S>): Library<S> {
  return { sets, biasMm: 0, grow: (set, byMm) => sets.grow(set, byMm) };
}

function whole<S>(name: string, library: Library<S>): Baseline {
  return { name, looksForWaysIn: true, isSlow: false, full: (shape) => wholeAnswers(shape, library) };
}
