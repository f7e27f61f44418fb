import { ALL_EDGE, allEdgeLine } from './allEdgeLine.ts';
import { costKindOf } from '../../takeoff/costKinds.ts';
import { sumOf } from '../../takeoff/formula.ts';
import type { Line } from '../../takeoff/line.ts';
import { makeLine } from '../../takeoff/makeLine.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { lineTerm } from '../../takeoff/terms.ts';

const PLUS = ' + ';

/** The key under which a figure that adds up several lines asks why; that of the line itself when it is one. */
export function whyKey(lines: readonly Line[]): string | null {
  return lines.length === 0 ? null : lines.map((line) => line.key).join(PLUS);
}

/** The line that a key speaks of; for a figure that adds lines up, their sum as a line of its own. */
export function whyLine(takeoff: Takeoff, key: string): Line | null {
  if (key === ALL_EDGE) return allEdgeLine(takeoff);
  const lines = key.split(PLUS).flatMap((part) => takeoff.lines.find((line) => line.key === part) ?? []);
  const [first] = lines;
  if (!first || lines.length === 1) return first ?? null;
  const terms = lines.map((line) => lineTerm(line.key, line));
  const oneZone = lines.every((line) => line.zone === first.zone);
  const sum = makeLine({
    code: codeOf(lines),
    trade: first.trade,
    unit: first.unit,
    zone: oneZone ? first.zone : null,
    records: lines.flatMap((line) => line.records),
    formula: sumOf(terms.map(({ name }) => name)),
    terms,
    held: lines.every((line) => line.held !== null) ? first.held : null,
  });
  return { ...sum, key };
}

/** One code, or what several have in common: `crack.static.wide` and `crack.working.wide` are `crack`; of money the kind of cost. */
function codeOf(lines: readonly Line[]): string {
  const codes = [...new Set(lines.map(({ code }) => code))];
  const costs = new Set(codes.map(costKindOf));
  if (codes.length > 1 && costs.size === 1 && lines.every(({ trade }) => trade === 'money'))
    return `cost.${[...costs].join('')}`;
  const groups = new Set(codes.map((code) => code.split('.')[0] ?? code));
  if (codes.length > 1 && groups.size === 1) return [...groups].join('');
  return codes.join(PLUS);
}

/** Lines that this figure goes into: those that took it, or one of the lines it adds up, as a term. */
export function feedsOf(key: string, lines: readonly Line[]): readonly Line[] {
  const own = new Set(key.split(PLUS));
  return lines.filter(
    (other) => !own.has(other.key) && other.working.terms.some((term) => term.from !== null && own.has(term.from)),
  );
}
