import { mkdirSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from './runTool.mjs';

/**
 * Bundles one TypeScript file for Node (which cannot run .ts before version 22) and imports the result.
 * @param {string} entry path from the project's folder
 * @returns {Promise<Record<string, unknown>>} what the file exports
 */
export async function importBundled(entry) {
  const { build } = await import('vite');
  const outDir = join(ROOT, '.cache', 'bundled');
  const name = `${basename(entry).replace(/\.tsx?$/, '')}-${process.pid}`;
  mkdirSync(outDir, { recursive: true });
  await build({
    root: ROOT,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    // What drives a browser or builds the app finds its own files beside itself.
    ssr: { noExternal: true, external: ['playwright', 'vite'] },
    build: {
      ssr: join(ROOT, entry),
      outDir,
      emptyOutDir: false,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: `${name}.mjs`, codeSplitting: false } },
    },
  });
  const bundle = join(outDir, `${name}.mjs`);
  try {
    return await import(pathToFileURL(bundle).href);
  } finally {
    rmSync(bundle, { force: true });
  }
}
