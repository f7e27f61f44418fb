import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { offlineShell } from './config/offlineShell.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  // Relative addresses: the built folder may lie anywhere on a host.
  base: './',
  plugins: [react(), offlineShell()],
  worker: { format: 'es' },
  build: {
    target: 'es2023',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1500,
    rolldownOptions: {
      input: { main: here('./index.html'), sw: here('./src/app/offline/serviceWorker.ts') },
      output: {
        // The browser looks for the worker under one lasting name; all else is named by its content.
        entryFileNames: (chunk) => (chunk.name === 'sw' ? 'sw.js' : 'assets/[name]-[hash].js'),
      },
      checks: { pluginTimings: false },
    },
  },
});
