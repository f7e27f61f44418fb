// npm run bench [-- WORD]: runs every bench/*.ts whose name holds WORD and prints what it measured.
// Times of one table may be compared with each other, never with those of another machine.
import { existsSync, readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { importBundled } from './bundleEntry.mjs';
import { ensureDeps } from './deps.mjs';
import { ROOT } from './runTool.mjs';

/** @typedef {{ readonly what: string, readonly size: number, readonly run: () => unknown }} Measure */

const RUNS = 15;
const BUDGET_MS = 4000;

/**
 * Median and fastest of up to 15 runs after a warm-up, or of as many as fit in four seconds.
 * @param {() => unknown} run
 */
async function timed(run) {
  await run();
  /** @type {number[]} */
  const times = [];
  const stopAt = performance.now() + BUDGET_MS;
  while (times.length < RUNS && (times.length < 3 || performance.now() < stopAt)) {
    const start = performance.now();
    // Runs are measured one at a time.
    // oxlint-disable-next-line no-await-in-loop
    await run();
    times.push(performance.now() - start);
  }
  const sorted = times.toSorted((a, b) => a - b);
  return { medianMs: sorted[Math.floor(sorted.length / 2)] ?? NaN, fastestMs: sorted[0] ?? NaN, runs: sorted.length };
}

await ensureDeps();
const word = process.argv[2] ?? '';
const folder = join(ROOT, 'bench');
const names = existsSync(folder)
  ? readdirSync(folder).filter((name) => name.endsWith('.ts') && name.includes(word))
  : [];
if (names.length === 0) {
  console.log(
    word ? `No file in bench/ has "${word}" in its name.` : 'There is nothing to measure: bench/ holds no files.',
  );
  process.exit(word ? 1 : 0);
}

console.log(`Node ${process.versions.node}, ${cpus().length} x ${cpus()[0]?.model.trim() ?? 'unknown processor'}`);
for (const name of names) {
  // oxlint-disable-next-line no-await-in-loop
  const { measures } = await importBundled(`bench/${name}`);
  if (!Array.isArray(measures)) throw new Error(`bench/${name} exports no list named measures.`);
  console.log(`\n${name}`);
  for (const measure of /** @type {Measure[]} */ (measures)) {
    // oxlint-disable-next-line no-await-in-loop
    const { medianMs, fastestMs, runs } = await timed(measure.run);
    const times = `median ${medianMs.toFixed(2)} ms, fastest ${fastestMs.toFixed(2)} ms, ${runs} runs`;
    console.log(`  ${measure.what}, size ${measure.size}: ${times}`);
  }
}
