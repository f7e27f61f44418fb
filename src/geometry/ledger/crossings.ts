import { type Arc, type Edge, type EdgePart, xAt } from './edge.ts';

/*
 * Heights at which two edges change places.
 *
 *      \  /        Only heights well inside both edges are told: at their ends the sweep stops anyway. A crossing that
 *       \/         rounding hides or moves costs no more than the area between two edges that are that close.
 *       /\
 */

/** Crossings nearer than this to the end of an edge, in mm, are its end. */
const NEAR_END_MM = 1e-9;

/** Adds to `out` the heights strictly inside both parts where they cross. */
export function addCrossings(a: EdgePart, b: EdgePart, out: number[]): void {
  const lo = Math.max(a.lo, b.lo) + NEAR_END_MM;
  const hi = Math.min(a.hi, b.hi) - NEAR_END_MM;
  if (lo >= hi) return;
  const [first, second] = [a.edge, b.edge];
  if (first.arc && second.arc) twoArcs(first.arc, second.arc, lo, hi, out);
  else if (first.arc) lineAndArc(second, first.arc, lo, hi, out);
  else if (second.arc) lineAndArc(first, second.arc, lo, hi, out);
  else straightCrossing(first, second, lo, hi, out);
}

function straightCrossing(a: Edge, b: Edge, lo: number, hi: number, out: number[]): void {
  const below = xAt(a, lo) - xAt(b, lo);
  const above = xAt(a, hi) - xAt(b, hi);
  if ((below < 0 && above > 0) || (below > 0 && above < 0)) out.push(lo + (hi - lo) * (below / (below - above)));
}

function lineAndArc(line: Edge, arc: Arc, lo: number, hi: number, out: number[]): void {
  const dx = line.x1 - line.x0;
  const dy = line.y1 - line.y0;
  const fx = line.x0 - arc.cx;
  const fy = line.y0 - arc.cy;
  const a = dx * dx + dy * dy;
  const b = fx * dx + fy * dy;
  const root = b * b - a * (fx * fx + fy * fy - arc.radius * arc.radius);
  if (root <= 0) return;
  const reach = Math.sqrt(root);
  const first = (-b - reach) / a;
  const second = (-b + reach) / a;
  const low = line.y0 + first * dy;
  const high = line.y0 + second * dy;
  if (low > lo && low < hi && (fx + first * dx) * arc.half >= 0) out.push(low);
  if (high > lo && high < hi && (fx + second * dx) * arc.half >= 0) out.push(high);
}

function twoArcs(a: Arc, b: Arc, lo: number, hi: number, out: number[]): void {
  const dx = b.cx - a.cx;
  const dy = b.cy - a.cy;
  const square = dx * dx + dy * dy;
  if (square === 0) return;
  const along = (square + a.radius * a.radius - b.radius * b.radius) / (2 * square);
  const root = (a.radius * a.radius) / square - along * along;
  if (root <= 0) return;
  const aside = Math.sqrt(root);
  for (let side = -aside; ; side = aside) {
    const x = a.cx + along * dx - side * dy;
    const y = a.cy + along * dy + side * dx;
    if (y > lo && y < hi && (x - a.cx) * a.half >= 0 && (x - b.cx) * b.half >= 0) out.push(y);
    if (side > 0) return;
  }
}
