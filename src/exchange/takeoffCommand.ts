import { recordsOf, type Doc, type Held } from '../model/doc.ts';
import { takeoff } from '../takeoff/takeoff.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { jobFileFault } from '../words/jobWords.ts';
import { takeoffCsv } from './csv.ts';
import { readJobFile } from './jobFile.ts';
import { takeoffText } from './takeoffText.ts';
import { wholeJobJson, wholeJobText } from './wholeJob.ts';
import { workingText } from './workingText.ts';

/** What the command needs of the world outside. */
export interface CommandIo {
  readFile(path: string): Promise<Uint8Array>;
  out(text: string): void;
  err(text: string): void;
}

const USAGE = 'npm run takeoff -- FILE.slabtooth [--why | --json | --csv]\n';

/**
 * The takeoff of a saved job without a browser: the same engine as on screen, as a table in text, with the
 * working of every line, as JSON or as CSV.
 * Answers the exit code: 0, or 1 with a sentence that says what is wrong and what to do.
 */
export async function runTakeoffCommand(argv: readonly string[], io: CommandIo): Promise<number> {
  const flags = argv.filter((arg) => arg.startsWith('-'));
  const [file, more] = argv.filter((arg) => !arg.startsWith('-'));
  if (file === undefined || more !== undefined || flags.length > 1 || flags.some((flag) => !FORMATS.has(flag))) {
    io.err(`Name one job file and at most one format.\n${USAGE}`);
    return 1;
  }
  const bytes = await read(file, io);
  if (!bytes) return 1;
  const job = readJobFile(bytes);
  if (!job.ok) {
    io.err(`${jobFileFault(job.fault, file, job.what)}\n`);
    return 1;
  }
  const { doc, quarantine } = job.opened;
  if (quarantine.size > 0) io.err(`${quarantine.size} records of this job cannot be read and are not counted.\n`);
  const show = FORMATS.get(flags[0] ?? '') ?? FORMATS.get('');
  io.out(show?.(doc) ?? '');
  return 0;
}

async function read(file: string, io: CommandIo): Promise<Uint8Array | null> {
  try {
    return await io.readFile(file);
  } catch {
    io.err(`There is no file to read at "${file}": check its name and folder.\n`);
    return null;
  }
}

interface OfFloor {
  readonly floor: Held<'floor'>;
  readonly of: Takeoff;
}

function floorsOf(doc: Doc): OfFloor[] {
  return recordsOf(doc, 'floor').map((floor) => ({ floor, of: takeoff(doc, floor.id) }));
}

const currencyOf = (doc: Doc): string => recordsOf(doc, 'job')[0]?.currency ?? 'USD';

const FORMATS: ReadonlyMap<string, (doc: Doc) => string> = new Map([
  ['', asText],
  ['--why', asWorking],
  ['--csv', asCsv],
  ['--json', asJson],
]);

function asText(doc: Doc): string {
  const job = recordsOf(doc, 'job')[0];
  const title = [job?.name ?? 'Job', ...(job?.invented ? ['(invented)'] : [])].join(' ');
  const floors = floorsOf(doc).map(({ floor, of }) => `${floor.name}\n${takeoffText(doc, of, currencyOf(doc))}`);
  const whole = wholeJobText(doc);
  return [`${title}\n`, ...floors, ...(whole === '' ? [] : [whole])].join('\n');
}

function asWorking(doc: Doc): string {
  return floorsOf(doc)
    .map(({ floor, of }) => `${floor.name}\n\n${workingText(doc, of)}`)
    .join('\n');
}

function asCsv(doc: Doc): string {
  const floors = floorsOf(doc);
  const tables = floors.map(({ floor, of }) => {
    const table = takeoffCsv(doc, of, currencyOf(doc));
    return floors.length === 1 ? table : `${floor.name}\r\n${table}`;
  });
  return `${tables.join('\r\n\r\n')}\r\n`;
}

/** Lines with their working; regions of the measure are left out, they are for drawing. */
function asJson(doc: Doc): string {
  const floors = floorsOf(doc).map(({ floor, of }) => ({
    floor: floor.id,
    name: floor.name,
    blocked: of.blocked,
    notAnOffer: of.notAnOffer,
    ...(of.missingPrices.length > 0 ? { missingPrices: of.missingPrices } : {}),
    notices: of.notices,
    holds: of.holds,
    faults: of.faults,
    lines: of.lines,
  }));
  const wholeJob = wholeJobJson(doc);
  const job = recordsOf(doc, 'job')[0];
  const said = { job: job?.name ?? null, currency: job?.currency ?? null, floors, ...(wholeJob ? { wholeJob } : {}) };
  return `${JSON.stringify(said, null, 2)}\n`;
}
