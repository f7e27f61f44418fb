import type { Line, Range } from '../../src/takeoff/line.ts';
import type { Takeoff } from '../../src/takeoff/port.ts';

/**
 * The sum of a code over the zones, or what the whole floor says of it. A code that ends in a dot stands for all that
 * begin with it (`crack.`). Zero when no line has it.
 */
export function totalOf(takeoff: Takeoff, code: string): Range {
  const is = (line: Line): boolean => (code.endsWith('.') ? line.code.startsWith(code) : line.code === code);
  const lines = takeoff.lines.filter(is);
  const whole = lines.filter((line) => line.zone === null);
  const sum = { low: 0, likely: 0, high: 0 };
  for (const { quantity } of whole.length > 0 ? whole : lines) {
    sum.low += quantity.low;
    sum.likely += quantity.likely;
    sum.high += quantity.high;
  }
  return sum;
}
