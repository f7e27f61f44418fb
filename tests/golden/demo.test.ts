import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { buildDemo } from '../../demo/buildDemo.ts';
import { pageMatrix } from '../../src/edit/pageMap.ts';
import { readJobFile } from '../../src/exchange/jobFile.ts';
import { fitTrue } from '../../src/geometry/fitTrue.ts';
import { mapPoint } from '../../src/geometry/transform.ts';
import { recordsOf, type Doc } from '../../src/model/doc.ts';
import { schemas } from '../../src/model/records/all.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FLOOR_TO_PIXEL } from '../../demo/workshopPage.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const scan = new Uint8Array(readFileSync(join(ROOT, 'demo/workshop-scan.jpg')));
const committed = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(ROOT, `public/demo/${name}.slabtooth`)));

function opened(name: 'workshop' | 'garage'): Doc {
  const answer = readJobFile(committed(name));
  if (!answer.ok) throw new Error(answer.fault);
  expect(answer.reports).toEqual([]);
  expect(answer.opened.broken).toEqual([]);
  expect(answer.opened.quarantine.size).toBe(0);
  return answer.opened.doc;
}

describe.each(['workshop', 'garage'] as const)('the demo job %s', (name) => {
  it('is in the tree as node scripts/demo.mjs writes it', () => {
    const asBuilt = readJobFile(buildDemo(scan)[name]);
    const asCommitted = readJobFile(committed(name));
    expect(asCommitted).toEqual(asBuilt);
  });
  it('opens whole, says that it is invented, and is small', () => {
    expect(recordsOf(opened(name), 'job')[0]).toMatchObject({ invented: true });
    expect(committed(name).length).toBeLessThan(400_000);
  });
  it('gives a takeoff whose parts add up to its net floor', () => {
    const { blocked, measure, lines } = takeoff(opened(name), 'floor:ground');
    expect(blocked).toBeNull();
    expect(lines.length).toBeGreaterThan(50);
    const parts = measure.zones.flatMap((zone) => [zone.fieldM2, zone.stripM2, zone.tightM2]);
    const sum = parts.reduce((total, part) => total + part, 0);
    expect(Math.abs(sum / measure.netM2 - 1)).toBeLessThan(1e-4);
  });
});

describe('the workshop shows every feature', () => {
  const doc = opened('workshop');
  const { holds, faults, measure, notAnOffer } = takeoff(doc, 'floor:ground');

  it('has a record of every kind that is drawn or planned', () => {
    const later = ['steps', 'photo', 'estimate', 'letter'];
    const missing = Object.keys(schemas).filter(
      (type) => !later.includes(type) && recordsOf(doc, type as 'slab').length === 0,
    );
    expect(missing).toEqual([]);
  });
  it('holds the old office for asbestos and for lead, and nothing else', () => {
    expect(holds.map(({ kind, zone }) => `${kind} ${zone}`).toSorted()).toEqual(['asbestos rest', 'lead rest']);
    expect(notAnOffer.length).toBeGreaterThan(0);
  });
  it('has cracks of every behaviour, joints of every kind, edges of every kind', () => {
    expect(new Set(recordsOf(doc, 'crack').map(({ behaviour }) => behaviour)).size).toBe(4);
    expect(new Set(recordsOf(doc, 'joint').map(({ kind }) => kind)).size).toBe(3);
    expect(new Set(recordsOf(doc, 'slab').flatMap(({ outline }) => outline.map(({ edge }) => edge.kind))).size).toBe(4);
  });
  it('has a tight spot, a room that is cut off, and an opening that the large grinder does not pass', () => {
    const [hall, stores] = measure.zones;
    // The switch room, 3.0 by 2.4 m, and the gap of 0.65 m beside the plinth.
    expect(hall?.cutOffM2).toBeGreaterThan(7.2);
    expect(stores?.tightM2).toBeGreaterThan(0.6 * 1.8);
    const barred = hall?.tight.map(({ blockedBy }) => blockedBy?.passage.id);
    expect(barred).toContain('opening:switchRoom');
    // The stores have a smaller grinder that passes their door: only the switch room is said to lie behind one.
    const said = faults.flatMap(({ record, code }) => (code === 'gapTooNarrow' ? [record] : []));
    expect(said).toEqual(['opening:switchRoom']);
  });
  it('answers one of the four questions with "don\'t know"', () => {
    const [job] = recordsOf(doc, 'job');
    const answers = [job?.builtBefore1981, job?.coatingOrTile, job?.inSlab, job?.gasAppliance].map(
      (one) => one?.answer,
    );
    expect(answers.map(String).toSorted()).toEqual(['unknown', 'yes', 'yes', 'yes']);
  });
  it('has a page that is trued by three dimensions and lies under the plan', () => {
    const [page] = recordsOf(doc, 'page');
    if (!page) throw new Error('no page');
    const fit = fitTrue(page.dimensions, page.levelLine);
    expect(fit).toMatchObject({ ok: true, fit: { oneScale: false } });
    expect(fit.ok && Math.max(...fit.fit.residualsMm.map(Math.abs))).toBeLessThan(5);
    // The far corner of the drawing, through the scan and back.
    const pixel = mapPoint(FLOOR_TO_PIXEL, [24_000, 16_000]);
    const [x, y] = mapPoint(pageMatrix(page), pixel);
    expect(Math.hypot(x - 24_000, y - 16_000)).toBeLessThan(10);
  });
});

describe('the garage', () => {
  it('measures what was sketched: 6.70 x 6.50 m less the platform', () => {
    const { measure } = takeoff(opened('garage'), 'floor:ground');
    expect(measure.netM2).toBeCloseTo(6.7 * 6.5 - 0.9 * 0.8, 6);
  });
});
