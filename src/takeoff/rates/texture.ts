import type { Range } from '../line.ts';

/**
 * ICRI 310.2R chips 1 to 10 with how each was made (read second-hand) and an estimate of the mean texture depth.
 * No published table of depths was read: the estimate is from memory, common practice, no source.
 */
export interface TextureRow {
  readonly csp: number;
  readonly chipMadeBy: string;
  /** Mean texture depth, mm: low, likely, high. 1 mm takes 1 L of extra topping a m2. */
  readonly depthMm: readonly [low: number, likely: number, high: number];
  readonly peakValleyMm: readonly [low: number, high: number];
}

export const texture: readonly TextureRow[] = [
  { csp: 1, chipMadeBy: 'acid-etched', depthMm: [0.03, 0.05, 0.08], peakValleyMm: [0.05, 0.2] },
  { csp: 2, chipMadeBy: 'grinding', depthMm: [0.05, 0.1, 0.15], peakValleyMm: [0.1, 0.4] },
  { csp: 3, chipMadeBy: 'light shot blast', depthMm: [0.1, 0.17, 0.25], peakValleyMm: [0.3, 0.8] },
  { csp: 4, chipMadeBy: 'light scarification', depthMm: [0.2, 0.3, 0.4], peakValleyMm: [0.6, 1.2] },
  { csp: 5, chipMadeBy: 'medium shot blast', depthMm: [0.3, 0.45, 0.6], peakValleyMm: [0.9, 1.8] },
  { csp: 6, chipMadeBy: 'medium scarification', depthMm: [0.45, 0.65, 0.9], peakValleyMm: [1.3, 2.5] },
  { csp: 7, chipMadeBy: 'heavy abrasive blast', depthMm: [0.7, 1, 1.3], peakValleyMm: [2, 3.5] },
  { csp: 8, chipMadeBy: 'scabbled', depthMm: [1, 1.4, 1.8], peakValleyMm: [2.8, 4.5] },
  { csp: 9, chipMadeBy: 'heavy scarification or milled', depthMm: [1.4, 1.9, 2.5], peakValleyMm: [3.5, 6] },
  { csp: 10, chipMadeBy: 'handheld breaker then blast', depthMm: [2, 2.8, 4], peakValleyMm: [6, 10] },
];

/** Topping that fills the texture of a profile, L, on top of the film: m2 x mean depth in mm; null for a CSP out of 1 to 10. */
export function textureLitres(areaM2: number, csp: number): Range | null {
  const row = texture.find((each) => each.csp === csp);
  if (!row) return null;
  const [low, likely, high] = row.depthMm;
  return { low: areaM2 * low, likely: areaM2 * likely, high: areaM2 * high };
}
