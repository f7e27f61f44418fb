import { spawn } from 'node:child_process';
import { readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's folder, wherever a script was started from. */
export const ROOT = fileURLToPath(new URL('..', import.meta.url));

/**
 * The script behind a tool's command. Started with our own Node, it works alike on every system
 * (on Windows the shims in node_modules/.bin need a shell).
 * @param {string} packageName
 * @param {string} [command] where it differs from the package's name
 */
export function toolPath(packageName, command = packageName) {
  const home = join(ROOT, 'node_modules', packageName);
  /** @type {{ bin: string | Record<string, string> }} */
  const { bin } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
  const script = typeof bin === 'string' ? bin : bin[command];
  if (!script) throw new Error(`Package ${packageName} has no command ${command}.`);
  return join(home, script);
}

/**
 * Runs Node on a script, showing its output, and answers its exit code.
 * @param {readonly string[]} args
 * @param {{ env?: NodeJS.ProcessEnv, cwd?: string }} [options]
 * @returns {Promise<number>}
 */
export function runNode(args, options = {}) {
  const env = { ...process.env, ...options.env };
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, { stdio: 'inherit', cwd: options.cwd ?? ROOT, env });
    child.on('error', reject);
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/**
 * Runs a command of an installed package.
 * @param {string} packageName
 * @param {readonly string[]} args
 * @param {{ command?: string, env?: NodeJS.ProcessEnv }} [options]
 */
export function runTool(packageName, args, options = {}) {
  const { command, ...rest } = options;
  return runNode([toolPath(packageName, command), ...args], rest);
}

/**
 * True when this file was started by Node itself and not imported.
 * @param {string} url import.meta.url
 */
export function isMain(url) {
  const started = process.argv[1];
  // Node follows links in the address of a module and not in its arguments.
  return started !== undefined && fileURLToPath(url) === realpathSync(started);
}
