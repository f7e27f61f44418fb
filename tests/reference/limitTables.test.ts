import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { abrasiveOf } from '../../src/takeoff/rates/abrasives.ts';
import { checks } from '../../src/takeoff/rates/checks.ts';
import { conductors } from '../../src/takeoff/rates/conductors.ts';
import { crackClasses } from '../../src/takeoff/rates/crackClasses.ts';
import { CHASE_MM, HAIRLINE_MM, JOINT_MM, WIDE_CHASE_MM, WIDE_MM } from '../../src/takeoff/rates/cracks.ts';
import { limits } from '../../src/takeoff/rates/limits.ts';
import { noiseHours } from '../../src/takeoff/rates/noiseHours.ts';
import { profiles } from '../../src/takeoff/rates/profiles.ts';
import { RESPIRATOR_NOTE, respirators } from '../../src/takeoff/rates/respirators.ts';
import { shotSizes } from '../../src/takeoff/rates/shotSizes.ts';
import { SILICA_ALWAYS, SILICA_ASK, SILICA_NOT_LISTED, silicaTasks } from '../../src/takeoff/rates/silicaTable.ts';
import { testCounts, testsNeeded, type CountedFloor } from '../../src/takeoff/rates/testCounts.ts';
import { csvTable, jsonTable } from '../support/csvTable.ts';

// Source of every check here: the table of the same name in tests/data/trade, whose rows name theirs.

const NONE = 'common practice, no source';
const from = (row: Record<string, string>) => ({
  source: row['source'],
  provenance: row['prov'],
  fromMemory: row['from_memory'] === 'yes',
});

test('limits', () => {
  const rows = csvTable('limits');
  expect(limits).toEqual(
    rows.map((row) => ({
      id: row['id'],
      term: row['limit'],
      value: Number(row['value']),
      unit: row['unit'],
      where: row['where'],
      ...from(row),
    })),
  );
  expect(rows.length).toBe(35);
});

test('conductors, and what a metric one is worked out from', () => {
  expect(conductors).toEqual(
    csvTable('conductors').map((row) => ({
      size: row['size'],
      ohmPerKm: Number(row['ohm_per_km_75C']),
      ohmPerKft: Number(row['ohm_per_kft_75C']),
      areaMm2: Number(row['area_mm2']),
      ...from(row),
    })),
  );
  for (const row of conductors) {
    // 1 kft = 0.3048 km, by definition; both columns are rounded to three figures.
    expect(row.ohmPerKm * 0.3048, row.size).toBeCloseTo(row.ohmPerKft, 1);
  }
  const metric = conductors.filter((row) => row.size.endsWith('mm2'));
  for (const row of metric) expect(row.ohmPerKm, row.size).toBeCloseTo(22.5 / row.areaMm2, 3);
});

test('hours of noise: 5 dB halve the time (29 CFR 1926.52 table D-2)', () => {
  expect(noiseHours).toEqual(
    csvTable('noise_osha').map((row) => ({
      hours: Number(row['hours']),
      levelDbA: Number(row['dBA_slow']),
      ...from(row),
    })),
  );
  for (const row of noiseHours) expect(Math.abs(8 / 2 ** ((row.levelDbA - 90) / 5) / row.hours - 1)).toBeLessThan(0.02);
});

test('respirators', () => {
  expect(respirators.map((row) => ({ ...row, note: RESPIRATOR_NOTE }))).toEqual(
    csvTable('respirators').map((row) => ({
      id: row['id'],
      term: row['type'],
      apf: Number(row['apf']),
      note: row['note'],
      ...from(row),
    })),
  );
});

test('shot sizes: the number is the opening in 1/10 000 in', () => {
  expect(shotSizes).toEqual(
    csvTable('shot').map((row) => ({
      shot: row['shot'],
      nominalIn: Number(row['nominal_in']),
      nominalMm: Number(row['nominal_mm']),
      sizeFrom: { source: row['size_source'], provenance: row['size_prov'], fromMemory: false },
      csp: [Number(row['csp_min']), Number(row['csp_max'])],
      cspFrom: { source: row['csp_source'], provenance: row['csp_prov'], fromMemory: row['from_memory'] === 'yes' },
    })),
  );
  for (const row of shotSizes) expect(Number(row.shot.slice(2)) / 10_000).toBeCloseTo(row.nominalIn, 3);
});

test('shot among the abrasives is the same shot', () => {
  for (const row of shotSizes) {
    expect(abrasiveOf(`shot_${row.shot.replace('-', '').toLowerCase()}`), row.shot).toMatchObject({
      grainMm: [row.nominalMm, row.nominalMm],
      csp: row.csp,
    });
  }
});

test('profiles', () => {
  expect(profiles).toEqual(
    csvTable('csp').map((row) => ({
      csp: Number(row['csp']),
      madeBy: row['chip_made_by'],
      madeByFrom: { source: row['chip_source'], provenance: row['chip_prov'], fromMemory: false },
      peakValleyMm: [Number(row['peak_valley_mm_low']), Number(row['peak_valley_mm_high'])],
      depthFrom: { source: NONE, provenance: row['depth_prov'], fromMemory: row['depth_from_memory'] === 'yes' },
    })),
  );
});

test('classes of cracks, joints and spalls', () => {
  const rows = csvTable('cracks');
  expect(crackClasses.length).toBe(rows.length);
  for (const [i, row] of rows.entries()) {
    expect(crackClasses[i]).toMatchObject({
      id: row['id'],
      term: row['class'],
      widthMm: row['width_mm'],
      sign: row['sign'],
      treatment: row['treatment'],
      fill: row['fill'],
      regrind: row['regrind'],
      basis: row['note_source'],
      provenance: row['prov'],
    });
  }
});

test('sizes of cracks and joints that are worked with lie in those of their class', () => {
  const of = (id: string) => crackClasses.find((row) => row.id === id);
  expect(of('hairline')?.widthMm).toBe(`under ${HAIRLINE_MM}`);
  expect(of('static')?.widthMm).toBe(`${HAIRLINE_MM}-${WIDE_MM}`);
  expect(of('static')?.chase).toBe(`${CHASE_MM.width} x ${CHASE_MM.depth}`);
  expect(of('static_wide')?.chase).toBe(`crack + ${WIDE_CHASE_MM.eachSide} each side x ${WIDE_CHASE_MM.depth}`);
  // A saw cut of 3 to 6 mm and a depth of 12 to 19 mm: the middles.
  expect(of('control_joint')?.widthMm).toBe('3-6');
  expect(JOINT_MM.controlWidth).toBe((3 + 6) / 2);
  expect(of('construction_joint')?.chase).toBe('6 x 12-19');
  expect([JOINT_MM.constructionWidth, JOINT_MM.constructionDepth]).toEqual([6, (12 + 19) / 2]);
});

test('checks before a floor is let go', () => {
  expect(checks).toEqual(
    csvTable('checks').map((row) => ({
      id: row['id'],
      term: row['check'],
      passWhen: row['pass_when'],
      count: row['count_rule'],
      when: row['when'],
      ...from(row),
      source: row['source'] === 'practice' ? NONE : row['source'],
    })),
  );
});

interface SilicaJson {
  readonly tasks: readonly {
    readonly entry: string;
    readonly task: string;
    readonly controls: readonly { readonly id: string; readonly cfm_per_inch_wheel?: number; readonly apf: object }[];
  }[];
  readonly always: readonly string[];
  readonly not_listed: readonly string[];
  readonly ask_competent_person: readonly string[];
}

test('silica: entry by entry of 29 CFR 1926.1153 table 1', () => {
  const table = jsonTable('silica_table1') as SilicaJson;
  expect(
    silicaTasks.map(({ entry, task, controls }) => ({
      entry,
      task,
      controls: controls.map(({ control, cfmPerInch, outdoor, indoor }) => ({ control, cfmPerInch, outdoor, indoor })),
    })),
  ).toEqual(
    table.tasks.map(({ entry, task, controls }) => ({
      entry,
      task,
      controls: controls.map(({ id, cfm_per_inch_wheel: cfmPerInch, apf }) => ({ control: id, cfmPerInch, ...apf })),
    })),
  );
  expect(SILICA_ALWAYS).toEqual(table.always);
  expect(SILICA_NOT_LISTED).toEqual(table.not_listed);
  expect(SILICA_ASK).toEqual(table.ask_competent_person);
});

const FT2_PER_M2 = 1 / 0.09290304;
function floorOf(area: { readonly ft2: number } | { readonly m2: number }): CountedFloor {
  const areaM2 = 'm2' in area ? area.m2 : area.ft2 / FT2_PER_M2;
  const units = 'm2' in area ? 'metric' : 'imperial';
  return {
    areaM2,
    areaFt2: 'ft2' in area ? area.ft2 : areaM2 * FT2_PER_M2,
    units,
    zones: 2,
    edgeRuns: 3,
    methodChanges: 1,
  };
}

test('every rule of counting is there, with its source', () => {
  const { rules } = jsonTable('test_counts') as {
    rules: Record<string, { source: string; prov: string; from_memory: boolean }>;
  };
  expect(testCounts.map(({ id }) => id).toSorted()).toEqual(Object.keys(rules).toSorted());
  for (const row of testCounts) {
    const rule = rules[row.id];
    expect(row, row.id).toMatchObject({
      source: rule?.source === 'P' ? NONE : rule?.source,
      provenance: rule?.prov,
      fromMemory: rule?.from_memory,
    });
  }
});

test('humidity probes: the unit of the job changes the count (worked example E06)', () => {
  const inFeet = [400, 1000, 1001, 2000, 5400].map((ft2) => testsNeeded('f2170', floorOf({ ft2 })));
  expect(inFeet).toEqual([3, 3, 4, 4, 8]);
  const inMetres = [95, 100, 101, 500].map((m2) => testsNeeded('f2170', floorOf({ m2 })));
  expect(inMetres).toEqual([3, 3, 4, 7]);
  expect(testsNeeded('f2170', floorOf({ ft2: 95 * FT2_PER_M2 }))).toBe(4);
});

test('the other counts follow their printed rule', () => {
  expect(testsNeeded('d4263', floorOf({ ft2: 501 }))).toBe(2);
  expect(testsNeeded('d4262', floorOf({ m2: 92 }))).toBe(4);
  expect(testsNeeded('f3191', floorOf({ ft2: 5001 }))).toBe(5);
  expect(testsNeeded('e1155', floorOf({ ft2: 1600 }))).toBe(80);
  expect(testsNeeded('e1155', floorOf({ ft2: 320 }))).toBe(11);
  expect(testsNeeded('pull', floorOf({ m2: 500.1 }))).toBe(4);
  expect(testsNeeded('csp', floorOf({ m2: 250 }))).toBe(3 + 2 + 3 + 1);
  expect(testsNeeded('zone3', floorOf({ m2: 1 }))).toBe(6);
  expect(testsNeeded('day', floorOf({ m2: 1 }))).toBeNull();
});

test('docs/sources.md lists every source of the trade by its id', () => {
  const doc = readFileSync(new URL('../../docs/sources.md', import.meta.url), 'utf8');
  for (const row of csvTable('sources')) {
    expect(doc, row['id']).toContain(`| ${row['id'] === 'P' ? NONE : row['id']} |`);
  }
});
