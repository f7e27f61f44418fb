// The static gates: what can be told about the code without running it. Every gate runs, even when one before it fails.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { isMain, ROOT, runNode, runTool } from './runTool.mjs';

const CHECKED = ['src', 'tests', 'scripts', 'config', 'bench', 'demo', 'vite.config.ts'];

/** @param {readonly string[]} paths */
const present = (paths) => paths.filter((path) => existsSync(join(ROOT, path)));

/** Every config but the shared base. A tsc run on a config that only holds references checks nothing, so each has its own gate. */
const typeConfigs = readdirSync(join(ROOT, 'config')).filter((name) => /^tsconfig\.(?!base\.).+\.json$/.test(name));

/** @param {string} config */
const typeGate = (config) => ({
  name: `types (${config})`,
  run: () => runTool('typescript', ['-p', `config/${config}`, '--noEmit'], { command: 'tsc' }),
});

/** @type {readonly { readonly name: string, readonly run: () => Promise<number> }[]} */
const GATES = [
  { name: 'format', run: () => runTool('oxfmt', ['--check', ...present(CHECKED)]) },
  {
    name: 'lint',
    run: () => runTool('oxlint', ['--deny-warnings', ...present(CHECKED)]),
  },
  ...typeConfigs.map(typeGate),
  { name: 'layers', run: () => runNode(['scripts/layers.mjs']) },
  { name: 'unused', run: () => runTool('knip', ['--config', 'config/knip.json', '--no-progress']) },
];

/** Runs all static gates and answers the names of those that failed. */
export async function runGates() {
  /** @type {string[]} */
  const failed = [];
  for (const gate of GATES) {
    console.log(`\n== ${gate.name}`);
    // One after the other: their outputs must not mix.
    // oxlint-disable-next-line no-await-in-loop
    const code = await gate.run();
    if (code !== 0) failed.push(gate.name);
  }
  return failed;
}

if (isMain(import.meta.url)) {
  const failed = await runGates();
  console.log(failed.length === 0 ? '\nAll static gates passed.' : `\nFailed: ${failed.join(' · ')}`);
  process.exit(failed.length === 0 ? 0 : 1);
}
