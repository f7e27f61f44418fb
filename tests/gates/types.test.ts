import { describe, expect, test } from 'vitest';
import { plant, runTypes } from './plant.ts';

const wrong = "export const widthMm: number = 'wide';\n";
const reaching = 'export const title = (): string => document.title;\n';

describe('the type gates', () => {
  test('the pure config reports a type error in every pure folder, and passes without them', () => {
    const folders = [
      'model',
      'geometry',
      'edit',
      'takeoff',
      'exchange',
      'words',
      'canvas',
      'canvas/tools',
      'canvas/paint',
    ];
    const files = Object.fromEntries(folders.map((folder) => [`src/${folder}/planted.ts`, wrong]));
    const answer = runTypes(plant(files), 'pure');
    const missed = folders.filter((folder) => !answer.text.includes(`src/${folder}/planted.ts(1,14): error TS2322`));
    expect(missed).toEqual([]);
    expect(answer.code).not.toBe(0);

    const clean = runTypes(plant({ 'src/model/planted.ts': 'export const widthMm = 1;\n' }), 'pure');
    expect(clean).toEqual({ code: 0, text: '' });
  });

  test.each(['document.title', 'crypto.randomUUID()', 'process.cwd()', 'localStorage.length', 'fetch("x")'])(
    'the pure config knows no %s',
    (use) => {
      const folder = plant({ 'src/geometry/planted.ts': `export const reached: unknown = ${use};\n` });
      const answer = runTypes(folder, 'pure');
      expect(answer.text).toMatch(/planted\.ts.*error TS(2304|2584|2591|2580)/);
      expect(answer.code).not.toBe(0);
    },
  );

  test('the pure config leaves the two places that may touch the browser to the other one', () => {
    const folder = plant({
      'src/model/planted.ts': 'export const widthMm = 1;\n',
      'src/canvas/layers/planted.ts': reaching,
      'src/canvas/input/pointer.ts': reaching,
    });
    expect(runTypes(folder, 'pure')).toEqual({ code: 0, text: '' });
  });

  test('the whole-project config reports errors in source, tests, scripts and configs', () => {
    const folder = plant({
      'src/app/planted.tsx': wrong,
      'tests/unit/planted.test.ts': wrong,
      'bench/planted.ts': wrong,
      'scripts/planted.mjs': "/** @type {number} */\nexport const widthMm = 'wide';\n",
      'config/planted.ts': wrong,
    });
    const answer = runTypes(folder, 'ui');
    for (const path of ['src/app/planted.tsx', 'tests/unit/planted.test.ts', 'bench/planted.ts', 'config/planted.ts']) {
      expect(answer.text).toContain(`${path}(1,14): error TS2322`);
    }
    expect(answer.text).toContain('scripts/planted.mjs(2,14): error TS2322');
    expect(answer.code).not.toBe(0);
  });

  test('the service worker config reports an error in the service worker', () => {
    const path = 'src/app/offline/serviceWorker.ts';
    const answer = runTypes(plant({ [path]: reaching }), 'worker');
    expect(answer.text).toMatch(/serviceWorker\.ts.*error TS(2304|2584)/);
    expect(answer.code).not.toBe(0);
  });
});
