// npm test: every gate, every test, and plans that are hard to measure. What follows `--` goes to vitest, and then the
// plans are left out (npm test -- --project unit).
// The last line, `N passed, N failed`, is for machines: a failed gate counts as a failure, so it never says 0 wrongly.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureChromium } from './chromium.mjs';
import { ensureDeps } from './deps.mjs';
import { runFuzz } from './fuzz.mjs';
import { runGates } from './gates.mjs';
import { ROOT, runTool } from './runTool.mjs';

/** Each by the laws of tests/fuzz; `npm run fuzz` measures more. */
const FUZZ_PLANS = 20_010;
const REPORT = join(ROOT, '.cache', 'tests.json');

/**
 * @typedef {{ status: string, title: string }} OneTest
 * @typedef {{ name: string, status: string, message: string, assertionResults: OneTest[] }} OneFile
 */

/** Counts from vitest's report. A file that could not even be loaded has no tests in it and still is a failure. */
function countTests() {
  if (!existsSync(REPORT)) return { passed: 0, failed: 0, skipped: 0, found: false };
  /** @type {{ testResults: OneFile[] }} */
  const { testResults } = JSON.parse(readFileSync(REPORT, 'utf8'));
  const tests = testResults.flatMap((file) => file.assertionResults);
  /** @param {string} status */
  const having = (status) => tests.filter((test) => test.status === status).length;
  const broken = testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  const passed = having('passed');
  const failed = having('failed') + broken.length;
  return { passed, failed, skipped: tests.length - passed - having('failed'), found: tests.length > 0 };
}

async function fuzzStage() {
  console.log('\n== fuzz');
  const { failed, broke } = await runFuzz(FUZZ_PLANS);
  const isGood = failed === 0 && !broke;
  return { passed: isGood ? 1 : 0, failed: failed + (broke ? 1 : 0) };
}

await ensureDeps();
process.env['CHROMIUM_PATH'] = ensureChromium();

const failedGates = await runGates();

console.log('\n== tests');
mkdirSync(join(ROOT, '.cache'), { recursive: true });
rmSync(REPORT, { force: true });
const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${REPORT}`];
const code = await runTool('vitest', ['run', '--config', 'config/vitest.ts', ...reporters, ...process.argv.slice(2)]);

const fuzz = process.argv.length > 2 ? null : await fuzzStage();
const tests = countTests();
// Errors outside any test end vitest badly with every test green; no tests at all is not a pass either.
const unexplained = tests.failed === 0 && (code !== 0 || !tests.found) ? 1 : 0;
if (unexplained) console.log('The test run itself failed: see above.');
if (failedGates.length > 0) console.log(`Failed gates: ${failedGates.join(' · ')}`);
if (tests.skipped > 0) console.log(`${tests.skipped} skipped`);
const failed = tests.failed + failedGates.length + unexplained + (fuzz?.failed ?? 0);
console.log(`${tests.passed + (fuzz?.passed ?? 0)} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
