import type { RecordId } from '../model/cell.ts';
import { onFloor } from '../model/doc.ts';
import { subtract, sumOf, term } from './formula.ts';
import type { Line } from './line.ts';
import { makeLine, plainLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured } from './terms.ts';
import { workedFields } from './workedFields.ts';

/** Gross floor, what is taken off it, and the net floor, field and strip of each zone; all in m2. */
export function floorLines(site: Site): Line[] {
  return [...wholeFloor(site), ...site.zones.flatMap((zone) => zoneFloor(zone))];
}

function wholeFloor({ doc, floor, measure }: Site): Line[] {
  const slabs = onFloor(doc, 'slab', floor).map(({ id }) => id);
  const gross = plainLine({
    code: 'grossFloor',
    trade: 'floor',
    unit: 'm2',
    zone: null,
    records: slabs,
    term: measured('inside the outlines', measure.grossM2, 'm2'),
  });
  const taken = Object.entries(measure.deductedM2)
    .filter(([, m2]) => m2 > 0)
    .map(([record, m2]) =>
      plainLine({
        code: 'deduction',
        trade: 'floor',
        unit: 'm2',
        zone: null,
        records: [record as RecordId],
        of: record,
        term: measured(record, m2, 'm2', record),
      }),
    );
  const terms = [
    measured('gross floor', measure.grossM2, 'm2', gross.key),
    ...taken.map((line) => measured(line.records[0] ?? line.key, line.quantity.likely, 'm2', line.key)),
  ];
  const net = makeLine({
    code: 'netFloorAll',
    trade: 'floor',
    unit: 'm2',
    zone: null,
    records: slabs,
    formula: subtract(term('gross floor'), sumOf(terms.slice(1).map(({ name }) => name))),
    terms,
  });
  return [gross, ...taken, net];
}

function zoneFloor(work: ZoneWork): Line[] {
  const { measure, prep, held } = work;
  const zone = prep.zone;
  const records = zone === 'rest' ? [] : [zone];
  const base = { unit: 'm2', zone, records, held } as const;
  const net = plainLine({
    ...base,
    code: 'netFloor',
    trade: 'floor',
    term: measured('net floor of the zone', measure.netM2, 'm2', zone),
  });
  // The engine sums each part on its own rings; the working subtracts. That they agree is a check, not a definition.
  const field = makeLine({
    ...base,
    code: 'field',
    trade: 'floor',
    formula: subtract(subtract(term('net floor'), term('edge strip')), term('hand areas')),
    terms: [
      measured('net floor', measure.netM2, 'm2', net.key),
      measured('edge strip', measure.stripM2, 'm2', `strip|${zone}`),
      measured('hand areas', measure.tightM2, 'm2', `handArea|${zone}`),
    ],
  });
  const summed = { low: measure.fieldM2, likely: measure.fieldM2, high: measure.fieldM2 };
  const strip = plainLine({
    ...base,
    code: 'strip',
    trade: 'edge',
    term: measured('band along hard faces', measure.stripM2, 'm2', zone),
  });
  return [net, { ...field, quantity: summed }, ...fieldsByMachine(work, base), strip];
}

/** Where machines follow each other: the field of each, which add up to the machine field. */
function fieldsByMachine(work: ZoneWork, base: Pick<Line, 'unit' | 'zone' | 'records' | 'held'>): Line[] {
  if (work.prep.followers.length === 0) return [];
  return workedFields(work).map(({ machine, areaM2 }) =>
    plainLine({
      ...base,
      code: 'fieldOf',
      trade: 'floor',
      of: machine?.id ?? '',
      term: measured('what is left for it', areaM2, 'm2', work.prep.zone),
    }),
  );
}
