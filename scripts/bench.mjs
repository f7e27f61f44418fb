// npm run bench [-- WORD]: runs every bench/*.bench.ts whose name holds WORD and prints what it measured.
// Such a file exports run(print), which calls print with each line.
// Times of one table may be compared with each other, never with those of another machine.
import { existsSync, readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { importBundled } from './bundleEntry.mjs';
import { ensureDeps } from './deps.mjs';
import { ROOT } from './runTool.mjs';

await ensureDeps();
const word = process.argv[2] ?? '';
const folder = join(ROOT, 'bench');
const names = existsSync(folder)
  ? readdirSync(folder).filter((name) => name.endsWith('.bench.ts') && name.includes(word))
  : [];
if (names.length === 0) {
  console.log(
    word ? `No file in bench/ has "${word}" in its name.` : 'There is nothing to measure: bench/ holds no *.bench.ts.',
  );
  process.exit(word ? 1 : 0);
}

console.log(`Node ${process.versions.node}, ${cpus().length} x ${cpus()[0]?.model.trim() ?? 'unknown processor'}`);
for (const name of names) {
  // oxlint-disable-next-line no-await-in-loop
  const { run } = await importBundled(`bench/${name}`);
  if (typeof run !== 'function') throw new Error(`bench/${name} exports no function run.`);
  console.log(`\n${name}`);
  // oxlint-disable-next-line no-await-in-loop
  await run((/** @type {string} */ line) => console.log(`  ${line}`));
}
