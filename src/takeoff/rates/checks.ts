import type { Provenance } from '../line.ts';

/** A check before the floor is let go: what passes and when it is made. */
export interface CheckRow {
  readonly id: string;
  readonly term: string;
  readonly passWhen: string;
  /** Rule of testCounts.ts, or in words. */
  readonly count: string;
  readonly when: string;
  /** Documents that it comes from; several in one row. */
  readonly source: string;
  readonly provenance: Provenance;
  readonly fromMemory: boolean;
}

export const checks: readonly CheckRow[] = [
  {
    id: 'clean',
    term: 'Dust',
    passWhen: 'tape or dark cloth wipe: no visible dust',
    count: 'csp rule',
    when: 'after final vacuum',
    source: 'D4258; UFC3-270-03 finger wipe',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    id: 'wet',
    term: 'No contamination',
    passWhen: 'water drop wets in under 60 s',
    count: 'f3191',
    when: 'before primer',
    source: 'ASTM F3191',
    provenance: 'M',
    fromMemory: true,
  },
  {
    id: 'profile',
    term: 'Profile',
    passWhen: 'chip match by sight and touch, two people; replica or depth gauge if disputed',
    count: 'csp',
    when: 'after last pass',
    source: 'ICRI310.2R; D7682; D8271',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    id: 'sound',
    term: 'Soundness',
    passWhen: 'chain or hammer, no hollow',
    count: 'all',
    when: 'after last pass',
    source: 'UFC3-270-03',
    provenance: 'R',
    fromMemory: false,
  },
  {
    id: 'pull',
    term: 'Surface strength',
    passWhen: 'value and failure plane (substrate, glue, coating)',
    count: 'pull',
    when: 'after last pass',
    source: 'D7234, C1583, EN 1542',
    provenance: 'M',
    fromMemory: true,
  },
  {
    id: 'ph',
    term: 'pH',
    passWhen: 'rule in survey_readings',
    count: 'd4262',
    when: 'after wet work',
    source: 'D4262',
    provenance: 'R',
    fromMemory: false,
  },
  {
    id: 'moist',
    term: 'Moisture',
    passWhen: 'rule in survey_readings',
    count: 'f2170',
    when: 'start early: lead time',
    source: 'F2170',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    id: 'dew',
    term: 'Climate',
    passWhen:
      'surface at least 3 C over dew point and the margin not shrinking; slab temperature steady or falling for the first resin coat',
    count: 'day',
    when: 'hourly while coating',
    source: 'common practice, no source',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    id: 'edge',
    term: 'Edges and details',
    passWhen: 'reach to wall, no untreated band, no gouge over 3 mm',
    count: 'each run',
    when: 'before release',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
  },
  {
    id: 'crack',
    term: 'Cracks and joints',
    passWhen: 'number ticked, filled flush, moving joints kept',
    count: 'each',
    when: 'before release',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
  },
  {
    id: 'level',
    term: 'High spots',
    passWhen: 'straightedge where film gloss',
    count: 'grid',
    when: 'before release',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
  },
  {
    id: 'photo',
    term: 'Photo record',
    passWhen: 'before, after, each test, each zone, each joint, with place and time',
    count: 'each',
    when: 'daily',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
  },
  {
    id: 'release',
    term: 'Hold point',
    passWhen: 'written release by the layer of the topping',
    count: 'zone',
    when: 'before primer; re-check if older than 24 h or wetted or trafficked',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
  },
];
