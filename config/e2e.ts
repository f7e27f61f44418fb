import { join } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { ROOT, runTool } from '../scripts/runTool.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built app. */
    readonly appUrl: string;
  }
}

const OUT_DIR = join(ROOT, '.cache', 'e2e-app');

/** Builds the app aside from dist and serves it for the end-to-end tests. */
export default async function serveBuiltApp(project: TestProject): Promise<() => Promise<void>> {
  // A build inside vitest would be a development build: it runs as a process of its own, told that it is not a test.
  const env = { NODE_ENV: 'production', VITEST: '' };
  const code = await runTool('vite', ['build', '--outDir', OUT_DIR, '--emptyOutDir', '--logLevel', 'warn'], { env });
  if (code !== 0) throw new Error('The app could not be built for the end-to-end tests.');

  const server = await preview({
    root: ROOT,
    build: { outDir: OUT_DIR },
    preview: { port: 0, host: 'localhost' },
    logLevel: 'warn',
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('The preview server has no port.');
  project.provide('appUrl', `http://localhost:${address.port}/`);
  return () => server.close();
}
