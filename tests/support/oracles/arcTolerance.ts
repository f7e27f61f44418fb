/** How far a chord of an inscribed circle may lie inside it, in mm, so that a quarter has so many. */
export function arcToleranceMm(radiusMm: number, quadrantSegments: number): number {
  return Math.abs(radiusMm) * (1 - Math.cos(Math.PI / (4 * quadrantSegments)));
}
