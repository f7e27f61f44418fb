import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitTrue, trueMatrix, type KnownDimension } from '../../../src/geometry/fitTrue.ts';
import { compose, IDENTITY, invert, mapPoint } from '../../../src/geometry/transform.ts';

const dimension = (
  from: readonly [number, number],
  to: readonly [number, number],
  lengthMm: number,
  by: KnownDimension['by'] = 'mouse',
): KnownDimension => ({ from, to, lengthMm, by });

function fitted(...args: Parameters<typeof fitTrue>) {
  const result = fitTrue(...args);
  if (!result.ok) throw new Error(result.fault);
  return result.fit;
}

describe('truing a page', () => {
  test('one length gives one scale for both directions', () => {
    const fit = fitted([dimension([100, 100], [1100, 100], 10_000)]);
    expect(fit.sx).toBeCloseTo(10, 12);
    expect(fit.sy).toBe(fit.sx);
    expect(fit.oneScale).toBe(true);
    // Both ends good to 1.5 px of 1000, twice in an area.
    expect(fit.areaPlusMinusPct).toBeCloseTo(2 * ((Math.SQRT2 * 1.5) / 1000) * 100, 9);
  });

  test('two lengths in different directions give both scales exactly, whatever the angle between them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 0.98, max: 1.02, noNaN: true }),
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        (sx, ratio, lean) => {
          const sy = sx * ratio;
          const along: readonly [number, number] = [1000, 1000 * lean];
          const across: readonly [number, number] = [900 * lean, 900];
          const fit = fitted([
            dimension([0, 0], along, Math.hypot(sx * along[0], sy * along[1])),
            dimension([0, 0], across, Math.hypot(sx * across[0], sy * across[1])),
          ]);
          expect(fit.sx / sx).toBeCloseTo(1, 10);
          expect(fit.sy / sy).toBeCloseTo(1, 10);
          expect(Math.max(...fit.residualsMm.map(Math.abs))).toBeLessThan(1e-6);
        },
      ),
    );
  });

  test('more lengths than scales are fitted by least squares and leave their residuals', () => {
    const fit = fitted([
      dimension([0, 0], [1000, 0], 10_000),
      dimension([0, 500], [1000, 500], 10_020),
      dimension([0, 0], [0, 800], 8_000),
    ]);
    expect(fit.sx).toBeCloseTo(10.01, 9);
    expect(fit.residualsMm.map((r) => Math.round(r))).toEqual([10, -10, 0]);
    // One spare dimension: scatter is sqrt(200 / 1) mm, less than 1.5 px at each end, so the pick counts.
    expect(fit.lengthPlusMinusPct[0]).toBeCloseTo(((Math.SQRT2 * 1.5) / 1000 / Math.SQRT2) * 100, 3);
  });

  test('a length that does not belong makes the plus/minus as large as its residual says', () => {
    const good = fitted([dimension([0, 0], [1000, 0], 10_000), dimension([0, 9], [1000, 9], 10_000)]);
    const bad = fitted([dimension([0, 0], [1000, 0], 10_000), dimension([0, 9], [1000, 9], 11_000)]);
    expect(bad.areaPlusMinusPct).toBeGreaterThan(10 * good.areaPlusMinusPct);
  });

  test('a finger is half as exact as a mouse', () => {
    const mouse = fitted([dimension([0, 0], [500, 0], 5_000)]);
    const finger = fitted([dimension([0, 0], [500, 0], 5_000, 'finger')]);
    expect(finger.areaPlusMinusPct / mouse.areaPlusMinusPct).toBeCloseTo(2, 12);
  });

  test('two parallel lengths, or two mirrored diagonals, tell no two scales apart', () => {
    expect(fitted([dimension([0, 0], [500, 0], 5_000), dimension([0, 9], [900, 9], 9_000)]).oneScale).toBe(true);
    expect(fitted([dimension([0, 0], [500, 500], 5_000), dimension([0, 500], [500, 0], 5_000)]).oneScale).toBe(true);
  });

  test('the longest length is laid level or plumb; a level line wins over it', () => {
    const plumb = fitted([dimension([0, 0], [10, 1000], 10_000)]);
    expect(mapPoint(trueMatrix(plumb, [0, 0]), [10, 1000])[0]).toBeCloseTo(0, 6);
    const level = fitted([dimension([0, 0], [10, 1000], 10_000)], { from: [0, 0], to: [1000, -7] });
    expect(mapPoint(trueMatrix(level, [0, 0]), [1000, -7])[1]).toBeCloseTo(0, 6);
  });

  test('what cannot be fitted is named, not guessed', () => {
    expect(fitTrue([])).toEqual({ ok: false, fault: 'noDimension' });
    expect(fitTrue([dimension([5, 5], [5, 5], 1000)])).toEqual({ ok: false, fault: 'zeroLength' });
    expect(fitTrue([dimension([0, 0], [100, 0], 0)])).toEqual({ ok: false, fault: 'notALength' });
    expect(fitTrue([dimension([0, 0], [100, 0], Number.NaN)])).toEqual({ ok: false, fault: 'notALength' });
    // The diagonal is shorter than the side it spans: no two positive scales do that.
    expect(fitTrue([dimension([0, 0], [1000, 0], 10_000), dimension([0, 0], [1000, 800], 9_000)])).toEqual({
      ok: false,
      fault: 'impossible',
    });
  });
});

describe('affine maps', () => {
  const number = fc.double({ min: -100, max: 100, noNaN: true });
  const matrix = fc
    .tuple(number, number, number, number, number, number)
    .filter(([a, b, c, d]) => Math.abs(a * d - b * c) > 1);

  test('a map and its way back give the point again', () => {
    fc.assert(
      fc.property(matrix, number, number, (m, x, y) => {
        const back = invert(m);
        if (!back) throw new Error('no way back');
        const [bx, by] = mapPoint(back, mapPoint(m, [x, y]));
        expect(bx).toBeCloseTo(x, 5);
        expect(by).toBeCloseTo(y, 5);
        const still = compose(back, m);
        for (const [i, value] of IDENTITY.entries()) expect(still[i]).toBeCloseTo(value, 5);
      }),
    );
  });

  test('a map that flattens the plane has no way back', () => {
    expect(invert([1, 2, 2, 4, 0, 0])).toBeNull();
  });
});
