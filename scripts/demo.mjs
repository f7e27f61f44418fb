// node scripts/demo.mjs [--draw]: writes the demo jobs to public/demo. With --draw the invented scan is drawn anew first.
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { CHROMIUM_FLAGS, ensureChromium } from './chromium.mjs';
import { importBundled } from './bundleEntry.mjs';
import { ensureDeps } from './deps.mjs';
import { ROOT } from './runTool.mjs';

const SCAN_FILE = join(ROOT, 'demo', 'workshop-scan.jpg');
const OUT = join(ROOT, 'public', 'demo');

/**
 * Draws the SVG as the picture that a scanner would have made of it.
 * @param {string} svg
 * @param {{ widthPx: number, heightPx: number }} size
 */
async function drawScan(svg, size) {
  const { chromium } = await import('playwright');
  const browser = await chromium.launch({ args: CHROMIUM_FLAGS, executablePath: ensureChromium() });
  const page = await browser.newPage({ viewport: { width: size.widthPx, height: size.heightPx } });
  await page.setContent(`<style>body{margin:0}svg{display:block}</style>${svg}`);
  await page.screenshot({ path: SCAN_FILE, type: 'jpeg', quality: 62 });
  await browser.close();
}

await ensureDeps();
const demo = /** @type {typeof import('../demo/buildDemo.ts')} */ (
  /** @type {unknown} */ (await importBundled('demo/buildDemo.ts'))
);
if (process.argv.includes('--draw')) await drawScan(demo.workshopScanSvg(), demo.SCAN);
await mkdir(OUT, { recursive: true });
const files = demo.buildDemo(new Uint8Array(await readFile(SCAN_FILE)));
await Promise.all(
  Object.entries(files).map(async ([name, bytes]) => {
    await writeFile(join(OUT, `${name}.slabtooth`), bytes);
    console.log(`public/demo/${name}.slabtooth  ${Math.round(bytes.length / 1024)} kB`);
  }),
);
