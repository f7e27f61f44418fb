import { onFloor, type Held } from '../model/doc.ts';
import { isChased, isSawnOpen, isSawnOut, isWidened, widthClass } from './crackClass.ts';
import { grouped } from './grouped.ts';
import type { Line } from './line.ts';
import { keptList } from './keptShapes.ts';
import { type Lying, lyingIn } from './lyingIn.ts';
import { sumLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';

/** Metres of crack by behaviour and width class, and of joint by kind and treatment, in each zone. */
export function crackLines(site: Site): Line[] {
  return site.zones.flatMap((zone) => [...zoneCracks(site, zone), ...zoneJoints(site, zone)]);
}

/** Cracks that lie in a zone, with their metres in it. */
export function cracksIn({ doc, floor }: Site, { measure }: ZoneWork): readonly CrackIn[] {
  return asCracks(lyingIn(onFloor(doc, 'crack', floor), measure.lengthM));
}

/** A crack with its metres in a zone: the same object as long as neither changes. */
export interface CrackIn {
  readonly crack: Held<'crack'>;
  readonly metres: number;
}

const asCracks = keptList(({ record, amount }: Lying<Held<'crack'>>): CrackIn => ({ crack: record, metres: amount }));

/** Joints that lie in a zone, with their metres in it. */
export function jointsIn({ doc, floor }: Site, { measure }: ZoneWork): readonly JointIn[] {
  return asJoints(lyingIn(onFloor(doc, 'joint', floor), measure.lengthM));
}

interface JointIn {
  readonly joint: Held<'joint'>;
  readonly metres: number;
}

const asJoints = keptList(({ record, amount }: Lying<Held<'joint'>>): JointIn => ({ joint: record, metres: amount }));

function zoneCracks(site: Site, zone: ZoneWork): Line[] {
  const groups = grouped(cracksIn(site, zone), ({ crack }) => `crack.${crack.behaviour}.${widthClass(crack.widthMm)}`);
  return [...groups].map(([code, cracks]) =>
    sumLine(
      {
        code,
        trade: 'line',
        unit: 'm',
        zone: zone.prep.zone,
        held:
          zone.held ??
          (site.noCutting && cracks.some(({ crack }) => isChased(crack) || isSawnOpen(crack, leastMm(site)))
            ? 'inSlab'
            : null),
        records: cracks.map(({ crack }) => crack.id),
      },
      cracks.map(({ crack, metres }) => ({ name: crack.tag, value: metres, from: crack.id })),
    ),
  );
}

function zoneJoints(site: Site, zone: ZoneWork): Line[] {
  const groups = grouped(jointsIn(site, zone), ({ joint }) => `joint.${joint.kind}.${joint.treat}`);
  return [...groups].map(([code, joints]) =>
    sumLine(
      {
        code,
        trade: 'line',
        unit: 'm',
        zone: zone.prep.zone,
        held:
          zone.held ??
          (site.noCutting && joints.some(({ joint }) => isSawnOut(joint) || isWidened(joint, leastMm(site)))
            ? 'inSlab'
            : null),
        records: joints.map(({ joint }) => joint.id),
      },
      joints.map(({ joint, metres }) => ({ name: joint.tag, value: metres, from: joint.id })),
    ),
  );
}

/** A reservoir for a sealant is at least so wide, mm. */
function leastMm({ book }: Site): number {
  return book.rate('consumables/reservoir').likely;
}
