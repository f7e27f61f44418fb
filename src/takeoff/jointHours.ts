import { jointsIn } from './crackLines.ts';
import { isSawnOut, jointSection } from './crackClass.ts';
import { divide, multiply, sumOf, term } from './formula.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { edgeTimesOver } from './prep.ts';
import { methodOf } from './rates/methods.ts';
import { lengthTerms, named, runHours, type Named } from './runHours.ts';
import { carriedRuns } from './sealantLines.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, rateTerm } from './terms.ts';
import { methodIn, workedFields } from './workedFields.ts';

/**
 * Hours on the joints of a zone, h: old filler sawn out, filled and trimmed, carried through under a sealant, closed and cleared round shot blasting,
 * steel angle ground. While what lies in the slab has not been located, no joint is sawn out, nor filled after it.
 * Rates: labour table, common practice, no source.
 */
export function jointHours(site: Site, zone: ZoneWork): Line[] {
  return [...fillHours(site, zone), ...sealHours(site, zone), ...shotJointHours(site, zone), ...steelHours(site, zone)];
}

/** Joints and working cracks that are carried through: a reservoir where they are too narrow, then rod and sealant. */
function sealHours(site: Site, zone: ZoneWork): Line[] {
  const runs = carriedRuns(site, zone).map((run) => ({ ...run, value: run.metres }));
  const sawn = runs.filter((run) => run.sawn);
  return [
    ...(sawn.length === 0 ? [] : [runHours(site, zone, 'hours.reservoir', 'labour/crack_chase', sawn)]),
    ...(runs.length === 0 ? [] : [runHours(site, zone, 'hours.seal', 'labour/joint_seal', runs)]),
  ];
}

function fillHours(site: Site, zone: ZoneWork): Line[] {
  const filled = jointsIn(site, zone).filter(({ joint }) => jointSection(joint) !== null);
  if (filled.length === 0) return [];
  const runs = (joints: typeof filled): Named[] =>
    named(joints.map(({ joint, metres }) => ({ id: joint.id, tag: joint.tag, value: metres })));
  const sawn = filled.filter(({ joint }) => isSawnOut(joint));
  const fillable = site.noCutting ? filled.filter(({ joint }) => !isSawnOut(joint)) : filled;
  return [
    ...(sawn.length === 0 || site.noCutting
      ? []
      : [runHours(site, zone, 'hours.jointClean', 'labour/joint_clean', runs(sawn))]),
    ...(fillable.length === 0
      ? []
      : [
          runHours(site, zone, 'hours.jointFill', 'labour/joint_fill', runs(fillable)),
          runHours(site, zone, 'hours.jointTrim', 'labour/crack_trim', runs(fillable)),
        ]),
  ];
}

/**
 * Shot gets into open joints: they are closed before and cleared with a magnet after, once each, over the metres that
 * lie in the machine field. A joint that holds old filler is closed already.
 */
function shotJointHours(site: Site, zone: ZoneWork): Line[] {
  const shot = workedFields(zone).some((field) =>
    zone.prep.passes.some((pass) => methodOf(methodIn(pass, field))?.group === 'shot' && field.areaM2 > 0),
  );
  if (!shot) return [];
  const open = jointsIn(site, zone)
    .filter(({ joint }) => joint.oldFiller !== true)
    .map(({ joint, metres }) => ({
      id: joint.id,
      tag: joint.tag,
      value: zone.measure.lineParts?.[joint.id]?.fieldM ?? metres,
    }))
    .filter(({ value }) => value > 0);
  if (open.length === 0) return [];
  return [
    runHours(site, zone, 'hours.jointsProtect', 'labour/joint_protect', named(open)),
    runHours(site, zone, 'hours.jointsClear', 'labour/joint_magnet', named(open)),
  ];
}

/** Steel angle along a joint or dock is ground by hand as often as the edge is. */
function steelHours(site: Site, zone: ZoneWork): Line[] {
  const steel = jointsIn(site, zone).filter(({ joint }) => joint.steelAngle === true);
  const times = edgeTimesOver(zone.prep);
  if (steel.length === 0 || times === 0) return [];
  const runs = named(steel.map(({ joint, metres }) => ({ id: joint.id, tag: joint.tag, value: metres })));
  return [
    makeLine({
      code: 'hours.steelAngle',
      trade: 'hours',
      unit: 'h',
      zone: zone.prep.zone,
      records: runs.map(({ id }) => id),
      formula: divide(multiply(sumOf(runs.map(({ name }) => name)), term('edge passes')), term('rate')),
      terms: [
        ...lengthTerms(runs, 'm'),
        chosen('edge passes', times, 'number'),
        rateTerm('rate', site.book.rate('labour/steel_angle')),
      ],
    }),
  ];
}
