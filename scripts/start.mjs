// npm start: install what is locked, build, serve the built app on this machine. `npm start -- --lan` serves the network too.
import { networkInterfaces } from 'node:os';
import { ensureDeps } from './deps.mjs';
import { ROOT, runTool } from './runTool.mjs';

const FIRST_PORT = 4173;
const lan = process.argv.includes('--lan');

/** Addresses of this machine that another device on the same network can open. */
function lanAddresses() {
  const all = Object.values(networkInterfaces()).flatMap((entries) => entries ?? []);
  return all.filter((entry) => entry.family === 'IPv4' && !entry.internal).map((entry) => entry.address);
}

await ensureDeps();

const built = await runTool('vite', ['build', '--logLevel', 'warn'], { env: { NODE_ENV: 'production' } });
if (built !== 0) {
  console.error('The app could not be built: see the message above.');
  process.exit(built);
}

// Only now: before the install there was no vite to import.
const { preview } = await import('vite');
const server = await preview({
  root: ROOT,
  preview: { port: FIRST_PORT, strictPort: false, host: lan ? true : 'localhost' },
  logLevel: 'warn',
});
const address = server.httpServer.address();
const port = address !== null && typeof address === 'object' ? address.port : FIRST_PORT;
console.log(`Ready: http://localhost:${port}/`);
if (lan) {
  for (const host of lanAddresses()) console.log(`On this network: http://${host}:${port}/`);
  console.log(
    'A plain-http address lets a phone or tablet draw and save, but the browser gives it no offline use, no install and no copying of text: for those, put the dist folder on an https host.',
  );
}
console.log('Stop with Ctrl+C.');
