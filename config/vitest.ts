import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { CHROMIUM_FLAGS, findChromium } from '../scripts/chromium.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const executablePath = findChromium();

export default defineConfig({
  root,
  plugins: [react()],
  cacheDir: 'node_modules/.vite-tests',
  test: {
    projects: [
      {
        // Pure code, in plain Node. Gates plant faults and see that they are reported.
        extends: true,
        test: {
          name: 'unit',
          testTimeout: 20_000,
          environment: 'node',
          include: ['tests/{unit,property,golden,reference,gates,fuzz}/**/*.test.ts'],
        },
      },
      {
        // What needs a real canvas, worker or database, in a real Chromium.
        extends: true,
        // Read all of the app up front: a package found half-way through a run would reload the page under a test.
        optimizeDeps: {
          entries: ['src/**/*.{ts,tsx}', '!src/app/offline/serviceWorker.ts', 'tests/browser/**/*.{ts,tsx}'],
        },
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.{ts,tsx}'],
          testTimeout: 20_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({
              launchOptions: { args: CHROMIUM_FLAGS, ...(executablePath ? { executablePath } : {}) },
            }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        // The built app, driven from outside as a person would.
        extends: true,
        test: {
          name: 'e2e',
          environment: 'node',
          include: ['tests/e2e/**/*.test.ts'],
          globalSetup: ['config/e2e.ts'],
          fileParallelism: false,
          // A busy machine takes its time; what never comes is still found out.
          expect: { poll: { timeout: 10_000 } },
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
