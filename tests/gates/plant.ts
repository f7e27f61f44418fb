// A gate that finds nothing must prove it looked: these helpers plant a fault in a small copy and run the real gate on it.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { ROOT, toolPath } from '../../scripts/runTool.mjs';

/** What a gate said, and how it ended. */
export interface GateAnswer {
  readonly code: number | null;
  readonly text: string;
}

const CONFIGS = ['config', '.oxlintrc.json', '.oxfmtrc.json', 'tsconfig.json', 'package.json'];

/**
 * Lays out a small project with the real configs and the given files, and answers its folder. It lies outside the
 * project, where no normal run and no .gitignore of ours reaches, and is gone when the test is done.
 */
export function plant(files: Readonly<Record<string, string>>): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'slabtooth-gate-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'), 'junction');
  for (const config of CONFIGS) cpSync(join(ROOT, config), join(folder, config), { recursive: true });
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

function run(folder: string, args: readonly string[]): GateAnswer {
  const done = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' });
  return { code: done.status, text: done.stdout + done.stderr };
}

export function runLayers(folder: string): GateAnswer {
  return run(folder, [join(ROOT, 'scripts', 'layers.mjs'), folder]);
}

export function runTypes(folder: string, config: 'pure' | 'worker' | 'ui'): GateAnswer {
  return run(folder, [toolPath('typescript', 'tsc'), '-p', `config/tsconfig.${config}.json`, '--noEmit']);
}

export function runLint(folder: string): GateAnswer {
  return run(folder, [toolPath('oxlint'), '--deny-warnings', 'src']);
}

export function runFormat(folder: string): GateAnswer {
  return run(folder, [toolPath('oxfmt'), '--check', 'src']);
}

export function runUnused(folder: string): GateAnswer {
  return run(folder, [toolPath('knip'), '--config', 'config/knip.json', '--no-progress']);
}
