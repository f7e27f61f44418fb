import { readJobFile } from '../../exchange/jobFile.ts';
import { jobInMemory } from '../keep/openJob.ts';
import { placeFile, replaceJob, sameJob, type OpenedFile } from '../keep/placeFile.ts';
import { newId } from '../plan.ts';
import { say } from '../session.ts';
import { jobFileFault, jobFileReports, jobText, placeFault } from '../../words/jobWords.ts';
import { isInMemory, openJobById, showKept, theKeep } from './kept.ts';

/** The file is a copy of a job that is here already: the person says which one goes on. */
export interface SameJob {
  readonly file: OpenedFile;
  readonly name: string;
  readonly id: string;
  readonly reports: string | null;
}

async function place(file: OpenedFile, how: 'new' | 'replace', reports: string | null): Promise<void> {
  const keep = await theKeep();
  try {
    const placed = how === 'new' ? await placeFile(keep, file) : await replaceJob(keep, file);
    if (!placed.ok) return say(placeFault[placed.fault]);
    await openJobById(placed.id);
  } catch {
    showKept(await jobInMemory(keep, newId('job'), file.opened, file.images));
  }
  if (reports) say(reports);
}

/** Reads a job file. A bad one is a sentence; one whose job is here already is a question. */
export async function openJobFile(fileName: string, bytes: Uint8Array): Promise<SameJob | null> {
  const read = readJobFile(bytes);
  if (!read.ok) {
    say(jobFileFault(read.fault, fileName, read.what));
    return null;
  }
  const file: OpenedFile = { opened: read.opened, images: read.images, fileName };
  const reports = jobFileReports(read.reports.map(({ code }) => code));
  const keep = await theKeep();
  if (isInMemory(keep)) {
    showKept(await jobInMemory(keep, newId('job'), file.opened, file.images));
    if (reports) say(reports);
    return null;
  }
  const same = await sameJob(keep, read.opened);
  if (same) return { file, name: same.name, id: same.id, reports };
  await place(file, 'new', reports);
  return null;
}

export function openAsNew({ file, reports }: SameJob): Promise<void> {
  return place(file, 'new', reports);
}

export function putInPlace({ file, reports }: SameJob): Promise<void> {
  return place(file, 'replace', reports);
}

/** The examples that come with the app are files like any other; opened again, the one that is here goes on. */
export async function openDemo(name: string): Promise<void> {
  try {
    const answer = await fetch(`./demo/${name}.slabtooth`);
    if (!answer.ok) throw new Error(String(answer.status));
    const same = await openJobFile(`${name}.slabtooth`, new Uint8Array(await answer.arrayBuffer()));
    if (same) await openJobById(same.id);
  } catch {
    say(jobText.demoFailed);
  }
}
