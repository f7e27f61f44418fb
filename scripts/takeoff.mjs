// npm run takeoff -- FILE.slabtooth [--json | --csv]: the takeoff of a saved job, without a browser.
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { ensureDeps } from './deps.mjs';
import { importBundled } from './bundleEntry.mjs';
import { ROOT } from './runTool.mjs';

const ENTRY = 'src/exchange/takeoffCommand.ts';

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

await ensureDeps();
if (!existsSync(join(ROOT, ENTRY))) {
  console.error(`The takeoff command is not in this copy: ${ENTRY} is missing.`);
  process.exit(1);
}
const { runTakeoffCommand } = await importBundled(ENTRY);
if (typeof runTakeoffCommand !== 'function') throw new Error(`${ENTRY} does not export runTakeoffCommand.`);
process.exitCode = await runTakeoffCommand(process.argv.slice(2), io);
