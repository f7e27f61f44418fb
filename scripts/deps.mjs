// Installs the locked dependencies when they are missing or older than the lock. Needs only Node and its npm.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isMain, ROOT } from './runTool.mjs';

const MARK = join(ROOT, 'node_modules', '.installed');

function wanted() {
  const hash = createHash('sha256').update(readFileSync(join(ROOT, 'package-lock.json')));
  const nodeMajor = process.versions.node.split('.')[0];
  return `${hash.digest('hex')} ${process.platform}-${process.arch} node${nodeMajor}\n`;
}

/** The npm that belongs to this Node: its script when npm started us, else the command on the path. */
function npmCommand() {
  const script = process.env['npm_execpath'];
  if (script?.endsWith('.js')) return { file: process.execPath, first: [script], shell: false };
  return { file: 'npm', first: [], shell: process.platform === 'win32' };
}

/** @returns {Promise<number>} npm's exit code */
function install() {
  const npm = npmCommand();
  // --include=dev: with NODE_ENV=production npm would leave out the tools that build the app.
  const args = [...npm.first, 'ci', '--include=dev', '--no-audit', '--no-fund'];
  return new Promise((resolve, reject) => {
    const child = spawn(npm.file, args, { cwd: ROOT, stdio: ['inherit', 2, 2], shell: npm.shell });
    child.on('error', reject);
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/** Makes sure that node_modules is what package-lock.json says; ends the process with a sentence when it cannot be. */
export async function ensureDeps() {
  const now = wanted();
  if (existsSync(MARK) && readFileSync(MARK, 'utf8') === now) return;
  // All of it to stderr: what a command prints may be read by a program.
  console.error('Installing the locked dependencies.');
  const code = await install();
  if (code !== 0) {
    console.error('The dependencies could not be installed: see what npm says above, then run the same command again.');
    process.exit(1);
  }
  writeFileSync(MARK, now);
}

if (isMain(import.meta.url)) await ensureDeps();
