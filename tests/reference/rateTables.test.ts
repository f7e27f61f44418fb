import { describe, expect, test } from 'vitest';
import { abrasives } from '../../src/takeoff/rates/abrasives.ts';
import { bookRow } from '../../src/takeoff/rates/book.ts';
import { factors } from '../../src/takeoff/rates/factors.ts';
import { findingRows } from '../../src/takeoff/rates/findings.ts';
import { machineBodies } from '../../src/takeoff/rates/machineBodies.ts';
import { methodOf, methods } from '../../src/takeoff/rates/methods.ts';
import { rateUnit } from '../../src/takeoff/rates/rateUnits.ts';
import { surveyReadings } from '../../src/takeoff/rates/surveyReadings.ts';
import { systems } from '../../src/takeoff/rates/systems.ts';
import { csvTable } from '../support/csvTable.ts';

// Source of every check here: the table of the same name in tests/data/trade, whose rows name theirs.

const NONE = 'common practice, no source';
const sourceOf = (cell: string | undefined): string => (cell === 'P' ? NONE : (cell ?? ''));
const memory = (cell: string | undefined): boolean => cell === 'yes';
const numberOf = (cell: string | undefined): number | null => (cell === '' || cell === undefined ? null : Number(cell));
const pair = (row: Record<string, string>, low: string, high: string): (number | null)[] | null => {
  const both = [numberOf(row[low]), numberOf(row[high])];
  return both.every((each) => each === null) ? null : both;
};

describe('rates with low, likely and high are those of their table', () => {
  test.each(['labour', 'consumables'])('%s', (table) => {
    const rows = csvTable(table);
    expect(rows.length).toBeGreaterThan(20);
    for (const row of rows) {
      expect(bookRow(`${table}/${row['id']}`), row['id']).toMatchObject({
        term: row['task'] ?? row['item'],
        unit: row['unit'],
        low: Number(row['low']),
        likely: Number(row['likely']),
        high: Number(row['high']),
        source: row['source'],
        provenance: row['prov'],
        fromMemory: memory(row['from_memory']),
        ...(row['note'] ? { note: row['note'] } : {}),
      });
    }
  });

  test('factors', () => {
    const rows = csvTable('factors');
    expect(rows.length).toBe(28);
    for (const row of rows) {
      const found = factors.find(
        (each) => each.term.toLowerCase() === row['condition']?.toLowerCase() && each.likely === Number(row['likely']),
      );
      expect(found, row['condition']).toMatchObject({
        low: Number(row['low']),
        high: Number(row['high']),
        source: row['source'],
        provenance: row['prov'],
        fromMemory: memory(row['from_memory']),
        ...(row['note'] ? { note: row['note'] } : {}),
      });
    }
  });

  test('texture depth by profile', () => {
    const rows = csvTable('csp');
    expect(rows.length).toBe(10);
    for (const row of rows) {
      expect(bookRow(`texture/csp${row['csp']}`), row['csp']).toMatchObject({
        unit: 'mm',
        low: Number(row['texture_depth_mm_low']),
        likely: Number(row['texture_depth_mm_likely']),
        high: Number(row['texture_depth_mm_high']),
        source: NONE,
        provenance: row['depth_prov'],
        fromMemory: memory(row['depth_from_memory']),
      });
      // 1 mm of texture is 1 L/m2: by definition.
      expect(Number(row['fill_L_per_m2_likely'])).toBe(Number(row['texture_depth_mm_likely']));
    }
  });
});

test('methods: every value of every row', () => {
  const rows = csvTable('methods');
  expect(new Set(rows.map((row) => row['id']))).toEqual(new Set(methods.map(({ id }) => id)));
  for (const row of rows) {
    const method = methodOf(row['id'] ?? '');
    expect(method, row['id']).toMatchObject({
      term: row['term'],
      csp: pair(row, 'csp_min', 'csp_max'),
      cspFrom: {
        source: sourceOf(row['csp_source']),
        provenance: row['csp_prov'],
        fromMemory: memory(row['csp_from_memory']),
      },
      removalMm: pair(row, 'removal_mm_pass_low', 'removal_mm_pass_high'),
      cutWidthMm: numberOf(row['cut_width_mm']),
      edgeClearanceMm: pair(row, 'edge_gap_mm_low', 'edge_gap_mm_high'),
      smallestOpeningMm: numberOf(row['min_opening_mm']),
      massKg: pair(row, 'mass_kg_low', 'mass_kg_high'),
      maxSlopeDeg: Number(row['max_slope_deg']),
      crew: Number(row['crew']),
      noiseDbA: pair(row, 'noise_dBA_low', 'noise_dBA_high'),
      waste: row['waste'],
      cannot: row['cannot_do'],
    });
    expect(method?.power.kW, row['id']).toEqual(pair(row, 'kW_low', 'kW_high'));
    expect(method?.power.supply, row['id']).toBe(row['power']);
    expect(method?.dust.control, row['id']).toBe(row['dust_control']);
    expect(method?.dust.vacuumM3h, row['id']).toBe(Number(row['vacuum_m3_h']));
    expect(method?.dust.waterLMin, row['id']).toBe(Number(row['water_L_min']));
    expect(method?.dust.silicaEntry ?? '', row['id']).toBe(row['silica_table1_entry']);
    expect(method?.rate, row['id']).toMatchObject({
      unit: row['rate_unit'],
      low: Number(row['rate_low']),
      likely: Number(row['rate_likely']),
      high: Number(row['rate_high']),
      provenance: row['rate_prov'],
    });
    // What a rate was checked against stands in the note of the row, its own source alone.
    expect(row['rate_source'], row['id']).toContain(method?.rate.source);
    expect(method?.rate.note ?? '', row['id']).toContain(row['rate_note']);
  }
});

test('rates shown in feet are those of the table, which rounds them to 5 from 20 on', () => {
  for (const row of csvTable('methods')) {
    const { unit, worth } = rateUnit(row['rate_unit'] ?? '', 'imperial');
    expect(unit, row['id']).toBe(row['rate_unit_us']);
    for (const bound of ['low', 'likely', 'high']) {
      const inFeet = Number(row[`rate_${bound}`]) / worth;
      const printed = Number(row[`rate_${bound}_us`]);
      expect(Math.abs(inFeet - printed), `${row['id']} ${bound}`).toBeLessThanOrEqual(printed < 20 ? 0.5 : 5);
    }
  }
});

test('bodies of machines', () => {
  for (const row of csvTable('machines')) {
    expect(machineBodies, row['method_id']).toContainEqual({
      method: row['method_id'],
      widthMm: Number(row['body_width_mm']),
      lengthMm: Number(row['body_length_mm']),
      heightMm: Number(row['height_mm']),
      turningMm: Number(row['turning_circle_mm']),
      source: row['source'],
      provenance: row['prov'],
      fromMemory: memory(row['from_memory']),
    });
  }
});

test('abrasives', () => {
  const rows = csvTable('abrasives');
  expect(rows.length).toBe(16);
  for (const row of rows) {
    const grainMm = pair(row, 'grain_mm_low', 'grain_mm_high');
    const cspPractice = pair(row, 'csp_practice_min', 'csp_practice_max');
    expect(
      abrasives.find(({ id }) => id === row['id']),
      row['id'],
    ).toMatchObject({
      term: row['abrasive'],
      csp: pair(row, 'csp_min', 'csp_max'),
      ...(grainMm ? { grainMm } : {}),
      ...(cspPractice ? { cspPractice } : {}),
      ...(row['use'] ? { use: row['use'] } : {}),
      source: row['source'],
      provenance: row['prov'],
    });
  }
});

test('systems', () => {
  const rows = csvTable('systems');
  expect(rows.map((row) => row['id'])).toEqual(systems.map(({ id }) => id));
  for (const row of rows) {
    expect(
      systems.find(({ id }) => id === row['id']),
      row['id'],
    ).toMatchObject({
      term: row['term'],
      thicknessMm: pair(row, 'thickness_mm_min', 'thickness_mm_max'),
      csp: pair(row, 'csp_min', 'csp_max'),
      source: sourceOf(row['source']),
      provenance: row['prov'],
      fromMemory: memory(row['from_memory']),
      ...(row['bs8204_6_type'] ? { bs8204Type: row['bs8204_6_type'] } : {}),
      ...(row['note'] ? { note: row['note'] } : {}),
    });
  }
});

test('what is wrong with a floor: contamination', () => {
  const rows = csvTable('contamination');
  expect(rows.length).toBe(26);
  for (const row of rows) {
    expect(
      findingRows.find(({ id }) => id === row['id']),
      row['id'],
    ).toMatchObject({
      term: row['finding'],
      treatment: row['treatment_order'],
      method: row['method_id'] === '' ? null : row['method_id'],
      chemicalLM2: numberOf(row['chemical_L_m2']) ?? 0,
      dwellMin: numberOf(row['dwell_min']) ?? 0,
      rinseLM2: numberOf(row['rinse_L_m2']) ?? 0,
      releaseCheck: row['release_check'],
      source: row['source'],
      provenance: row['prov'],
      ...(row['neutraliser'] ? { neutraliser: row['neutraliser'] } : {}),
    });
  }
});

test('readings of the survey; those that are drawn or asked elsewhere have no row', () => {
  const elsewhere =
    'sounding coating_bond build_year asbestos lead supply access floor_load obstruct crack_width joint_state';
  const rows = csvTable('survey_readings').filter((row) => !elsewhere.split(' ').includes(row['id'] ?? ''));
  expect(rows.map((row) => row['id'])).toEqual(surveyReadings.map(({ id }) => id));
  for (const row of rows) {
    expect(
      surveyReadings.find(({ id }) => id === row['id']),
      row['id'],
    ).toMatchObject({
      term: row['reading'],
      unit: row['unit'],
      method: row['method'],
      source: sourceOf(row['source']),
      provenance: row['prov'],
      fromMemory: memory(row['from_memory']),
      ...(row['note'] ? { note: row['note'] } : {}),
    });
  }
  // A reading that is only kept has no limit.
  const judged = surveyReadings.filter(({ limitKind }) => limitKind !== 'record');
  for (const { id, limit } of judged) expect(limit, id).toBe(rows.find((row) => row['id'] === id)?.['default_limit']);
});
