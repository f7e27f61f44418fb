import type { RecordId } from '../model/cell.ts';
import { evaluate, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { keptOf } from './keptShapes.ts';
import type { Formula, HoldKind, Line, Term, Trade } from './line.ts';
import type { ZoneId } from './prep.ts';
import { distinct, measured } from './terms.ts';

export interface LineParts {
  readonly code: string;
  readonly trade: Trade;
  readonly unit: string;
  readonly zone: ZoneId | null;
  readonly records: readonly RecordId[];
  readonly formula: Formula;
  readonly terms: readonly Term[];
  readonly held?: HoldKind | null;
  readonly phase?: RecordId | null;
  /** Tells lines of one code and zone apart: a record, a pass, a number. */
  readonly of?: string;
}

/** A line whose quantity is what its own formula gives. */
export function makeLine(parts: LineParts): Line {
  const { code, zone, of, formula, terms } = parts;
  return {
    key: [code, zone ?? 'floor', ...(of === undefined ? [] : [of])].join('|'),
    code,
    trade: parts.trade,
    quantity: evaluate(formula, terms),
    unit: parts.unit,
    zone,
    phase: parts.phase ?? null,
    alternate: null,
    records: parts.records.length < 2 ? parts.records : distinctOf(parts.records),
    working: { formula, terms },
    held: parts.held ?? null,
  };
}

/** Kept: the lines of one zone name the same list of records again and again. */
const distinctOf = keptOf(distinct);

/** A line that is one measured or counted number and nothing more. */
export function plainLine(parts: Omit<LineParts, 'formula' | 'terms'> & { readonly term: Term }): Line {
  return makeLine({ ...parts, formula: term(parts.term.name), terms: [parts.term] });
}

/** A line that adds up numbers of the plan. */
export function sumLine(
  parts: Omit<LineParts, 'formula' | 'terms'>,
  items: readonly { readonly name: string; readonly value: number; readonly from: string | null }[],
): Line {
  const names = uniqueNames(items.map((item) => item.name));
  const terms = items.map((item, i) => measured(names[i] ?? item.name, item.value, parts.unit, item.from));
  return makeLine({ ...parts, formula: sumOf(names), terms });
}
