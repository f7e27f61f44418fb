import { onFloor, type Held } from '../model/doc.ts';
import { grouped } from './grouped.ts';
import { isCutOut } from './holds.ts';
import type { Line } from './line.ts';
import { keptList, keptOf } from './keptShapes.ts';
import { type Lying, lyingIn } from './lyingIn.ts';
import { sumLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';

/** Findings that lie in a zone, with their area in it, m2. */
export function findingsIn({ doc, floor }: Site, { measure }: ZoneWork): readonly FindingIn[] {
  return asFindings(lyingIn(onFloor(doc, 'finding', floor), measure.findingM2));
}

/** Findings of a zone by kind, in the order in which kinds first appear: the same groups as long as none changes. */
export function findingsByKind(site: Site, zone: ZoneWork): ReadonlyMap<string, readonly FindingIn[]> {
  return byKind(findingsIn(site, zone));
}

const byKind = keptOf((found: readonly FindingIn[]) => grouped(found, ({ finding }) => finding.kind));

export interface FindingIn {
  readonly finding: Held<'finding'>;
  readonly areaM2: number;
}

const asFindings = keptList(({ record, amount }: Lying<Held<'finding'>>): FindingIn => ({
  finding: record,
  areaM2: amount,
}));

/** Area of findings by kind in each zone. Findings may overlap: each kind counts for itself. */
export function findingLines(site: Site): Line[] {
  return site.zones.flatMap((zone) => {
    return [...findingsByKind(site, zone)].map(([kind, findings]) =>
      sumLine(
        {
          code: `finding.${kind}`,
          trade: 'spot',
          unit: 'm2',
          zone: zone.prep.zone,
          held: zone.held ?? (site.noCutting && isCutOut(kind) ? 'inSlab' : null),
          records: findings.map(({ finding }) => finding.id),
        },
        findings.map(({ finding, areaM2 }) => ({ name: finding.tag, value: areaM2, from: finding.id })),
      ),
    );
  });
}
