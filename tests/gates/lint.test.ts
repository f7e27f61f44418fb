import { describe, expect, test } from 'vitest';
import { plant, runFormat, runLint, runUnused } from './plant.ts';

const long = `${Array.from({ length: 301 }, (_, i) => `export const a${i} = ${i};`).join('\n')}\n`;

/** [rule that must speak, file with the fault, its text] */
const faults: readonly (readonly [rule: string, path: string, text: string])[] = [
  ['max-lines', 'src/model/long.ts', long],
  ['no-explicit-any', 'src/model/loose.ts', 'export const loose = (value: any): string => String(value);\n'],
  // Needs the types: a promise that nobody waits for.
  [
    'no-floating-promises',
    'src/app/floating.ts',
    'const save = async (): Promise<void> => {};\nexport const onTap = (): void => {\n  save();\n};\n',
  ],
  ['no-default-export', 'src/app/faceless.ts', 'export default 1;\n'],
  ['no-barrel-file', 'src/model/index.ts', "export * from './loose.ts';\n"],
  ['alt-text', 'src/app/Picture.tsx', 'export const Picture = () => <img src="./icon.svg" />;\n'],
  [
    'no-restricted-imports',
    'src/model/up.ts',
    "import { clip } from '../geometry/clip.ts';\nexport const up = clip;\n",
  ],
  [
    'no-restricted-imports',
    'src/model/records/far.ts',
    "import { clip } from '../../geometry/clip.ts';\nexport const far = clip;\n",
  ],
  ['no-restricted-imports', 'src/geometry/again.ts', "export { command } from '../edit/command.ts';\n"],
  [
    'no-restricted-imports',
    'src/edit/clipped.ts',
    "import clipping from 'polygon-clipping';\nexport const clipped = clipping;\n",
  ],
  ['no-restricted-imports', 'src/takeoff/drawn.ts', "import Konva from 'konva';\nexport const drawn = Konva;\n"],
  [
    'no-restricted-imports',
    'src/exchange/edits.ts',
    "import { command } from '../edit/command.ts';\nexport const edits = command;\n",
  ],
  [
    'no-restricted-imports',
    'src/canvas/priced.ts',
    "import { line } from '../takeoff/line.ts';\nexport const priced = line;\n",
  ],
  [
    'no-restricted-imports',
    'src/words/sums.ts',
    "import { clip } from '../geometry/clip.ts';\nexport const sums = clip;\n",
  ],
  [
    'no-restricted-imports',
    'src/words/value.ts',
    "import { text } from '../model/cell.ts';\nexport const value = text;\n",
  ],
  ['no-restricted-properties', 'src/takeoff/clock.ts', 'export const now = (): number => Date.now();\n'],
  ['no-restricted-properties', 'src/geometry/chance.ts', 'export const chance = (): number => Math.random();\n'],
];

describe('the lint gate', () => {
  test('reports every planted fault, those that need types included', () => {
    const folder = plant(Object.fromEntries(faults.map(([, path, text]) => [path, text])));
    const answer = runLint(folder);
    // Each report names its rule in brackets and, two lines on, the file.
    const reports = answer.text.split('\n\n');
    const missed = faults.filter(
      ([rule, path]) => !reports.some((report) => report.includes(`(${rule})`) && report.includes(path)),
    );
    expect(missed.map(([rule, path]) => `${rule} ${path}`)).toEqual([]);
    expect(answer.code).not.toBe(0);
  });

  test('passes a clean file', () => {
    const answer = runLint(
      plant({
        'src/model/clean.ts': 'export interface Clean { readonly widthMm: number }\n',
        'src/words/typed.ts':
          "import type { Clean } from '../model/clean.ts';\nexport const wide = (clean: Clean): number => clean.widthMm;\n",
      }),
    );
    expect(answer.text).toContain('on 2 files');
    expect(answer.code).toBe(0);
  });
});

test('the format gate reports a badly set file and passes a well set one', () => {
  const bad = runFormat(plant({ 'src/model/bad.ts': 'export const  widthMm=1\n' }));
  expect(bad.text).toContain('src/model/bad.ts');
  expect(bad.code).not.toBe(0);
  const good = runFormat(plant({ 'src/model/good.ts': 'export const widthMm = 1;\n' }));
  expect(good.code).toBe(0);
});

test('the unused gate reports a file, an export and a package that nothing uses', () => {
  const folder = plant({
    'index.html': '<script type="module" src="/src/app/main.tsx"></script>\n',
    'vite.config.ts': 'export default {};\n',
    'src/app/main.tsx': "import { used } from './parts.ts';\nused();\n",
    'src/app/parts.ts': 'export const used = (): void => {};\nexport const forgotten = 1;\n',
    'src/app/alone.ts': 'export const alone = 1;\n',
  });
  const answer = runUnused(folder);
  expect(answer.text).toContain('src/app/alone.ts');
  expect(answer.text).toContain('forgotten');
  expect(answer.text).toContain('papaparse');
  expect(answer.code).not.toBe(0);
});
