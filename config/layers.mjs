// Who may import whom, in the order
//   model <- geometry <- edit <- canvas <- app        geometry <- takeoff <- exchange <- app
// Each folder may import only from below; each door (a library that belongs to one place) has one owner.

const ERROR = /** @type {const} */ ('error');

/** @param {string} name */
const folder = (name) => `^src/${name}/`;

/** A package as resolved, wherever node_modules lies. @param {string} name */
const pack = (name) => `(^|/)node_modules/${name}/`;

/**
 * What each folder may import, besides itself: folders below it, and packages.
 * @type {readonly { readonly name: string, readonly below: readonly string[], readonly packages: readonly string[] }[]}
 */
const PURE = [
  { name: 'model', below: [], packages: ['zod/(mini|v4/mini)'] },
  {
    name: 'geometry',
    below: [folder('model')],
    packages: ['polygon-clipping', '@turf/area', 'clipper2-ts', 'flatbush'],
  },
  { name: 'edit', below: [folder('model'), folder('geometry')], packages: [] },
  { name: 'takeoff', below: [folder('model'), folder('geometry')], packages: [] },
  { name: 'words', below: [folder('model')], packages: [] },
  {
    name: 'exchange',
    below: [folder('model'), folder('geometry'), folder('takeoff'), folder('words'), '^src/canvas/(paint/|look\\.ts$)'],
    packages: ['zod/(mini|v4/mini)', 'fflate', 'papaparse'],
  },
  {
    name: 'canvas',
    below: [folder('model'), folder('geometry'), folder('edit'), folder('words')],
    packages: ['konva', 'react-konva', 'react', 'flatbush'],
  },
];

/** Packages that one place owns: from anywhere else they are out of reach. */
const DOORS = [
  { packages: ['polygon-clipping', 'clipper2-ts'], owner: '^src/geometry/clip\\.ts$' },
  { packages: ['@turf/area'], owner: '^src/geometry/geodesic\\.ts$' },
  { packages: ['@observablehq/plot'], owner: '^src/app/takeoff/drawBars\\.ts$' },
  { packages: ['konva', 'react-konva', 'react', 'react-dom'], owner: '^src/(canvas/layers|app)/' },
  { packages: ['@base-ui/react', 'zustand', 'idb', 'browser-fs-access'], owner: '^src/app/' },
];

/** Second opinions for tests and benches; of them geos-wasm is LGPL and must never ship (decision 16). */
const TESTS_ONLY = ['geos-wasm', 'clipper2-wasm', 'jsts'];

const onlyBelow = PURE.map(({ name, below, packages }) => ({
  name: `${name}-only-below`,
  severity: ERROR,
  from: { path: folder(name) },
  to: { pathNot: [folder(name), ...below, ...packages.map(pack)] },
}));

const oneDoor = DOORS.map(({ packages, owner }) => ({
  name: `one-door-${packages[0]?.replace(/[@/]/g, '')}`,
  severity: ERROR,
  from: { path: '^src/', pathNot: owner },
  to: { path: packages.map(pack) },
}));

/** @type {{ forbidden: import('dependency-cruiser').IForbiddenRuleType[], options: import('dependency-cruiser').ICruiseOptions & { parser: 'swc' } }} */
export const layers = {
  forbidden: [
    ...onlyBelow,
    ...oneDoor,
    {
      name: 'libraries-of-tests-only',
      severity: ERROR,
      from: { path: '^src/' },
      to: { path: TESTS_ONLY.map(pack) },
    },
    {
      name: 'nobody-imports-app',
      severity: ERROR,
      from: { path: '^src/', pathNot: folder('app') },
      to: { path: folder('app') },
    },
    {
      name: 'source-imports-no-tests',
      severity: ERROR,
      from: { path: '^src/' },
      to: { path: '^(tests|bench|demo|scripts|config)/' },
    },
    { name: 'no-circular', severity: ERROR, from: {}, to: { circular: true } },
    { name: 'every-import-resolves', severity: ERROR, from: {}, to: { couldNotResolve: true, pathNot: '\\?' } },
  ],
  options: {
    // Beside TypeScript 7 the built-in reader sees nothing at all; swc reads every file, type imports included.
    parser: 'swc',
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'module', 'browser', 'default', 'types'],
    },
  },
};
