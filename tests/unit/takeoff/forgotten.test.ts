import { describe, expect, test } from 'vitest';
import type { Doc } from '../../../src/model/doc.ts';
import type { Pricing } from '../../../src/model/records/pricing.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import { conductors } from '../../../src/takeoff/rates/conductors.ts';
import { samplePricing } from '../../../src/takeoff/rates/samplePrices.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { everythingJob } from '../../support/hoursJobs.ts';
import { FLOOR, record, set, withCells } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';
import { kitchen, showroom, warehouse } from '../../support/wholeJobs.ts';

/*
 * What estimators forget (common practice, no source): each is a line of the takeoff, a term of one, or a setting of the
 * job's money that makes a line.
 */
type Found = { readonly job: () => Doc; readonly line: string; readonly term?: RegExp };

const withPricing = (doc: Doc, pricing: Partial<Pricing>): Doc =>
  withCells(doc, record('pricing:job', { ...samplePricing, ...pricing }));

const FORGOTTEN: Readonly<Record<string, Found>> = {
  'edges by length': { job: richJob, line: 'hours.edge' },
  'second pass': { job: kitchen, line: 'hours.machine', term: /^times over$/ },
  'HEPA passes': { job: kitchen, line: 'hours.hepa' },
  'obstruction faces': { job: richJob, line: 'edge.obstruction' },
  'doorway stop lines': { job: kitchen, line: 'hours.stopLines' },
  'drop-edge setbacks': { job: warehouse, line: 'hours.tight' },
  stairs: { job: everythingJob, line: 'hours.steps' },
  parking: {
    job: () => withPricing(richJob(), { otherCosts: [{ name: 'Parking', amountMinor: 4_000 }] }),
    line: 'money.other',
  },
  'lift waits': {
    job: () => withPricing(richJob(), { otherCosts: [{ name: 'Waits for the lift', amountMinor: 9_000 }] }),
    line: 'money.other',
  },
  'hose and cord length': {
    job: () => withPricing(richJob(), { otherCosts: [{ name: 'Long cords and hoses', amountMinor: 3_000 }] }),
    line: 'money.other',
  },
  'retention and slow pay': {
    job: () => withPricing(richJob(), { otherCosts: [{ name: 'Money kept back', amountMinor: 5_000 }] }),
    line: 'money.other',
  },
  'generator and fuel': {
    job: () => withPricing(richJob(), { power: 'generator' }),
    line: 'money.power',
    term: /fuel/i,
  },
  'tool change on hard concrete': { job: warehouse, line: 'flapWear', term: /hard/i },
  'coating weight in waste': { job: showroom, line: 'rubbleMass', term: /thick/i },
  'extra topping for texture': { job: kitchen, line: 'textureFill' },
  'mock-up': { job: () => withCells(richJob(), set('zone:hall', 'mockUpM2', 1)), line: 'hours.mockUp' },
  'return for readings': { job: () => withPricing(richJob(), { returnVisits: 1 }), line: 'money.remobilisation' },
  're-clean before primer': { job: richJob, line: 'extra.cleanAgain' },
  'joint re-saw': { job: () => withCells(richJob(), set('joint:J1', 'oldFiller', true)), line: 'hours.jointClean' },
  'minimum charges': { job: richJob, line: 'money.labour', term: /^least crew days$/ },
  'small rooms': { job: kitchen, line: 'hours.machine', term: /^room size/ },
  'night premium': { job: () => withPricing(richJob(), { nightPremiumPct: 15 }), line: 'money.night' },
  'the crack that doubles when cleaned': { job: richJob, line: 'extra.crackMetre' },
};

describe('what estimators forget is in the takeoff', () => {
  test.each(Object.entries(FORGOTTEN))('%s', (_item, { job, line, term }) => {
    const lines: readonly Line[] = takeoff(job(), FLOOR).lines.filter(({ code }) => code === line);
    expect(lines.some(({ quantity }) => quantity.likely > 0)).toBe(true);
    const names = lines.flatMap(({ working }) => working.terms.map(({ name }) => name));
    expect(names.some((name) => (term ?? /./).test(name))).toBe(true);
  });

  test('two circuits: the drop of voltage along cords is looked up by wire', () => {
    expect(conductors.length).toBeGreaterThan(3);
  });
});
