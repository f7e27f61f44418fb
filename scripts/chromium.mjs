// Finds a Chromium for the browser tests, or says how to get one.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { isMain } from './runTool.mjs';

const KNOWN_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/opt/homebrew/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  `${process.env['LOCALAPPDATA'] ?? ''}\\Chromium\\Application\\chrome.exe`,
];

const isRoot = process.getuid?.() === 0;

/** Quiet, software-drawn, and without the sandbox only where it cannot work (root in a container). */
export const CHROMIUM_FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  ...(isRoot ? ['--no-sandbox'] : []),
];

/** Where Chromium is: CHROMIUM_PATH first, then the usual places; undefined when there is none. */
export function findChromium() {
  const told = process.env['CHROMIUM_PATH'];
  if (told) return existsSync(told) ? told : undefined;
  return KNOWN_PLACES.find((place) => existsSync(place));
}

/** @param {readonly string[]} args */
function aptGet(args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync('apt-get', args, { stdio: 'inherit', env }).status === 0;
}

/** Answers the path of a Chromium, installing Debian's when we are allowed to; else ends the process with one sentence. */
export function ensureChromium() {
  const found = findChromium();
  if (found) return found;
  const told = process.env['CHROMIUM_PATH'];
  if (!told && isRoot && existsSync('/usr/bin/apt-get')) {
    console.log('Installing Chromium from the system packages for the browser tests.');
    const installed =
      aptGet(['update']) && aptGet(['install', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation']);
    const fresh = installed ? findChromium() : undefined;
    if (fresh) return fresh;
  }
  console.error(
    told
      ? `CHROMIUM_PATH names ${told}, and there is no such file: set it to a Chromium, or unset it and install one (Debian: sudo apt-get install chromium).`
      : 'The browser tests need Chromium and none was found: install it (Debian and Ubuntu: sudo apt-get install chromium) or set CHROMIUM_PATH to one, then run npm test again.',
  );
  process.exit(1);
}

if (isMain(import.meta.url)) console.log(ensureChromium());
