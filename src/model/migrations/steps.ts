/**
 * The ordered list of what changed in the saved file. A step brings records from the version before it to `to`.
 * Numbers rise by one. A step imports nothing from live code: changing today's code must not change what an old file
 * means. There is no way down. Adding an optional field needs no step; renaming, splitting or a new meaning does,
 * with a saved sample of the version before it in tests/golden/files.
 */
export type RawFields = { readonly [slot: string]: unknown };
export type RawRecords = { readonly [id: string]: RawFields };

export interface Step {
  readonly to: number;
  readonly name: string;
  up(records: RawRecords): RawRecords;
}

/** The version that the first file had. */
export const FIRST_VERSION = 1;

/** Step to version 2 comes first: `import { to2 } from './0002-what-changed.ts'`. */
export const steps: readonly Step[] = [];

export function versionAfter(list: readonly Step[]): number {
  return list.at(-1)?.to ?? FIRST_VERSION;
}

/** Null when the numbers rise by one from the second version on, else what is wrong. Asked once, when the app starts. */
export function faultInSteps(list: readonly Step[]): string | null {
  const names = new Set<string>();
  for (const [index, step] of list.entries()) {
    const expected = FIRST_VERSION + index + 1;
    if (step.to !== expected) return `step ${step.name} leads to version ${step.to}, expected ${expected}`;
    if (names.has(step.name)) return `two steps are named ${step.name}`;
    names.add(step.name);
  }
  return null;
}

export interface Migrated {
  readonly records: RawRecords;
  /** Names of the steps that were run, in order. */
  readonly ran: readonly string[];
}

/** Runs the steps that a file of `version` has not seen. Throws what a step throws: the caller keeps the file as it was. */
export function migrate(records: RawRecords, version: number, list: readonly Step[] = steps): Migrated {
  const due = list.filter((step) => step.to > version);
  let now = records;
  for (const step of due) now = step.up(now);
  return { records: now, ran: due.map((step) => step.name) };
}
