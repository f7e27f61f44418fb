import { cracksIn, jointsIn } from './crackLines.ts';
import { isChased, isSawnOut } from './crackClass.ts';
import { divide, sumOf, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { plainUse, type Use } from './orderLines.ts';
import { methodOf } from './rates/methods.ts';
import { carriedRuns } from './sealantLines.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured, rateTerm } from './terms.ts';
import { methodIn, workedFields } from './workedFields.ts';

interface Metres {
  readonly id: Line['records'][number];
  readonly name: string;
  readonly metres: number;
}

/**
 * Chase blades by the metre, of cracks that are chased, old filler that is sawn out and reservoirs that are sawn;
 * nothing while nothing may be cut.
 */
export function bladeWear(site: Site, zone: ZoneWork): Use[] {
  if (site.noCutting) return [];
  const chased = cracksIn(site, zone).filter(({ crack }) => isChased(crack));
  const runs = [
    ...chased.map(({ crack, metres }) => ({ id: crack.id, name: crack.tag, metres })),
    ...jointsIn(site, zone)
      .filter(({ joint }) => isSawnOut(joint))
      .map(({ joint, metres }) => ({ id: joint.id, name: joint.tag, metres })),
    ...carriedRuns(site, zone).filter(({ sawn }) => sawn),
  ];
  return metreUse(zone, 'bladeWear', 'blades', runs, site);
}

/**
 * Tape, rod or sand over open joints where a blaster goes, by the metre: shot left in a joint rusts through the coating
 * (common practice, no source). A joint that holds old filler is closed already.
 */
export function jointTape(site: Site, zone: ZoneWork): Use[] {
  const blasts = workedFields(zone).some((field) =>
    zone.prep.passes.some((pass) => methodOf(methodIn(pass, field))?.group === 'shot' && field.areaM2 > 0),
  );
  if (!blasts) return [];
  const runs = jointsIn(site, zone)
    .filter(({ joint }) => joint.oldFiller !== true)
    .map(({ joint, metres }) => {
      const inField = zone.measure.lineParts?.[joint.id]?.fieldM ?? metres;
      return { id: joint.id, name: joint.tag, metres: inField };
    })
    .filter(({ metres }) => metres > 0);
  return metreUse(zone, 'jointTape', 'm', runs, null);
}

/** One line over metres; with a site it is divided by the life of a chase blade. */
function metreUse(zone: ZoneWork, code: string, unit: string, runs: readonly Metres[], site: Site | null): Use[] {
  if (runs.length === 0) return [];
  const names = uniqueNames(runs.map(({ name }) => name));
  const metres = sumOf(names);
  return [
    plainUse(
      makeLine({
        code,
        unit,
        trade: 'material',
        zone: zone.prep.zone,
        records: runs.map(({ id }) => id),
        formula: site ? divide(metres, term('life')) : metres,
        terms: [
          ...runs.map((run, i) => measured(names[i] ?? run.name, run.metres, 'm', run.id)),
          ...(site ? [rateTerm('life', site.book.rate('consumables/chase_blade'))] : []),
        ],
      }),
    ),
  ];
}
