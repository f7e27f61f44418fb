import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '../..');
const HOME = 'src/model/units.ts';
/** Feet, inches, square and cubic feet, gallons, pounds, cfm, psi: as factors or their inverses, however long written. */
const FACTOR =
  /(?<![\d.])(25\.40?|304\.8|0?\.3048|3\.2808\d*|0?\.0929\d*|10\.76\d*|0?\.02831\d*|35\.31\d*|3\.785\d*|0?\.264[12]\d*|0?\.4535\d*|2\.2046\d*|1\.699\d*|6\.894\d*)(?![\d])/;

/** Lines of code, comments and strings of words left out, that hold a conversion factor. */
function factorsIn(text: string): string[] {
  const code = text
    .replaceAll(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/\/\/.*$/gm, '')
    .replaceAll(/'[^'\n]*'|"[^"\n]*"/g, '');
  return code.split('\n').filter((line) => FACTOR.test(line));
}

describe('conversion factors', () => {
  const files = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => `src/${file.replaceAll('\\', '/')}`);

  it('stand in src/model/units.ts and nowhere else', () => {
    expect(files.length).toBeGreaterThan(100);
    const found = files
      .filter((file) => file !== HOME)
      .flatMap((file) => factorsIn(readFileSync(join(ROOT, file), 'utf8')).map((line) => `${file}: ${line.trim()}`));
    expect(found).toEqual([]);
  });
  it('would be found elsewhere: the gate can fail', () => {
    expect(factorsIn(readFileSync(join(ROOT, HOME), 'utf8')).length).toBeGreaterThan(5);
    expect(factorsIn('const areaFt2 = areaM2 * 10.7639;')).toHaveLength(1);
    expect(factorsIn('// 25.4 mm in an inch')).toEqual([]);
  });
});
