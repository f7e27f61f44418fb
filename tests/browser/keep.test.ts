import { deleteDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { recordsOf } from '../../src/model/doc.ts';
import { writeEnvelope } from '../../src/model/envelope.ts';
import { readJobFile, writeJobFile } from '../../src/exchange/jobFile.ts';
import { writeCrewCopy } from '../../src/exchange/crewCopy.ts';
import { asksForCopy, fileNameFor } from '../../src/app/keep/copies.ts';
import { keepNothing, openKeep, type Keep } from '../../src/app/keep/database.ts';
import {
  duplicateJob,
  forgetLongRemoved,
  listJobs,
  listRemoved,
  newJob,
  removeJob,
  renameJob,
  startOfJob,
  takeBackJob,
} from '../../src/app/keep/jobList.ts';
import { SNAPSHOT_EVERY } from '../../src/app/keep/jobRows.ts';
import { loadJob } from '../../src/app/keep/loadJob.ts';
import { jobInMemory, openJob, type KeptJob } from '../../src/app/keep/openJob.ts';
import { placeFile, replaceJob, sameJob } from '../../src/app/keep/placeFile.ts';
import { everyKind } from '../support/everyKind.ts';

/** Jobs in the browser's database, in a real Chromium. Killed tabs and full disks are in tests/e2e/keep.test.ts. */
const DAY_MS = 24 * 60 * 60 * 1000;
const PICTURE = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3]);
let keep: Keep;
let clock = 0;
let turn = 0;
const open: KeptJob[] = [];

beforeEach(async () => {
  clock = Date.UTC(2026, 2, 2);
  turn += 1;
  keep = await openKeep({ name: `keep-test-${turn}`, now: () => clock });
});
afterEach(async () => {
  await Promise.all(open.splice(0).map((job) => job.close(true)));
  await keep.close();
  await deleteDB(keep.name);
});

async function makeJob(name = 'Hall'): Promise<string> {
  const answer = await newJob(keep, { name, units: 'metric', floorName: 'Ground floor' });
  if (!answer.ok) throw new Error(answer.fault);
  return answer.id;
}

async function opened(id: string, where = keep): Promise<KeptJob> {
  const answer = await openJob(where, id);
  if (!answer.ok) throw new Error(answer.fault);
  open.push(answer.job);
  return answer.job;
}

function level(job: KeptJob): number | undefined {
  return recordsOf(job.store.getState(), 'floor')[0]?.level;
}

function raise(job: KeptJob, to: number): void {
  const [floor] = recordsOf(job.store.getState(), 'floor');
  if (floor) job.store.commit('setField', [[floor.id, 'level', to]]);
}

describe('a job', () => {
  it('is made with a job record and a floor, and listed', async () => {
    const id = await makeJob();
    expect(await listJobs(keep)).toMatchObject([
      { id, name: 'Hall', units: 'metric', lastCopy: null, editsSinceCopy: 0, asksForCopy: false },
    ]);
    const job = await opened(id);
    expect(job.broken).toEqual([]);
    expect(recordsOf(job.store.getState(), 'floor')).toHaveLength(1);
    expect(job.readOnly()).toBeNull();
  });
  it('reopens with every change, undo and redo among them', async () => {
    const id = await makeJob();
    const job = await opened(id);
    raise(job, 1);
    raise(job, 2);
    raise(job, 3);
    job.store.undo();
    job.store.undo();
    job.store.redo();
    expect(await job.close()).toBe(true);
    expect(job.saveState()).toEqual({ at: 'saved' });
    const again = await opened(id);
    expect(level(again)).toBe(2);
    expect(again.store.tick()).toBe(6);
  });
  it('says saved only when the transaction is complete', async () => {
    const id = await makeJob();
    const job = await opened(id);
    const states: string[] = [];
    job.onSaveState(({ at }) => states.push(at));
    raise(job, 1);
    expect(job.saveState().at).toBe('saving');
    const before = await loadJob(keep, id);
    await job.flush();
    expect(states).toEqual(['saving', 'saved']);
    const after = await loadJob(keep, id);
    expect(before.ok && before.row.seq).toBe(0);
    expect(after.ok && after.row.seq).toBe(1);
  });
  it('keeps a snapshot every few hundred changes, and the whole log', async () => {
    const id = await makeJob();
    const job = await opened(id);
    for (let to = 1; to <= SNAPSHOT_EVERY + 20; to++) raise(job, to);
    await job.flush();
    raise(job, -1);
    await job.close();
    const db = await keep.database();
    const snapshot = await db.get('snapshots', id);
    expect(snapshot?.seq).toBeGreaterThanOrEqual(SNAPSHOT_EVERY);
    expect(await db.count('changes')).toBe(SNAPSHOT_EVERY + 21);
    expect(level(await opened(id))).toBe(-1);
  });
  it('is written again as a whole when the browser has forgotten its row', async () => {
    const id = await makeJob();
    const job = await opened(id);
    const db = await keep.database();
    await db.clear('jobs');
    await db.clear('snapshots');
    raise(job, 5);
    await job.close();
    expect(level(await opened(id))).toBe(5);
  });
  it('keeps what cannot be read aside, through saving and reopening', async () => {
    const quarantine = new Map([['crack:z', { fields: { path: 7 }, reason: 'path: no' }]] as const);
    const answer = readJobFile(writeJobFile(everyKind, quarantine, new Map()));
    if (!answer.ok) throw new Error(answer.fault);
    const placed = await placeFile(keep, { ...answer, fileName: 'a.slabtooth' });
    if (!placed.ok) throw new Error(placed.fault);
    const job = await opened(placed.id);
    raise(job, 3);
    expect(job.quarantine()).toEqual(quarantine);
    expect((await readBack(job)).opened.quarantine).toEqual(quarantine);
  });
});

async function readBack(job: KeptJob) {
  const answer = readJobFile((await job.writeFile()).bytes);
  if (!answer.ok) throw new Error(answer.fault);
  return answer;
}

describe('pictures', () => {
  it('are kept by their hash, go into the file, and come back from it', async () => {
    const id = await makeJob();
    const job = await opened(id);
    const hash = job.addImage(PICTURE) ?? '';
    expect(hash).toMatch(/^[0-9a-f]{64}$/);
    await job.close();
    const again = await opened(id);
    const blob = await again.image(hash);
    expect(blob?.type).toBe('image/png');
    expect(new Uint8Array(await (blob ?? new Blob()).arrayBuffer())).toEqual(PICTURE);
    expect((await readBack(again)).images.get(hash)?.bytes).toEqual(PICTURE);
  });
  it('of another kind are refused', async () => {
    const job = await opened(await makeJob());
    expect(job.addImage(new TextEncoder().encode('%PDF-1.7'))).toBeNull();
    expect(job.saveState().at).toBe('saved');
  });
});

describe('the job list', () => {
  it('shows the last changed first, renames, and duplicates with an id of its own', async () => {
    const first = await makeJob('First');
    clock += 1000;
    await makeJob('Second');
    clock += 1000;
    expect(await renameJob(keep, first, 'First, renamed')).toMatchObject({ ok: true });
    clock += 1000;
    const copy = await duplicateJob(keep, first, 'Copy');
    expect(copy.ok && copy.id).not.toBe(first);
    expect((await listJobs(keep)).map(({ name }) => name)).toEqual(['Copy', 'First, renamed', 'Second']);
    const job = await opened(copy.ok ? copy.id : '');
    expect(recordsOf(job.store.getState(), 'job')).toMatchObject([{ id: copy.ok && copy.id, name: 'Copy' }]);
    expect(job.broken).toEqual([]);
  });
  it('does not rename what is open for writing somewhere', async () => {
    const id = await makeJob();
    await opened(id);
    expect(await renameJob(keep, id, 'X')).toEqual({ ok: false, fault: 'openElsewhere' });
  });
  it('takes a removed job back for thirty days, then forgets it with everything of it', async () => {
    const id = await makeJob();
    const other = await makeJob('Other');
    const job = await opened(id);
    job.addImage(PICTURE);
    raise(job, 1);
    await job.close();
    await removeJob(keep, id);
    expect((await listJobs(keep)).map((row) => row.id)).toEqual([other]);
    expect(await openJob(keep, id)).toMatchObject({ ok: false, fault: 'removed' });
    clock += 29 * DAY_MS;
    expect(await forgetLongRemoved(keep)).toBe(0);
    expect(await listRemoved(keep)).toMatchObject([{ id }]);
    await takeBackJob(keep, id);
    expect(level(await opened(id))).toBe(1);
    await open.pop()?.close();

    await removeJob(keep, id);
    clock += 31 * DAY_MS;
    expect(await forgetLongRemoved(keep)).toBe(1);
    const db = await keep.database();
    expect([
      await db.count('changes'),
      await db.count('images'),
      await db.count('snapshots'),
      await db.count('jobs'),
    ]).toEqual([0, 0, 1, 1]);
    expect(await openJob(keep, id)).toMatchObject({ ok: false, fault: 'notThere' });
  });
});

describe('copies on file', () => {
  it('are remembered with name and day; edits made since count from the first of them', async () => {
    const id = await makeJob();
    const job = await opened(id);
    raise(job, 1);
    await job.flush();
    const file = await job.writeFile();
    raise(job, 2);
    await job.flush();
    clock += 1000;
    await job.copySaved(file);
    const [row] = await listJobs(keep);
    expect(row).toMatchObject({ lastCopy: { on: clock, fileName: 'Hall.slabtooth' }, editsSinceCopy: 1 });
  });
  it('are asked for after ten days of edits, not before, and not without edits', async () => {
    const id = await makeJob();
    clock += 20 * DAY_MS;
    expect((await listJobs(keep))[0]?.asksForCopy).toBe(false);
    const job = await opened(id);
    raise(job, 1);
    await job.flush();
    clock += 9.9 * DAY_MS;
    raise(job, 2);
    await job.flush();
    expect((await listJobs(keep))[0]?.asksForCopy).toBe(false);
    clock += 0.1 * DAY_MS;
    expect((await listJobs(keep))[0]?.asksForCopy).toBe(true);
    await job.copySaved(await job.writeFile());
    expect((await listJobs(keep))[0]).toMatchObject({
      asksForCopy: false,
      editsSinceCopy: 0,
      firstEditSinceCopyOn: null,
    });
    expect(asksForCopy({ ...(await listJobs(keep))[0]!, firstEditSinceCopyOn: clock - 10 * DAY_MS }, clock)).toBe(true);
  });
  it.each([
    ['Hall', 'whole', 'Hall.slabtooth'],
    ['Hall', 'crew', 'Hall crew copy.slabtooth'],
    ['A/B: "C"?', 'whole', 'A B C.slabtooth'],
    ['Łódź, hala 2', 'whole', 'Łódź, hala 2.slabtooth'],
    ['...', 'whole', 'job.slabtooth'],
    ['  ', 'whole', 'job.slabtooth'],
  ] as const)('%s, %s: %s', (name, copy, fileName) => {
    expect(fileNameFor(name, copy)).toBe(fileName);
  });
});

describe('a job file', () => {
  const images = new Map([['a'.repeat(64), { bytes: PICTURE, extension: 'png' as const }]]);
  function fileOf(bytes: Uint8Array, fileName = 'Invented hall.slabtooth') {
    const answer = readJobFile(bytes);
    if (!answer.ok) throw new Error(answer.fault);
    return { ...answer, fileName };
  }
  const whole = fileOf(writeJobFile(everyKind, new Map(), images));
  const crew = fileOf(writeCrewCopy(everyKind, new Map(), images));

  it('becomes a job, with where it came from as its last copy, and its pictures', async () => {
    expect(await sameJob(keep, whole.opened)).toBeNull();
    expect(await placeFile(keep, whole)).toEqual({ ok: true, id: 'job:a' });
    expect(await listJobs(keep)).toMatchObject([
      { id: 'job:a', name: 'Invented hall', invented: true, lastCopy: { fileName: 'Invented hall.slabtooth' } },
    ]);
    const job = await opened('job:a');
    expect(writeEnvelope(job.store.getState(), job.quarantine(), job.head)).toBe(writeEnvelope(everyKind, new Map()));
    expect((await job.image('a'.repeat(64)))?.size).toBe(PICTURE.length);
  });
  it('that is here already can come beside it, or take its place and leave it among the removed', async () => {
    await placeFile(keep, whole);
    const job = await opened('job:a');
    raise(job, 9);
    await job.close();
    const beside = await placeFile(keep, whole);
    expect(beside.ok && beside.id).not.toBe('job:a');
    expect(await sameJob(keep, whole.opened)).toMatchObject({ id: 'job:a' });
    expect(await replaceJob(keep, whole)).toEqual({ ok: true, id: 'job:a' });
    expect(level(await opened('job:a'))).toBe(0);

    const [replaced] = await listRemoved(keep);
    await takeBackJob(keep, replaced?.id ?? '');
    const back = await opened(replaced?.id ?? '');
    expect(level(back)).toBe(9);
    expect((await back.image('a'.repeat(64)))?.size).toBe(PICTURE.length);
  });
  it('does not replace a job that is open', async () => {
    await placeFile(keep, whole);
    await opened('job:a');
    expect(await replaceJob(keep, whole)).toEqual({ ok: false, fault: 'openElsewhere' });
  });
  it('without money never replaces the whole job, and comes beside it', async () => {
    await placeFile(keep, whole);
    expect(await replaceJob(keep, crew)).toEqual({ ok: false, fault: 'crewCopyForWhole' });
    expect(await placeFile(keep, crew)).toMatchObject({ ok: true });
    expect((await listJobs(keep)).map(({ copy }) => copy).toSorted((a, b) => (a < b ? -1 : 1))).toEqual([
      'crew',
      'whole',
    ]);
  });
  it('of a newer app opens read-only and is never written', async () => {
    const newer = { ...whole, opened: { ...whole.opened, head: { version: 9, minReader: 9, copy: 'whole' as const } } };
    await placeFile(keep, newer);
    const job = await opened('job:a');
    expect(job.readOnly()).toBe('newerFile');
    expect(() => raise(job, 1)).toThrow('newerFile');
    expect(
      JSON.parse((await keep.database().then((db) => db.get('snapshots', 'job:a')))?.envelope ?? '{}'),
    ).toMatchObject({ version: 9 });
  });
  it('without a job record gets one named after the file', async () => {
    const doc = new Map([...everyKind].filter(([id]) => id !== 'job:a'));
    const answer = await placeFile(keep, fileOf(writeJobFile(doc, new Map(), images), 'Found.slabtooth'));
    const job = await opened(answer.ok ? answer.id : '');
    expect(recordsOf(job.store.getState(), 'job')).toMatchObject([{ name: 'Found' }]);
  });
});

describe('a second tab', () => {
  it('where leases stand in for locks, follows, and takes over when the first is closed', async () => {
    const plain = await openKeep({ name: keep.name, now: () => Date.now(), locks: null });
    const id = await makeJob();
    const first = await opened(id, plain);
    expect(first.readOnly()).toBeNull();
    const second = await opened(id, plain);
    expect(second.readOnly()).toBe('otherTab');
    expect(second.store.undo()).toBeNull();
    raise(first, 4);
    await expect.poll(() => level(second)).toBe(4);
    await first.close();
    await expect.poll(() => second.readOnly(), { timeout: 5000 }).toBeNull();
    raise(second, 5);
    await second.flush();
    expect(second.saveState()).toEqual({ at: 'saved' });
    await second.close();
    await plain.close();
  });
  it('that slept past its lease does not write over the one that took it', async () => {
    const plain = await openKeep({ name: keep.name, now: () => Date.now(), locks: null });
    const id = await makeJob();
    const first = await opened(id, plain);
    const db = await plain.database();
    await db.put('leases', { job: id, holder: 'tab:other', until: Date.now() + 3500 });
    raise(first, 4);
    await first.flush();
    expect(first.saveState()).toMatchObject({ at: 'notSaved', fault: 'takenOver', waiting: 1 });
    expect(level(first)).toBe(4);
    // The other lets it lapse: what waited is written after all.
    await expect.poll(() => first.saveState().at, { timeout: 15_000 }).toBe('saved');
    await plain.close();
  });
});

describe('a browser without a database', () => {
  it('still lets people work, says that nothing is kept, and saves as a file', async () => {
    const nothing = keepNothing(() => clock);
    const start = startOfJob(nothing, { name: 'Hall', units: 'metric', floorName: 'Ground floor' });
    const job = await jobInMemory(nothing, start.id, start.opened);
    const hash = job.addImage(PICTURE) ?? '';
    raise(job, 2);
    await job.flush();
    expect(job.saveState()).toMatchObject({ at: 'notSaved', fault: 'noDatabase' });
    expect((await readBack(job)).opened.doc.size).toBe(2);
    expect((await job.image(hash))?.size).toBe(PICTURE.length);
    expect(await job.close()).toBe(false);
    // Still open, as it was.
    raise(job, 3);
    expect(level(job)).toBe(3);
    await job.copySaved(await job.writeFile());
    expect(await job.close()).toBe(true);
    expect(await openJob(nothing, start.id)).toMatchObject({ ok: false, fault: 'readFailed' });
  });
});
