import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { App } from '../../src/app/App.tsx';
import { closeJob, theKeep, useKept } from '../../src/app/jobs/kept.ts';
import { keepNothing } from '../../src/app/keep/database.ts';
import { listJobs, newJob, removeJob, renameJob, startOfJob } from '../../src/app/keep/jobList.ts';
import { jobInMemory } from '../../src/app/keep/openJob.ts';
import { openNow, planStoreNow, run } from '../../src/app/plan.ts';
import { session, showFloor } from '../../src/app/session.ts';
import { cellsFor, recordsOf } from '../../src/model/doc.ts';
import type { Page } from '../../src/model/records/page.ts';

/** Jobs opened and left as the screen does it: the list, the keeper and the session together, in a real database. */
const FIELDS = { units: 'metric', floorName: 'Ground floor' } as const;
let root: Root;

/** The browser answers every write as it does on a full disk, until the answer is called. */
function fillDisk(): () => void {
  const proper = Object.getOwnPropertyDescriptor(IDBDatabase.prototype, 'transaction')!;
  const transaction = proper.value as IDBDatabase['transaction'];
  IDBDatabase.prototype.transaction = function full(this: IDBDatabase, ...args) {
    if (args[1] === 'readwrite') throw new DOMException('Quota exceeded', 'QuotaExceededError');
    return transaction.apply(this, args);
  };
  return () => Object.defineProperty(IDBDatabase.prototype, 'transaction', proper);
}
let room: () => void = () => undefined;

beforeEach(async () => {
  await page.viewport(1440, 900);
  document.body.innerHTML = '<div id="root"></div><div id="overlays" role="region" aria-label="Opened list"></div>';
  root = createRoot(document.getElementById('root')!);
});

afterEach(async () => {
  room();
  room = () => undefined;
  await closeJob(true);
  root.unmount();
  const keep = await theKeep();
  const jobs = await listJobs(keep);
  await Promise.all(jobs.map(({ id }) => removeJob(keep, id)));
});

async function makeJob(name: string): Promise<string> {
  const made = await newJob(await theKeep(), { ...FIELDS, name });
  if (!made.ok) throw new Error(made.fault);
  return made.id;
}

const nameRecord = () => recordsOf(planStoreNow().getState(), 'job')[0]!;
const rename = (value: string): boolean => run('setField', { id: nameRecord().id, slot: 'name', value });
const row = (name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) });

describe('a tap too many', () => {
  test('on a job opens it once, for writing', async () => {
    await makeJob('Hall');
    root.render(<App />);
    await expect.element(row('Hall')).toBeVisible();
    const button = row('Hall').element() as HTMLButtonElement;
    button.click();
    button.click();
    await expect.poll(() => openNow()).not.toBeNull();
    expect(openNow()?.readOnly).toBeNull();
    expect(rename('Hall B')).toBe(true);
    // No second one waits behind it for the right to write.
    await closeJob();
    await row('Hall B').click();
    await expect.poll(() => openNow()).not.toBeNull();
    expect(openNow()?.readOnly).toBeNull();
  });
  test('on New job makes one', async () => {
    root.render(<App />);
    await expect.element(page.getByRole('button', { name: 'New job', exact: true })).toBeVisible();
    const button = page.getByRole('button', { name: 'New job', exact: true }).element() as HTMLButtonElement;
    button.click();
    button.click();
    await expect.poll(() => openNow()).not.toBeNull();
    expect(await listJobs(await theKeep())).toHaveLength(1);
  });
});

describe('on a full disk', () => {
  test('a job stays on the screen with its edits, and offers to save a file, until it is left on purpose', async () => {
    await makeJob('Hall');
    root.render(<App />);
    await row('Hall').click();
    await expect.poll(() => openNow()).not.toBeNull();
    room = fillDisk();
    expect(rename('Hall B')).toBe(true);
    await page.getByRole('button', { name: /^Hall B, Ground floor/ }).click();
    await page.getByRole('menuitem', { name: 'All jobs' }).click();
    const dialog = page.getByRole('dialog', { name: 'Not all of this job is kept' });
    await expect.element(dialog).toBeVisible();
    await expect.element(dialog).toHaveTextContent('the disk is full');
    await expect.element(dialog.getByRole('button', { name: 'Save file' })).toBeVisible();
    await dialog.getByRole('button', { name: 'Stay here' }).click();
    expect(nameRecord().name).toBe('Hall B');
    expect(rename('Hall C')).toBe(true);

    // Once there is room again it is written and may be left.
    room();
    await useKept.getState().job?.flush();
    await closeJob();
    expect(openNow()).toBeNull();
    expect((await listJobs(await theKeep())).map(({ name }) => name)).toEqual(['Hall C']);
  });
  test('what is left without its last edits says nothing any more of the next job', async () => {
    await makeJob('First');
    await makeJob('Second');
    root.render(<App />);
    await row('First').click();
    await expect.poll(() => openNow()).not.toBeNull();
    const first = useKept.getState().job!;
    room = fillDisk();
    rename('First B');
    await first.flush();
    await closeJob(true);
    await row('Second').click();
    await expect.poll(() => openNow()).not.toBeNull();
    await first.flush();
    expect(useKept.getState().save).toEqual({ at: 'saved' });
  });
  test('a file saved counts though the list cannot be told; a name that was not kept is not said to be', async () => {
    const id = await makeJob('Hall');
    root.render(<App />);
    await row('Hall').click();
    await expect.poll(() => openNow()).not.toBeNull();
    const job = useKept.getState().job!;
    room = fillDisk();
    rename('Hall B');
    await job.flush();
    await job.copySaved(await job.writeFile());
    await closeJob();
    expect(openNow()).toBeNull();
    expect(await renameJob(await theKeep(), id, 'Hall C')).toEqual({ ok: false, fault: 'diskFull' });
  });
  test('a job that did not fit is in the list as soon as there is room', async () => {
    const keep = await theKeep();
    room = fillDisk();
    const { id, opened } = startOfJob(keep, { ...FIELDS, name: 'Hall' });
    const job = await jobInMemory(keep, id, opened);
    await job.flush();
    expect(job.saveState()).toMatchObject({ at: 'notSaved', fault: 'diskFull' });
    expect(await job.close()).toBe(false);
    room();
    await job.flush();
    expect(await job.close()).toBe(true);
    expect((await listJobs(keep)).map(({ name }) => name)).toEqual(['Hall']);
  });
});

describe('a page whose picture is not there', () => {
  const lacking: Page = {
    floor: 'floor:a',
    name: 'Level 1.png',
    image: 'f'.repeat(64),
    widthPx: 100,
    heightPx: 100,
    origin: [0, 0],
    guessMmPerPx: 1,
    dimensions: [],
  };
  test('is said when the job is opened, and the file says that it lacks it', async () => {
    const keep = await theKeep();
    const made = await newJob(keep, {
      ...FIELDS,
      name: 'Hall',
      floor: 'floor:a',
      more: cellsFor('page:a', lacking),
    });
    expect(made.ok).toBe(true);
    root.render(<App />);
    await row('Hall').click();
    await expect.element(page.getByText(/The picture of "Level 1.png" is not in this browser/)).toBeVisible();
    const file = await useKept.getState().job?.writeFile();
    expect(file?.missingImages).toEqual([lacking.image]);
  });
});

test('a job that nothing keeps says so before the first edit', async () => {
  const nothing = keepNothing();
  const { id, opened } = startOfJob(nothing, { ...FIELDS, name: 'Hall' });
  const fresh = await jobInMemory(nothing, id, opened);
  await fresh.flush();
  expect(fresh.saveState()).toMatchObject({ at: 'notSaved', fault: 'noDatabase' });
  expect(await fresh.close()).toBe(false);
  await fresh.close(true);
  // A file that was only looked at is on file.
  const looked = await jobInMemory(nothing, id, opened, new Map());
  await looked.flush();
  expect(await looked.close()).toBe(true);
});

describe('two floors', () => {
  test('have each their own numbers, also where no plan is drawn; none while they are worked out', async () => {
    await makeJob('Hall');
    root.render(<App />);
    await row('Hall').click();
    await expect.poll(() => openNow()).not.toBeNull();
    const ground = recordsOf(planStoreNow().getState(), 'floor')[0]!;
    const corner = (x: number, y: number): [number, number] => [x, y];
    const slab = (floor: string, width: number): boolean =>
      run('drawSlab', {
        id: `slab:${width}`,
        floor,
        ring: [corner(0, 0), corner(width, 0), corner(width, 2000), corner(0, 2000)],
      });
    const sheet = (): string => document.querySelector('main')?.innerHTML ?? '';
    expect(run('newFloor', { id: 'floor:up', name: 'Upper floor' })).toBe(true);
    expect(slab(ground.id, 7000)).toBe(true);
    expect(slab('floor:up', 3000)).toBe(true);
    const netFloor = (): string => page.getByRole('region', { name: 'Totals of this floor' }).element().textContent;
    await expect.poll(netFloor, { timeout: 10_000 }).toContain('14.00');
    showFloor('floor:up');
    await expect.poll(netFloor).not.toContain('14.00');
    await expect.poll(netFloor, { timeout: 5000 }).toContain('6.00');

    // Crew shows paper, not the plan: its floor is measured all the same.
    await page.getByRole('tab', { name: 'Crew' }).click();
    expect(session().stage).toBe('crew');
    await expect.poll(sheet, { timeout: 5000 }).toContain('6.00');
    showFloor(ground.id);
    await expect.poll(sheet, { timeout: 5000 }).toContain('14.00');
  });
});
