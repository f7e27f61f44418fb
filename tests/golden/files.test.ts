import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openEnvelope, VERSION, writeEnvelope } from '../../src/model/envelope.ts';
import { steps, type Step } from '../../src/model/migrations/steps.ts';
import { everyKind } from '../support/everyKind.ts';

/** Every version ever shipped, as it was saved: `version-N.job.json`. Such a file is never written again. */
const FOLDER = join(import.meta.dirname, 'files');
const NAME = /^version-(\d+)\.job\.json$/;

interface Saved {
  readonly version: number;
  readonly text: string;
}
function savedFiles(): Saved[] {
  return readdirSync(FOLDER)
    .filter((name) => NAME.test(name))
    .map((name) => ({ version: Number(NAME.exec(name)?.[1]), text: readFileSync(join(FOLDER, name), 'utf8') }));
}

// `npm run golden` saves the sample of a new version, once; it does not touch what is there.
if (process.env['UPDATE_GOLDEN'] && !savedFiles().some(({ version }) => version === VERSION)) {
  writeFileSync(join(FOLDER, `version-${VERSION}.job.json`), writeEnvelope(everyKind, new Map()));
}
const saved = savedFiles();

/** Steps that no saved file goes through. */
function stepsNeverRun(list: readonly Step[], files: readonly Saved[]): string[] {
  const ran = new Set(
    files.flatMap(({ text }) => {
      const opened = openEnvelope(JSON.parse(text), list);
      return opened.ok ? opened.migrated : [];
    }),
  );
  return list.map((step) => step.name).filter((name) => !ran.has(name));
}

describe('saved files of every version', () => {
  it('are here, from the first to the one we write', () => {
    expect(saved.map(({ version }) => version).toSorted((a, b) => a - b)).toEqual(
      Array.from({ length: VERSION }, (_, index) => index + 1),
    );
  });
  it.each(saved)('version $version opens with nothing kept aside and nothing broken', ({ version, text }) => {
    const opened = openEnvelope(JSON.parse(text));
    expect(opened).toMatchObject({
      ok: true,
      readOnly: false,
      broken: [],
      migrated: steps.filter((step) => step.to > version).map((step) => step.name),
    });
    expect(opened.ok && opened.quarantine.size).toBe(0);
    expect(opened.ok && opened.doc.size).toBeGreaterThan(30);
  });
  it.each(saved.filter(({ version }) => version === VERSION))(
    'version $version is written back byte for byte',
    ({ text }) => {
      const opened = openEnvelope(JSON.parse(text));
      expect(opened.ok && writeEnvelope(opened.doc, opened.quarantine, opened.head)).toBe(text);
    },
  );
});

describe('migrations', () => {
  it('have each been run on a saved file', () => {
    expect(stepsNeverRun(steps, saved)).toEqual([]);
  });
  it('that no file goes through would be reported: the check can fail', () => {
    const planted: Step = { to: VERSION + 1, name: 'planted', up: (records) => records };
    expect(stepsNeverRun([...steps, planted], [])).toContain('planted');
    expect(stepsNeverRun([...steps, planted], saved)).toEqual([]);
  });
});
