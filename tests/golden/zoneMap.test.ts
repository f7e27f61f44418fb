import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { zoneMapPages, zoneMapScale } from '../../src/exchange/zoneMap.ts';
import type { ZoneMapInput } from '../../src/exchange/zoneMapInput.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { hallPlan, HALL_FLOOR } from '../support/paintedPlan.ts';

/** Small readable text instead of the drawing: what each sheet says, and how many things of each class it draws. */
function summary(input: ZoneMapInput): string {
  const { scale, sentence } = zoneMapScale(input);
  const sheets = zoneMapPages(input).map(({ svg, widthMm, heightMm }, i) => {
    const classes = [...svg.matchAll(/<g data-class="(\w+)">(.*?)(?=<g data-class|<text x="10" y=)/gs)].map(
      ([, name, body = '']) => `${name}: ${[...body.matchAll(/<path|<text/g)].length}`,
    );
    const texts = [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, text = '']) =>
      text.replaceAll(/<[^>]+>/g, ''),
    );
    return [`sheet ${i + 1}, ${widthMm} x ${heightMm} mm`, ...classes, ...texts.map((text) => `  ${text}`)].join('\n');
  });
  return [`1 : ${scale}`, ...(sentence ? [sentence] : []), ...sheets].join('\n') + '\n';
}

const doc = hallPlan();
const plain = { doc, floor: HALL_FLOOR, takeoff: takeoff(doc, HALL_FLOOR), scale: null } as const;

test.each([
  ['hall-a4-metric', { ...plain, units: 'metric', sheet: 'A4' }],
  ['hall-letter-imperial', { ...plain, units: 'imperial', sheet: 'letter' }],
] as const)('the zone map %s', (name, input) => {
  const file = fileURLToPath(new URL(`zone-maps/${name}.txt`, import.meta.url));
  const now = summary(input);
  if (process.env['UPDATE_GOLDEN']) {
    mkdirSync(fileURLToPath(new URL('zone-maps', import.meta.url)), { recursive: true });
    writeFileSync(file, now);
  }
  expect(existsSync(file), 'run npm run golden').toBe(true);
  expect(now).toBe(readFileSync(file, 'utf8'));
});
