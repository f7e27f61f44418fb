import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ROOT } from '../../scripts/runTool.mjs';

interface Manifest {
  readonly dependencies: Record<string, string>;
  readonly devDependencies: Record<string, string>;
}
interface Lock {
  readonly packages: Record<string, { readonly integrity?: string; readonly resolved?: string }>;
}

const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as Manifest;
const lock = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')) as Lock;

describe('packages', () => {
  test('are pinned to one exact version each', () => {
    const all = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(all.length).toBeGreaterThan(20);
    expect(all.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  test('are locked by checksum and not by a download address, for every system', () => {
    const locked = Object.entries(lock.packages).filter(([path]) => path !== '');
    expect(locked.filter(([, entry]) => !entry.integrity || entry.resolved !== undefined)).toEqual([]);
    const names = locked.map(([path]) => path).join('\n');
    for (const system of ['linux-x64', 'darwin-arm64', 'win32-x64']) expect(names).toContain(system);
  });

  test('run no scripts when installed', () => {
    expect(readFileSync(join(ROOT, '.npmrc'), 'utf8')).toMatch(/^ignore-scripts=true$/m);
  });
});
