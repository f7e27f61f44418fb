import type { RecordId } from '../model/cell.ts';
import { fixed } from './formula.ts';
import type { Line, Term } from './line.ts';
import type { Priced } from './rates/rateBook.ts';

/**
 * Where the range of a line comes from. The low and high of a rate already hold the spread between crews, machines and
 * slabs. Factors (hardness, size of the room, obstructions, a coating) describe the same spread again: they therefore
 * enter with their likely value in all three cases, and one loss is never counted twice.
 */

/** A number off the plan: m2, m, pieces. */
export function measured(name: string, value: number, unit: string, from: string | null = null): Term {
  return plain(name, value, unit, 'the plan', 'measured', from);
}

/** A number somebody set: passes, crew, a percentage. */
export function chosen(name: string, value: number, unit: string, from: string | null = null): Term {
  return plain(name, value, unit, 'set in the job', 'own', from);
}

function plain(
  name: string,
  value: number,
  unit: string,
  source: string,
  provenance: Term['provenance'],
  from: string | null,
): Term {
  return { name, value: fixed(value), unit, source, provenance, fromMemory: false, from };
}

/** A definition or unit: minutes in an hour, litres in a cubic metre. */
export function exact(name: string, value: number, unit: string): Term {
  return plain(name, value, unit, 'arithmetic', 'A', null);
}

/** A rate by which something is divided (m2/h, m/h, life of a tool): its low case is the high rate. */
export function rateTerm(name: string, row: Priced): Term {
  return bookTerm(name, row, { low: row.high, likely: row.likely, high: row.low });
}

/** An allowance that multiplies (minutes each, % of waste): low is low. */
export function allowanceTerm(name: string, row: Priced): Term {
  return bookTerm(name, row, { low: row.low, likely: row.likely, high: row.high });
}

/** A factor: its likely value in all cases, see above. */
export function factorTerm(name: string, row: Priced, likely: number = row.likely): Term {
  return bookTerm(name, row, fixed(likely));
}

function bookTerm(name: string, row: Priced, value: Term['value']): Term {
  return {
    name,
    value,
    unit: row.unit.startsWith('x ') ? 'factor' : row.unit,
    source: row.source,
    provenance: row.provenance,
    fromMemory: row.fromMemory,
    from: row.record,
  };
}

/** A term that is the result of another line. */
export function lineTerm(name: string, line: Line): Term {
  return {
    name,
    value: line.quantity,
    unit: line.unit,
    source: 'line',
    provenance: 'A',
    fromMemory: false,
    from: line.key,
  };
}

/** Records named once each, in order. */
export function distinct(records: readonly RecordId[]): RecordId[] {
  return [...new Set(records)];
}
