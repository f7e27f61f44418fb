import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../../../src/edit/run.ts';
import type { Json } from '../../../src/model/cell.ts';
import type { Fields } from '../../../src/model/doc.ts';
import { applyCells, recordsOf } from '../../../src/model/doc.ts';
import { partOf } from '../../../src/model/parts.ts';
import { planStore } from '../../../src/model/store.ts';
import { defaultMoneyCells, defaultRateCells } from '../../../src/takeoff/rates/defaults.ts';
import { estimateNow } from '../../../src/exchange/estimateNow.ts';
import { writeCrewCopy, type PartOf } from '../../../src/exchange/crewCopy.ts';
import { readJobFile, writeJobFile, type Images } from '../../../src/exchange/jobFile.ts';
import { kitchen } from '../../support/wholeJobs.ts';
import { AMOUNTS, everyKind, IMAGE_HASH } from '../../support/everyKind.ts';

const SECRET = 876_543_201;
/** What a newer app might add: money where this one does not look for it. */
const plan = applyCells(everyKind, [
  ['pass:a', 'costMinor', SECRET],
  ['zone:a', 'system', { kind: 'epoxy_hb', thicknessMm: 0.5, priceMinor: SECRET }],
  [
    'slab:a',
    'outline',
    recordsOf(everyKind, 'slab').flatMap(({ outline }) => outline.map((corner) => ({ ...corner, bill: SECRET }))),
  ],
  ['invoice:a', 'total', SECRET],
  ['rate:b', 'code', 'own/crew'],
  ['rate:b', 'term', 'Crew'],
  ['rate:b', 'unit', 'XTS/h'],
  ['rate:b', 'low', SECRET],
  ['rate:b', 'likely', SECRET],
  ['rate:b', 'high', SECRET],
  ['rate:b', 'source', 'own'],
  ['rate:b', 'provenance', 'own'],
  ['rate:b', 'fromMemory', false],
]);
const quarantine = new Map([
  ['price:q', { fields: { code: 'wage', amount: String(SECRET) }, reason: 'amount: not a number' }],
  ['crack:q', { fields: { tag: 'C9', path: [{ price: SECRET }], offer: SECRET }, reason: 'path: no' }],
  ['unreadable:1', { fields: { value: SECRET }, reason: 'no id' }],
] as const);
const picture = new TextEncoder().encode('a picture');
const images: Images = new Map([
  [IMAGE_HASH, { bytes: picture, extension: 'png' }],
  ['b'.repeat(64), { bytes: new TextEncoder().encode(`bill ${SECRET}`), extension: 'png' }],
]);

const amounts = [...Object.values(AMOUNTS), SECRET].map(String);
const moneySlots = [
  'amount',
  'overheadPct',
  'marginPct',
  'burdenPct',
  'contingencyPct',
  'taxPct',
  'minimumCrewDays',
  'totalMinor',
  'currency',
  'confirmedOn',
  'burdenParts',
  'billablePct',
  'nightPremiumPct',
  'roundUpTo',
  'hired',
  'travelKm',
  'returnVisits',
  'otherCosts',
  'assumptions',
  'exclusions',
  'issuedOn',
  'lowMinor',
  'highMinor',
  'body',
];
const moneyKinds = ['price', 'pricing', 'estimate', 'letter', 'invoice'];

/** Every text that must not leave with the crew and is found in the bytes, packed or unpacked. */
function foundIn(file: Uint8Array): string[] {
  const inside = Object.values(unzipSync(file)).map((bytes) => strFromU8(bytes, true));
  const texts = [strFromU8(file, true), ...inside];
  const wanted = [
    ...amounts,
    'XTS',
    ...moneySlots.map((slot) => `"${slot}"`),
    ...moneyKinds.map((kind) => `"${kind}:`),
  ];
  return wanted.filter((text) => texts.some((where) => where.includes(text)));
}

describe('the crew copy', () => {
  it('holds no amount, no money slot and no money record, packed or unpacked', () => {
    expect(foundIn(writeCrewCopy(plan, quarantine, images))).toEqual([]);
  });
  it('the search finds them all in the whole job: it can fail', () => {
    const found = foundIn(writeJobFile(plan, quarantine, images));
    expect(found).toEqual(
      expect.arrayContaining([
        ...amounts,
        'XTS',
        '"price:',
        '"invoice:',
        '"estimate:',
        '"letter:',
        '"pricing:',
        '"amount"',
      ]),
    );
  });
  it.each([
    ['price', 'amount', String(AMOUNTS.wage)],
    ['pricing', 'marginPct', String(AMOUNTS.marginPct)],
    ['estimate', 'totalMinor', String(AMOUNTS.total)],
    ['letter', 'body', String(AMOUNTS.total)],
    ['job', 'currency', 'XTS'],
  ])('one slot let through, %s %s, is found', (kind, slot, text) => {
    const leaky: PartOf = (id, field) => (id.startsWith(`${kind}:`) && field === slot ? 'plan' : partOf(id, field));
    expect(foundIn(writeCrewCopy(plan, quarantine, images, undefined, leaky))).toContain(text);
  });
  it('holds everything else: what is there, what it gets, what was found and done', () => {
    const answer = readJobFile(writeCrewCopy(everyKind, new Map(), images));
    expect(answer.ok).toBe(true);
    const kept = answer.ok ? answer.opened.doc : new Map();
    const without = [...everyKind.keys()].filter((id) => !kept.has(id));
    expect(without.toSorted()).toEqual(['estimate:a', 'letter:a', 'price:a', 'pricing:a']);
    for (const [id, fields] of kept) {
      const { currency, ...rest } = everyKind.get(id) as Fields;
      expect(fields).toEqual(id === 'job:a' ? rest : { ...rest, ...(currency === undefined ? {} : { currency }) });
    }
  });
  it('says of itself that it is one, and opens without a complaint', () => {
    const answer = readJobFile(writeCrewCopy(everyKind, new Map(), images));
    expect(answer).toMatchObject({ ok: true, opened: { head: { copy: 'crew' }, broken: [] } });
    expect(answer.ok && [...answer.opened.quarantine.keys()]).toEqual([]);
  });
  it('keeps aside only what is plainly plan, and only the fields that we know', () => {
    const answer = readJobFile(writeCrewCopy(everyKind, quarantine, images));
    expect(answer.ok && [...answer.opened.quarantine.keys()]).toEqual(['crack:q']);
  });
});

describe('the crew copy of a job with a real issued estimate', () => {
  const job = applyCells(kitchen(), [...defaultRateCells(), ...defaultMoneyCells()]);
  const { frozen } = estimateNow(job);
  const args = { id: 'estimate:a', on: '2030-02-01', open: [], frozen } as unknown as Json;
  const store = planStore({ doc: job });
  const result = runCommand(store, { name: 'issueEstimate', args });
  const total = String(frozen?.totalMinor);
  const inside = (file: Uint8Array): string =>
    Object.values(unzipSync(file))
      .map((bytes) => strFromU8(bytes, true))
      .join('\n');

  it('holds neither its total nor a line of its money', () => {
    expect(result).not.toHaveProperty('refused');
    const copy = inside(writeCrewCopy(store.getState(), new Map(), new Map()));
    expect(copy).not.toContain(total);
    expect(copy).not.toMatch(/money\.|estimate:|marginPct/);
  });
  it('the whole job holds both: the search can fail', () => {
    const whole = inside(writeJobFile(store.getState(), new Map(), new Map()));
    expect(whole).toContain(total);
    expect(whole).toMatch(/money\.price/);
  });
});
