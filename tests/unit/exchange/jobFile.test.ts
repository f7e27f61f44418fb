import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { applyCells } from '../../../src/model/doc.ts';
import { writeEnvelope } from '../../../src/model/envelope.ts';
import { LIMITS, readJobFile, writeJobFile, type Images } from '../../../src/exchange/jobFile.ts';
import { sha256Hex } from '../../../src/exchange/sha256.ts';
import { everyKind } from '../../support/everyKind.ts';

const NONE = new Map();
const bytes = strToU8('not really a picture, but bytes all the same');
const hash = sha256Hex(bytes);
const images: Images = new Map([[hash, { bytes, extension: 'png' }]]);
const plan = applyCells(everyKind, [
  ['page:a', 'image', hash],
  ['photo:a', 'image', hash],
]);
const jobJson = strToU8(writeEnvelope(plan, NONE));

describe('a job file', () => {
  it('opens with every record and image', () => {
    const answer = readJobFile(writeJobFile(plan, NONE, images));
    expect(answer).toMatchObject({ ok: true, reports: [], images });
    expect(answer.ok && answer.opened.doc).toEqual(plan);
  });
  it('is a ZIP with job.json and the images by their hash', () => {
    const inside = unzipSync(writeJobFile(plan, NONE, images));
    expect(Object.keys(inside)).toEqual(['job.json', `images/${hash}.png`]);
    expect(inside['job.json']).toEqual(jobJson);
  });
  it('has the same bytes every time', () => {
    expect(writeJobFile(plan, NONE, images)).toEqual(writeJobFile(new Map([...plan].toReversed()), NONE, images));
  });
  it('carries what was kept aside', () => {
    const quarantine = new Map([['crack:z', { fields: { path: 7 }, reason: 'path: no' }]] as const);
    const answer = readJobFile(writeJobFile(plan, quarantine, images));
    expect(answer.ok && answer.opened.quarantine).toEqual(quarantine);
  });
});

describe('a file that opens all the same reports', () => {
  it('an image whose bytes are not those that were saved, and keeps it', () => {
    const other = strToU8('other bytes');
    const answer = readJobFile(zipSync({ 'job.json': jobJson, [`images/${hash}.png`]: other }));
    expect(answer).toMatchObject({ ok: true, reports: [{ code: 'imageHashMismatch', what: `images/${hash}.png` }] });
    expect(answer.ok && answer.images.get(hash)?.bytes).toEqual(other);
  });
  it('an image that is not there', () => {
    expect(readJobFile(zipSync({ 'job.json': jobJson }))).toMatchObject({
      ok: true,
      reports: [{ code: 'imageMissing', what: hash }],
    });
  });
  it('an entry that we did not put there', () => {
    const file = zipSync({
      'job.json': jobJson,
      [`images/${hash}.png`]: bytes,
      'images/../evil.png': bytes,
      'readme.txt': bytes,
    });
    expect(readJobFile(file)).toMatchObject({
      reports: [
        { code: 'strangeEntry', what: 'images/../evil.png' },
        { code: 'strangeEntry', what: 'readme.txt' },
      ],
    });
  });
});

/** Writes a size into the list at the end of a ZIP, where readers look before they unpack. */
function withClaimedSize(file: Uint8Array, size: number): Uint8Array {
  const claimed = new Uint8Array(file);
  const view = new DataView(claimed.buffer);
  for (let at = 0; at + 46 <= claimed.length; at++) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, size, true);
  }
  return claimed;
}

describe('a file that does not open says why', () => {
  const whole = writeJobFile(plan, NONE, images);
  it.each([
    ['no bytes', new Uint8Array(), 'notAZip'],
    ['a picture', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 1, 2, 3]), 'notAZip'],
    ['a file cut short', whole.slice(0, whole.length - 30), 'notAZip'],
    ['another ZIP', zipSync({ 'readme.txt': bytes }), 'noJobJson'],
    ['broken JSON', zipSync({ 'job.json': strToU8('{"format":"slabtooth",') }), 'brokenJson'],
    ['bytes that do not unpack', zipSync({ 'job.json': jobJson }).fill(255, 40, 200), 'brokenJson'],
    ['JSON of something else', zipSync({ 'job.json': strToU8('{"type":"FeatureCollection"}') }), 'notAJob'],
    [
      'a job without records',
      zipSync({ 'job.json': strToU8('{"format":"slabtooth","version":1,"minReader":1}') }),
      'damagedJob',
    ],
    ['a packing trick', withClaimedSize(zipSync({ 'job.json': jobJson }), LIMITS.jobJsonBytes + 1), 'tooLarge'],
    [
      'too many entries',
      zipSync(Object.fromEntries(Array.from({ length: LIMITS.entries + 1 }, (_, i) => [`n${i}`, new Uint8Array()]))),
      'tooManyEntries',
    ],
  ])('%s', (_name, file, fault) => {
    expect(readJobFile(file)).toMatchObject({ ok: false, fault });
  });
  it('whatever the bytes: cut and turned anywhere, nothing throws', () => {
    for (let at = 0; at < whole.length; at += 97) {
      const turned = new Uint8Array(whole);
      turned[at] = (turned[at] ?? 0) ^ 0xff;
      expect(typeof readJobFile(turned).ok).toBe('boolean');
      expect(readJobFile(whole.slice(0, at)).ok).toBe(false);
    }
  });
});
