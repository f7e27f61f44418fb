import type { FloorTotals } from '../src/geometry/floorTotals.ts';

/** What engines are compared by: a zone's areas in m2, and what of its findings and cracks lies on which part. */
export interface ZoneAnswers {
  netM2: number;
  fieldM2: number;
  stripM2: number;
  findingNetM2: number;
  findingFieldM2: number;
  findingStripM2: number;
  lineNetM: number;
  lineFieldM: number;
  lineStripM: number;
}

export interface Answers {
  readonly zones: ReadonlyMap<string, ZoneAnswers>;
  /** The sums of a zone, to add to. */
  zone(id: string): ZoneAnswers;
}

export function noAnswers(): Answers {
  const zones = new Map<string, ZoneAnswers>();
  return {
    zones,
    zone: (id) => {
      const known = zones.get(id);
      if (known) return known;
      const fresh = {
        netM2: 0,
        fieldM2: 0,
        stripM2: 0,
        findingNetM2: 0,
        findingFieldM2: 0,
        findingStripM2: 0,
        lineNetM: 0,
        lineFieldM: 0,
        lineStripM: 0,
      };
      zones.set(id, fresh);
      return fresh;
    },
  };
}

/** Our own answers in the same terms; NaN for parts of findings and lines that the engine does not tell. */
export function ownAnswers(totals: FloorTotals): Answers {
  const answers = noAnswers();
  for (const zone of totals.zones) {
    const { lineParts, findingParts } = zone;
    const lines = lineParts ? Object.values(lineParts) : [{ fieldM: NaN, stripM: NaN }];
    // A part where two findings lie over each other counts for both.
    const findings = findingParts?.map(({ findings: ids, fieldM2, stripM2 }) => ({
      fieldM2: fieldM2 * ids.length,
      stripM2: stripM2 * ids.length,
    })) ?? [{ fieldM2: NaN, stripM2: NaN }];
    Object.assign(answers.zone(zone.id), {
      netM2: zone.netM2,
      fieldM2: zone.fieldM2,
      stripM2: zone.stripM2,
      findingNetM2: added(Object.values(zone.findingM2)),
      findingFieldM2: added(findings.map((part) => part.fieldM2)),
      findingStripM2: added(findings.map((part) => part.stripM2)),
      lineNetM: added(Object.values(zone.lengthM)),
      lineFieldM: added(lines.map((line) => line.fieldM)),
      lineStripM: added(lines.map((line) => line.stripM)),
    });
  }
  return answers;
}

function added(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** Largest difference over all zones, as a share of the whole floor: net and field, then strip. */
export function difference(one: Answers, other: Answers): Readonly<Record<keyof ZoneAnswers, number>> {
  const netM2 = added(Array.from(one.zones.values(), (zone) => zone.netM2));
  const lineM = Math.max(1, added(Array.from(one.zones.values(), (zone) => zone.lineNetM)));
  const largest = noAnswers().zone('');
  for (const id of new Set([...one.zones.keys(), ...other.zones.keys()])) {
    const [a, b] = [one.zone(id), other.zone(id)];
    for (const key of Object.keys(largest) as (keyof ZoneAnswers)[]) {
      const share = Math.abs(a[key] - b[key]) / (key.startsWith('line') ? lineM : netM2);
      largest[key] = Math.max(largest[key], share);
    }
  }
  return largest;
}
