// npm run fuzz [-- COUNT [FIRST_SEED [FAMILY]]]: measures that many degenerate plans (100,000 unless told) and looks at
// each by the laws of tests/fuzz. A failure is printed as family and seed, which make the plan again.
// npm run fuzz -- smallest FAMILY SEED [LAW]: what that plan breaks, and the smallest plan that still does.
// Processes share the work; each is this script with FUZZ_SHARE set. `npm test` runs its plans by `runFuzz`.
import { fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { importBundled } from './bundleEntry.mjs';
import { ensureDeps } from './deps.mjs';
import { isMain } from './runTool.mjs';

const load = async () =>
  /** @type {typeof import('../tests/fuzz/fuzzShare.ts')} */ (
    /** @type {unknown} */ (await importBundled('tests/fuzz/fuzzShare.ts'))
  );
const print = (/** @type {string} */ line) => console.log(line);

/**
 * Measures plans in a process for each core, two at least and eight at most.
 * @param {number} count
 * @param {number} [firstSeed]
 * @param {string} [family] all of them when it is left out
 * @returns {Promise<{ failed: number, broke: boolean }>} how many plans break a law, and whether a process ended badly
 */
export async function runFuzz(count, firstSeed = 0, family) {
  const workers = Math.max(2, Math.min(availableParallelism(), 8));
  const args = [String(count), String(firstSeed), ...(family === undefined ? [] : [family])];
  const started = performance.now();
  const shares = await Promise.all(
    Array.from({ length: workers }, (_, i) => runShare(args, { FUZZ_SHARE: `${i} ${workers}` })),
  );
  let failed = 0;
  for (const share of shares) failed += share ?? 0;
  const broke = shares.includes(null);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  const verdict = broke
    ? 'a process ended before its plans did, see above'
    : failed === 0
      ? 'every law held'
      : `${failed} plans break laws, see above`;
  print(`${count} plans in ${seconds} s: ${verdict}`);
  return { failed, broke };
}

/**
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} env
 * @returns {Promise<number | null>} how many plans of the share break a law; null when that never came to be known
 */
function runShare(args, env) {
  return new Promise((resolve, reject) => {
    const child = fork(fileURLToPath(import.meta.url), args, { env: { ...process.env, ...env } });
    /** @type {number | null} */
    let failed = null;
    child.on('message', (message) => {
      failed = Number(message);
    });
    child.on('error', reject);
    child.on('close', (code) => resolve(code === 0 ? failed : null));
  });
}

async function main() {
  if (process.argv[2] === 'smallest') {
    await ensureDeps();
    const { smallestPlans } = await load();
    const [, , , name = '', seed, law] = process.argv;
    return (await smallestPlans(name, Number(seed), law, print)) === 0;
  }

  const [count = 100_000, firstSeed = 0] = process.argv.slice(2, 4).map(Number);
  const family = process.argv[4];
  if (!Number.isInteger(count) || count < 1 || !Number.isInteger(firstSeed) || firstSeed < 0) {
    print('Say how many plans, from which seed and of which family: npm run fuzz -- 1000 0 slivers');
    return false;
  }

  const share = process.env['FUZZ_SHARE'];
  if (share === undefined) {
    await ensureDeps();
    const { failed, broke } = await runFuzz(count, firstSeed, family);
    return failed === 0 && !broke;
  }
  const [own = 0, shares = 1] = share.split(' ').map(Number);
  const { fuzzShare } = await load();
  const failed = await fuzzShare({ count, firstSeed, family, share: own, shares }, print);
  await new Promise((resolve) => process.send?.(failed, undefined, undefined, () => resolve(null)));
  return true;
}

if (isMain(import.meta.url)) process.exit((await main()) ? 0 : 1);
