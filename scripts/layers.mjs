// The layer gate: who may import whom (rules in config/layers.mjs). `node scripts/layers.mjs [FOLDER]` reads FOLDER/src.
// It also compares what it read with what lies on the disk: a reader that silently sees nothing would pass everything.
import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative, resolve, sep } from 'node:path';
import { layers } from '../config/layers.mjs';
import { ROOT } from './runTool.mjs';

// dependency-cruiser 17 has swc read every file as plain TypeScript and stops at the first JSX tag.
// So swc is told about .tsx here, before dependency-cruiser loads it.
/** @type {{ parseFileSync: (file: string, options: object) => unknown }} */
const swc = createRequire(import.meta.url)('@swc/core');
const parseFile = swc.parseFileSync;
swc.parseFileSync = (file, options) => parseFile(file, { ...options, tsx: file.endsWith('.tsx') });
const { cruise } = await import('dependency-cruiser');

const root = resolve(process.argv[2] ?? ROOT);

/** Source files on the disk, as paths from the root. */
function sourcesOnDisk() {
  return readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !entry.name.endsWith('.d.ts'))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'));
}

process.chdir(root);
const { output } = await cruise(['src'], {
  ...layers.options,
  ruleSet: { forbidden: layers.forbidden },
  validate: true,
});
if (typeof output === 'string') throw new Error('dependency-cruiser answered text where its result was expected.');

const read = output.modules.filter((module) => module.source.startsWith('src/'));
const seen = new Set(read.map((module) => module.source));
const unread = sourcesOnDisk().filter((file) => !seen.has(file));
const lines = read.reduce((sum, module) => sum + module.dependencies.length, 0);

for (const { rule, from, to, cycle } of output.summary.violations) {
  const way = cycle ? [from, ...cycle.map((step) => step.name)].join(' -> ') : `${from} -> ${to}`;
  console.log(`${rule.name}: ${way}`);
}
for (const file of unread) console.log(`not read: ${file}`);
console.log(`${seen.size} modules, ${lines} imports read; ${output.summary.violations.length} faults.`);

const looked = seen.size > 0 && unread.length === 0;
if (!looked) console.log('The layer gate did not see every source file, so it cannot pass.');
process.exit(looked && output.summary.violations.length === 0 ? 0 : 1);
