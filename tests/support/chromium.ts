import { type Browser, chromium } from 'playwright';
import { CHROMIUM_FLAGS, findChromium } from '../../scripts/chromium.mjs';

/** Starts the Chromium of this machine for an end-to-end test. Close it when the test is done. */
export function launchChromium(): Promise<Browser> {
  const executablePath = findChromium();
  return chromium.launch({ args: CHROMIUM_FLAGS, ...(executablePath ? { executablePath } : {}) });
}
