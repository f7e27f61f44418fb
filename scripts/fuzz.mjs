// npm run fuzz [-- COUNT [FIRST_SEED [FAMILY]]]: measures that many degenerate plans (100,000 unless told) and looks at
// each by the laws of tests/fuzz. A failure is printed as family and seed, which make the plan again.
// npm run fuzz -- smallest FAMILY SEED [LAW]: what that plan breaks, and the smallest plan that still does.
// Two processes share the work; each is this script with FUZZ_SHARE set.
import { availableParallelism } from 'node:os';
import { importBundled } from './bundleEntry.mjs';
import { ensureDeps } from './deps.mjs';
import { runNode } from './runTool.mjs';

const load = async () =>
  /** @type {typeof import('../tests/fuzz/fuzzShare.ts')} */ (
    /** @type {unknown} */ (await importBundled('tests/fuzz/fuzzShare.ts'))
  );
const print = (/** @type {string} */ line) => console.log(line);

if (process.argv[2] === 'smallest') {
  await ensureDeps();
  const { smallestPlans } = await load();
  const [, , , name = '', seed, law] = process.argv;
  process.exit((await smallestPlans(name, Number(seed), law, print)) === 0 ? 0 : 1);
}

const [count = 100_000, firstSeed = 0] = process.argv.slice(2, 4).map(Number);
const family = process.argv[4];
const share = process.env['FUZZ_SHARE'];

if (!Number.isInteger(count) || count < 1 || !Number.isInteger(firstSeed) || firstSeed < 0) {
  console.log('Say how many plans, from which seed and of which family: npm run fuzz -- 1000 0 slivers');
  process.exit(2);
}

if (share === undefined) {
  await ensureDeps();
  const workers = Math.max(1, Math.min(availableParallelism(), 8));
  const started = performance.now();
  const codes = await Promise.all(
    Array.from({ length: workers }, (_, i) =>
      runNode(['scripts/fuzz.mjs', ...process.argv.slice(2)], { env: { FUZZ_SHARE: `${i} ${workers}` } }),
    ),
  );
  const isGood = codes.every((code) => code === 0);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${count} plans in ${seconds} s: ${isGood ? 'every law held' : 'see the failures above'}`);
  process.exit(isGood ? 0 : 1);
}

const [own = 0, workers = 1] = share.split(' ').map(Number);
const { fuzzShare } = await load();
const failed = await fuzzShare({ count, firstSeed, family, share: own, shares: workers }, print);
process.exit(failed === 0 ? 0 : 1);
