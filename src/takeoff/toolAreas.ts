import { recordsOf } from '../model/doc.ts';
import { findingsByKind } from './findingLines.ts';
import { add, multiply, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { isCutOut } from './holds.ts';
import { isInThePasses } from './inThePasses.ts';
import type { Formula, Line, Term } from './line.ts';
import { edgeTimesOver, OF_BOOK, type PlannedPass, type ZonePrep } from './prep.ts';
import { findingRowOf } from './rates/findings.ts';
import type { MethodRow } from './rates/methodRow.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, measured } from './terms.ts';
import { methodIn, passKey, workedFields } from './workedFields.ts';

/** Floor that one tool goes over, each time over counted: what its wear is worked out from. */
export interface ToolArea {
  readonly row: MethodRow;
  readonly abrasive: string | null;
  /** Machine on which the tool sits; null for a tool that is carried. */
  readonly machine: string | null;
  /** Tells the areas of a zone apart. */
  readonly of: string;
  readonly records: Line['records'];
  /** m2. */
  readonly area: Formula;
  readonly terms: readonly Term[];
}

/** Every area of a zone that a tool goes over: fields, strips, hand areas, upstands, findings with a method of their own. */
export function toolAreas(site: Site, zone: ZoneWork): readonly ToolArea[] {
  return [
    ...fields(zone),
    ...strips(zone),
    ...handAreas(site, zone),
    ...upstands(site, zone),
    ...findingAreas(site, zone),
  ];
}

function zoneRecord({ zone }: ZonePrep): Line['records'] {
  return zone === 'rest' ? [] : [zone];
}

function fields(zone: ZoneWork): ToolArea[] {
  const { prep } = zone;
  return prep.passes.flatMap((pass, i) =>
    workedFields(zone).flatMap((field): ToolArea[] => {
      const planned = methodOf(pass.method);
      const row = methodOf(methodIn(pass, field));
      // A hand method has no field: its floor is hand area.
      if (!planned || !row || isHandMethod(planned) || isHandMethod(row) || field.areaM2 <= 0) return [];
      const machine = field.follows ? field.machine : pass.machine;
      return [
        {
          row,
          // The grit of a pass goes on what grinds; a blaster that follows a grinder has none of it.
          abrasive: row.group === planned.group ? pass.abrasive : null,
          machine: machine?.id ?? `${OF_BOOK}${row.id}`,
          of: passKey(pass, i, field),
          records: zoneRecord(prep),
          area: multiply(term('field'), term('times over')),
          terms: [
            measured('field', field.areaM2, 'm2', field.from),
            chosen('times over', pass.times, 'number', pass.record),
          ],
        },
      ];
    }),
  );
}

function strips({ prep, measure }: ZoneWork): ToolArea[] {
  return prep.passes.flatMap((pass, i): ToolArea[] => {
    const row = pass.edgeMethod === null ? null : methodOf(pass.edgeMethod);
    if (!row || pass.edgeTimes <= 0 || measure.stripM2 <= 0) return [];
    return [
      {
        row,
        abrasive: pass.edgeAbrasive,
        machine: null,
        of: `${pass.record ?? `pass-${i + 1}`}|strip`,
        records: zoneRecord(prep),
        area: multiply(term('strip'), term('edge passes')),
        terms: [
          measured('strip', measure.stripM2, 'm2', `strip|${prep.zone}`),
          chosen('edge passes', pass.edgeTimes, 'number', pass.record),
        ],
      },
    ];
  });
}

interface HandTool {
  readonly method: string;
  readonly abrasive: string | null;
  readonly times: number;
}

/** Tool of floor that no machine works, as its hours have it: the zone's own hand passes, or its last edge tool. */
function handTool({ prep }: ZoneWork): HandTool | null {
  const byHand = (pass: PlannedPass): boolean => {
    const row = methodOf(pass.method);
    return row !== null && isHandMethod(row) && row.rate.unit === 'm2/h';
  };
  const own = prep.passes.filter(byHand);
  const [first] = own;
  if (first) {
    const times = own.reduce((sum, pass) => sum + pass.times, 0);
    return { method: first.method, abrasive: first.abrasive, times };
  }
  const edge = prep.passes.findLast((pass) => pass.edgeMethod !== null);
  if (!edge?.edgeMethod) return null;
  return { method: edge.edgeMethod, abrasive: edge.edgeAbrasive, times: edgeTimesOver(prep) };
}

function handAreas(site: Site, zone: ZoneWork): ToolArea[] {
  const { prep, measure } = zone;
  const tool = handTool(zone);
  const row = tool === null ? null : methodOf(tool.method);
  const under = site.quantities.get(`handUnder|${prep.zone}`);
  const parts = [
    measured('hand areas', measure.tightM2, 'm2', `handArea|${prep.zone}`),
    measured('by hand under what stays', under?.quantity.likely ?? 0, 'm2', under?.key ?? null),
  ].filter(({ value }) => value.likely > 0);
  if (!tool || !row || tool.times <= 0 || parts.length === 0) return [];
  return [
    {
      row,
      abrasive: tool.abrasive,
      machine: null,
      of: 'hand areas',
      records: zoneRecord(prep),
      area: multiply(add(...parts.map(({ name }) => term(name))), term('times over')),
      terms: [...parts, chosen('times over', tool.times, 'number')],
    },
  ];
}

/** Upstands are done with the hand grinder, whatever a recipe has at the edge. */
function upstands(site: Site, { prep }: ZoneWork): ToolArea[] {
  const area = site.quantities.get(`upstandArea.prepare|${prep.zone}`);
  const row = methodOf('hand_grinder');
  if (!row || !area || area.quantity.likely <= 0) return [];
  const edge = prep.passes.findLast((pass) => methodOf(pass.edgeMethod ?? '')?.group === row.group);
  return [
    {
      row,
      abrasive: edge?.edgeAbrasive ?? null,
      machine: null,
      of: 'upstands',
      records: area.records,
      area: term('upstands to prepare'),
      terms: [measured('upstands to prepare', area.quantity.likely, 'm2', area.key)],
    },
  ];
}

/** The machine of the fleet that does a method, or the one of the book that stands in. */
function machineFor({ doc }: Site, { id }: MethodRow): string {
  return recordsOf(doc, 'machine').find(({ method }) => method === id)?.id ?? `${OF_BOOK}${id}`;
}

function findingAreas(site: Site, zone: ZoneWork): ToolArea[] {
  return [...findingsByKind(site, zone)].flatMap(([kind, found]): ToolArea[] => {
    const row = methodOf(findingRowOf(kind)?.method ?? '');
    if (!row || isInThePasses(zone, row) || (site.noCutting && isCutOut(kind))) return [];
    const names = uniqueNames(found.map(({ finding }) => finding.tag));
    return [
      {
        row,
        abrasive: null,
        machine: isHandMethod(row) ? null : machineFor(site, row),
        of: kind,
        records: found.map(({ finding }) => finding.id),
        area: sumOf(names),
        terms: found.map(({ finding, areaM2 }, i) => measured(names[i] ?? finding.tag, areaM2, 'm2', finding.id)),
      },
    ];
  });
}
