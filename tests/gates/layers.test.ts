import { describe, expect, test } from 'vitest';
import { plant, runLayers } from './plant.ts';

const floor = 'export const floor = 1;\n';

/** One clean project in the shape of ours; each case adds one forbidden import to it. */
const clean = {
  'src/model/cell.ts':
    "import { string } from 'zod/mini';\nexport interface Cell { readonly id: string }\nexport const text = string();\n",
  'src/geometry/clip.ts':
    "import clipping from 'polygon-clipping';\nimport type { Cell } from '../model/cell.ts';\nexport const clip = (cell: Cell) => [clipping, cell];\n",
  'src/geometry/geodesic.ts': "import { area } from '@turf/area';\nexport const geodesicArea = area;\n",
  'src/edit/command.ts': "import { clip } from '../geometry/clip.ts';\nexport const command = clip;\n",
  'src/takeoff/line.ts': "import { clip } from '../geometry/clip.ts';\nexport const line = clip;\n",
  'src/words/english.ts':
    "import type { Cell } from '../model/cell.ts';\nexport const english = (cell: Cell) => cell.id;\n",
  'src/canvas/camera.ts': "import { command } from '../edit/command.ts';\nexport const camera = command;\n",
  'src/canvas/paint/prim.ts': "import { camera } from '../camera.ts';\nexport const prim = camera;\n",
  'src/canvas/layers/Plan.tsx':
    "import { Stage } from 'react-konva';\nimport { camera } from '../camera.ts';\nexport const Plan = () => <Stage x={camera.x} />;\n",
  'src/exchange/csv.ts':
    "import { prim } from '../canvas/paint/prim.ts';\nimport { line } from '../takeoff/line.ts';\nexport const csv = [prim, line];\n",
  'src/app/App.tsx':
    "import { useState } from 'react';\nimport { csv } from '../exchange/csv.ts';\nexport const App = () => <p title={useState('')[0]}>{csv}</p>;\n",
};

/** [rule that must speak, file with the fault, its text] */
const faults: readonly (readonly [rule: string, path: string, text: string])[] = [
  ['model-only-below', 'src/model/up.ts', "import { clip } from '../geometry/clip.ts';\nexport const up = clip;\n"],
  ['model-only-below', 'src/model/classic.ts', "import { z } from 'zod';\nexport const classic = z;\n"],
  [
    'model-only-below',
    'src/model/files.ts',
    "import { readFileSync } from 'node:fs';\nexport const files = readFileSync;\n",
  ],
  ['geometry-only-below', 'src/geometry/up.ts', "export { command } from '../edit/command.ts';\n"],
  ['edit-only-below', 'src/edit/price.ts', "import { line } from '../takeoff/line.ts';\nexport const price = line;\n"],
  [
    'takeoff-only-below',
    'src/takeoff/move.ts',
    "import { command } from '../edit/command.ts';\nexport const move = command;\n",
  ],
  ['takeoff-only-below', 'src/takeoff/late.ts', "export const late = () => import('../app/App.tsx');\n"],
  ['words-only-below', 'src/words/sum.ts', "import { clip } from '../geometry/clip.ts';\nexport const sum = clip;\n"],
  [
    'canvas-only-below',
    'src/canvas/price.ts',
    "import { line } from '../takeoff/line.ts';\nexport const price = line;\n",
  ],
  [
    'exchange-only-below',
    'src/exchange/screen.ts',
    "import { camera } from '../canvas/camera.ts';\nexport const screen = camera;\n",
  ],
  [
    'exchange-only-below',
    'src/exchange/stage.ts',
    "import { createElement } from 'react';\nexport const stage = createElement;\n",
  ],
  [
    'one-door-polygon-clipping',
    'src/geometry/second.ts',
    "import clipping from 'polygon-clipping';\nexport const second = clipping;\n",
  ],
  ['one-door-turfarea', 'src/geometry/ring.ts', "import { area } from '@turf/area';\nexport const ring = area;\n"],
  ['one-door-konva', 'src/canvas/hit.ts', "import Konva from 'konva';\nexport const hit = Konva;\n"],
  ['one-door-konva', 'src/canvas/tools/tool.ts', "import { useState } from 'react';\nexport const tool = useState;\n"],
  [
    'one-door-observablehqplot',
    'src/app/takeoff/Chart.tsx',
    "import { plot } from '@observablehq/plot';\nexport const Chart = plot;\n",
  ],
  [
    'one-door-base-uireact',
    'src/canvas/layers/Bar.tsx',
    "import { create } from 'zustand';\nexport const Bar = create;\n",
  ],
  ['libraries-of-tests-only', 'src/app/overlay.ts', "import geos from 'geos-wasm';\nexport const overlay = geos;\n"],
  [
    'libraries-of-tests-only',
    'src/geometry/fast.ts',
    "import clipper from 'clipper2-wasm';\nexport const fast = clipper;\n",
  ],
  [
    'nobody-imports-app',
    'src/canvas/layers/Up.tsx',
    "import { App } from '../../app/App.tsx';\nexport const Up = () => <App />;\n",
  ],
  [
    'no-circular',
    'src/model/first.ts',
    "import type { Second } from './second.ts';\nexport interface First { readonly second: Second }\n",
  ],
  [
    'every-import-resolves',
    'src/model/lost.ts',
    "import { nothing } from './nowhere.ts';\nexport const lost = nothing;\n",
  ],
];

/** The other half of the planted circle: types only, which is enough to tie two files together. */
const second = {
  'src/model/second.ts':
    "import type { First } from './first.ts';\nexport interface Second { readonly first: First }\n",
};

describe('the layer gate', () => {
  test('passes a clean project and says how much it read', () => {
    const answer = runLayers(plant(clean));
    expect(answer.text).toContain(`${Object.keys(clean).length} modules`);
    expect(answer.text).toContain('0 faults');
    expect(answer.code).toBe(0);
  });

  test('reports every planted import, each by its own rule', () => {
    const planted = Object.fromEntries(faults.map(([, path, text]) => [path, text]));
    const answer = runLayers(plant({ ...clean, ...planted, ...second }));
    const lines = answer.text.split('\n');
    const missed = faults.filter(
      ([rule, path]) => !lines.some((line) => line.startsWith(`${rule}: `) && line.includes(path)),
    );
    expect(missed.map(([rule, path]) => `${rule} ${path}`)).toEqual([]);
    expect(answer.code).toBe(1);
  });

  test('fails when it read nothing', () => {
    const answer = runLayers(plant({ 'src/readme.txt': floor }));
    expect(answer.text).toContain('0 modules');
    expect(answer.code).toBe(1);
  });
});
