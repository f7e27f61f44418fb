import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';

const WORKER = 'sw.js';

/** Every file of the built folder, as addresses relative to it, in a fixed order. */
function builtFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((file) => file !== WORKER && !file.endsWith('.map'))
    .toSorted();
}

function contentHash(folder: string, files: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of files) hash.update(`${file}\0`).update(readFileSync(join(folder, file)));
  return hash.digest('hex').slice(0, 16);
}

/**
 * Writes into the built service worker which files make up the app and a hash of all their contents.
 * A page is listed by its folder ('./'), since some hosts redirect 'index.html' and a redirected answer
 * may not be served to a navigation.
 */
export function offlineShell(): Plugin {
  let base = './';
  return {
    name: 'slabtooth-offline-shell',
    apply: 'build',
    configResolved(config) {
      base = config.base;
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      handler(options) {
        const folder = options.dir;
        if (!folder) throw new Error('The offline shell needs the folder that the build writes to.');
        const files = builtFiles(folder);
        const path = join(folder, WORKER);
        const worker = readFileSync(path, 'utf8');
        const shell = files.map((file) => (file === 'index.html' ? base : base + file));
        const filled = worker
          .replace('__SHELL_FILES__', () => JSON.stringify(shell))
          .replace('__SHELL_HASH__', () => JSON.stringify(contentHash(folder, files)));
        if (!files.includes('index.html') || /__SHELL_|^\s*(import|export)\b/m.test(filled)) {
          throw new Error(`${WORKER} came out of the build in a form that a browser would not accept.`);
        }
        writeFileSync(path, filled);
      },
    },
  };
}
