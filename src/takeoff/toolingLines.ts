import { divide, multiply, term } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Use } from './orderLines.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, factorTerm, rateTerm } from './terms.ts';
import { toolAreas, type ToolArea } from './toolAreas.ts';
import { wearOf, type Wear } from './toolWear.ts';

/**
 * Wear of the tools of a zone, by area and life, by hours and life, or by what is lost on each square metre: what the
 * job uses up, not what must be carried. Lives and losses: table consumables, common practice, no source.
 */
export function zoneTooling(site: Site, zone: ZoneWork): Use[] {
  const hardness = zone.prep.record?.hardness ?? 'medium';
  return toolAreas(site, zone).flatMap((area): Use[] => {
    const wear = wearOf(area, hardness);
    if (!wear) return [];
    const line = wearLine(site, zone, area, wear, hardness);
    return line.quantity.high > 0 ? [{ line, kind: wear.kind, machine: area.machine }] : [];
  });
}

function wearLine(site: Site, { prep }: ZoneWork, tool: ToolArea, wear: Wear, hardness: string): Line {
  const { formula, terms } = wearBy(site, tool, wear, hardness);
  return makeLine({
    code: wear.code,
    unit: wear.unit,
    trade: 'material',
    zone: prep.zone,
    of: tool.of,
    records: tool.records,
    formula,
    terms: [...tool.terms, ...terms],
  });
}

interface Working {
  readonly formula: Formula;
  readonly terms: readonly Term[];
}

function wearBy({ book }: Site, { row, area }: ToolArea, wear: Wear, hardness: string): Working {
  const rate = book.rate(wear.rate);
  if (wear.by === 'loss') return { formula: multiply(area, term('loss')), terms: [allowanceTerm('loss', rate)] };
  const life = rateTerm('life', rate);
  if (wear.by === 'area') return { formula: divide(area, term('life')), terms: [life] };
  // The life holds the spread: the hours on the tool are those of the likely rate, so that no loss counts twice.
  const hours = divide(area, multiply(term('rate'), term('hardness')));
  return {
    formula: divide(hours, term('life')),
    terms: [
      factorTerm('rate', book.rate(`methods/${row.id}`)),
      factorTerm('hardness', book.rate(`factors/hardness/${hardness}`)),
      life,
    ],
  };
}
