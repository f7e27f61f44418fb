// npm run takeoff -- FILE.slabtooth [--json | --csv]: the takeoff of a saved job, without a browser.
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { ensureDeps } from './deps.mjs';
import { importBundled } from './bundleEntry.mjs';

/**
 * What the command is given of the outside world.
 * @typedef {object} CommandIo
 * @property {(path: string) => Promise<Uint8Array>} readFile
 * @property {(text: string) => void} out
 * @property {(text: string) => void} err
 */

/** npm runs scripts in the project's folder; a file is named from where the person stands. */
const startedIn = process.env['INIT_CWD'] ?? process.cwd();

/** @type {CommandIo} */
const io = {
  readFile: (path) => readFile(resolve(startedIn, path)),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
};

// Whoever reads only the first lines (`| head`) has what they wanted.
process.stdout.on('error', (/** @type {NodeJS.ErrnoException} */ fault) => {
  if (fault.code !== 'EPIPE') throw fault;
  process.exit(0);
});

await ensureDeps();
const { runTakeoffCommand } = await importBundled('src/exchange/takeoffCommand.ts');
if (typeof runTakeoffCommand !== 'function') throw new TypeError('The takeoff command could not be read.');
process.exitCode = await runTakeoffCommand(process.argv.slice(2), io);
