import { describe, expect, it } from 'vitest';
import type { Point, Ring } from '../../../src/geometry/floorShape.ts';
import { areaTrueOffset } from '../../support/oracles/areaTrueOffset.ts';
import { clipperTsSets } from '../../support/oracles/clipperTsSets.ts';
import { clipperWasmSets } from '../../support/oracles/clipperWasmSets.ts';
import { geosSets } from '../../support/oracles/geosSets.ts';
import type { PlaneSets } from '../../support/oracles/planeSets.ts';

/*
 * A cross shrunk by a disc, by the other engines: round its four inner corners, and nothing beside it. Between the strips
 * and sectors that an offset is made of no slit may stay: it would grow to a whole head. The area is in closed form.
 */
const SEGMENTS = 256;
const [ARM_MM, HALF_MM, BY_MM] = [3000, 1000, 300];
const CROSS: Ring = [0, 1, 2, 3].flatMap((quarter) =>
  (
    [
      [ARM_MM, -HALF_MM],
      [ARM_MM, HALF_MM],
      [HALF_MM, HALF_MM],
    ] as const
  ).map((at) => turned(at, (quarter * Math.PI) / 2)),
);

function turned([x, y]: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [x * cos - y * sin, x * sin + y * cos];
}

const [length, half] = [ARM_MM - BY_MM, HALF_MM - BY_MM];
/** Two bars that cross, and what the round of an inner corner leaves of the square beside it, four times. */
const SHRUNK_MM2 = 8 * length * half - 4 * half * half + 4 * (1 - Math.PI / 4) * BY_MM * BY_MM;

/** The cross turned by so many steps, where it is in pieces or has another area. */
function brokenTurns<S>(sets: PlaneSets<S>): string[] {
  const broken: string[] = [];
  for (let step = 0; step < 40; step += 1) {
    const cross = sets.fill(CROSS.map((at) => turned(at, 0.077 * step)));
    const shrunk = areaTrueOffset(sets, cross, -BY_MM, SEGMENTS);
    const pieces = sets.pieces(shrunk).length;
    const share = sets.areaMm2(shrunk) / SHRUNK_MM2;
    if (pieces !== 1 || Math.abs(share - 1) > 1e-7) broken.push(`step ${step}: ${pieces} pieces, ${share} of the area`);
  }
  sets.release();
  return broken;
}

describe('a cross shrunk by a disc is one piece', () => {
  it('in GEOS', async () => {
    expect(brokenTurns(await geosSets(SEGMENTS / 4))).toEqual([]);
  });

  it('in Clipper, WebAssembly', async () => {
    expect(brokenTurns(await clipperWasmSets(SEGMENTS / 4, 5))).toEqual([]);
  });

  it('in Clipper, TypeScript', () => {
    expect(brokenTurns(clipperTsSets(SEGMENTS / 4, 5))).toEqual([]);
  });
});
