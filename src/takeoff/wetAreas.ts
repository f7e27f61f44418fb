import { findingsByKind } from './findingLines.ts';
import { multiply, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import type { Formula, Line, Term } from './line.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, measured } from './terms.ts';
import { washOfFinding, washOfMethod, type Wash } from './washes.ts';

/** Floor that one wet treatment is put on, m2, each time over counted. */
export interface WetArea {
  readonly wash: Wash;
  /** Tells its terms from those of others: the pass, or the kind of finding. */
  readonly name: string;
  readonly area: Formula;
  readonly terms: readonly Term[];
  readonly records: Line['records'];
}

/** Wet passes over the net floor of a zone, and findings that something wet is put on. */
export function wetAreas(site: Site, zone: ZoneWork): readonly WetArea[] {
  return [...passAreas(zone), ...findingAreas(site, zone)];
}

function passAreas({ prep, measure }: ZoneWork): WetArea[] {
  return prep.passes.flatMap((pass, i): WetArea[] => {
    const wash = washOfMethod(pass.method);
    if (!wash) return [];
    const name = `pass ${i + 1}`;
    const times = `${name}, times over`;
    return [
      {
        wash,
        name,
        area: multiply(term('net floor'), term(times)),
        terms: [
          measured('net floor', measure.netM2, 'm2', `netFloor|${prep.zone}`),
          chosen(times, pass.times, 'number', pass.record),
        ],
        records: prep.zone === 'rest' ? [] : [prep.zone],
      },
    ];
  });
}

/** Findings of one kind together: they have one rate. A pass that puts the same on the floor does them on its way. */
function findingAreas(site: Site, zone: ZoneWork): WetArea[] {
  const inPasses = new Set(zone.prep.passes.flatMap(({ method }) => washOfMethod(method)?.chemical ?? []));
  return [...findingsByKind(site, zone)].flatMap(([kind, found]): WetArea[] => {
    const wash = washOfFinding(kind);
    if (!wash || (wash.chemical !== null && inPasses.has(wash.chemical))) return [];
    const names = uniqueNames(found.map(({ finding }) => finding.tag));
    return [
      {
        wash,
        name: kind,
        area: sumOf(names),
        terms: found.map(({ finding, areaM2 }, i) => measured(names[i] ?? finding.tag, areaM2, 'm2', finding.id)),
        records: found.map(({ finding }) => finding.id),
      },
    ];
  });
}
