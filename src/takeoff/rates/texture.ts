import type { RateRow } from './rateRow.ts';

/** Code of the mean texture depth at a profile, CSP 1 to 10. */
export function textureCode(csp: number): string {
  return `texture/csp${csp}`;
}

const row = (csp: number, madeBy: string, [low, likely, high]: readonly [number, number, number]): RateRow => ({
  code: textureCode(csp),
  term: `Mean texture depth, CSP ${csp}`,
  unit: 'mm',
  low,
  likely,
  high,
  note: `estimate, no published table was read; chip made by: ${madeBy}`,
  source: 'common practice, no source',
  provenance: 'P',
  fromMemory: true,
});

/**
 * Mean texture depth by ICRI concrete surface profile, mm: 1 mm is 1 L/m2 of topping. The chip is the standard and has
 * no number behind it: these are estimates, to be replaced by a sand patch (ASTM E965).
 */
export const texture: readonly RateRow[] = [
  row(1, 'acid-etched', [0.03, 0.05, 0.08]),
  row(2, 'grinding', [0.05, 0.1, 0.15]),
  row(3, 'light shot blast', [0.1, 0.17, 0.25]),
  row(4, 'light scarification', [0.2, 0.3, 0.4]),
  row(5, 'medium shot blast', [0.3, 0.45, 0.6]),
  row(6, 'medium scarification', [0.45, 0.65, 0.9]),
  row(7, 'heavy abrasive blast', [0.7, 1, 1.3]),
  row(8, 'scabbled', [1, 1.4, 1.8]),
  row(9, 'heavy scarification or milled', [1.4, 1.9, 2.5]),
  row(10, 'handheld breaker then blast', [2, 2.8, 4]),
];
