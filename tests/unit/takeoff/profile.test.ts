import { describe, expect, test } from 'vitest';
import type { Cell } from '../../../src/model/cell.ts';
import type { Doc } from '../../../src/model/doc.ts';
import { zoneCautions } from '../../../src/takeoff/cautions.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { zoneCautionsAsk } from '../../../src/takeoff/zoneCautionsAsk.ts';
import { prepOfFloor, type ZonePrep } from '../../../src/takeoff/prep.ts';
import { abrasivesFor, profileCheck, requiredCsp } from '../../../src/takeoff/profile.ts';
import { abrasives } from '../../../src/takeoff/rates/abrasives.ts';
import {
  docOf,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  restCells,
  slabCells,
} from '../../support/jobPlans.ts';

function restOf(doc: Doc): ZonePrep {
  const rest = prepOfFloor(doc, FLOOR).at(-1);
  if (!rest) throw new Error('no rest');
  return rest;
}

function planned(pass: Parameters<typeof recipeCells>[1], zone: Parameters<typeof restCells>[0] = {}): ZonePrep {
  return restOf(
    docOf(
      jobCells(),
      slabCells(rectangle(8_000, 8_000)),
      recipeCells('a', pass),
      restCells({ recipe: 'recipe:a', ...zone }),
    ),
  );
}

describe('required profile', () => {
  test('one set outright wins over that of the system; neither is null', () => {
    expect(requiredCsp({ csp: { min: 5, max: 6 }, system: { kind: 'thin_film' } })).toEqual({ min: 5, max: 6 });
    // ICRI 310.2R from memory: high build 3 to 5.
    expect(requiredCsp({ system: { kind: 'high_build' } })).toEqual({ min: 3, max: 5 });
    expect(requiredCsp({})).toBeNull();
    expect(requiredCsp({ system: { kind: 'something newer' } })).toBeNull();
  });
});

describe('whether a recipe reaches it', () => {
  test('a planetary grinder cannot go past CSP 3 with diamonds (ICRI 310.2R from memory)', () => {
    const check = profileCheck(planned({}, { csp: { min: 4, max: 6 } }));
    expect(check.field.reach).toBe('tooSmooth');
    expect(check.edge.reach).toBe('tooSmooth');
  });

  test('80 grit reaches CSP 3 by practice only: a mock-up is asked for', () => {
    const check = profileCheck(planned({ abrasive: 'd80' }, { csp: { min: 3, max: 3 } }));
    expect(check.field).toMatchObject({ reach: 'mockUp', gives: { min: 3, max: 4 } });
  });

  test('shot that is too coarse is too rough for thin film', () => {
    const check = profileCheck(
      planned({ method: 'shot_small', abrasive: 'shot_s390' }, { system: { kind: 'thin_film' } }),
    );
    expect(check.field.reach).toBe('tooRough');
  });

  test('no edge tool is said', () => {
    expect(profileCheck(planned({ edgeMethod: null }, { csp: { min: 2, max: 3 } })).edge.reach).toBe('noTool');
  });

  test('a lower grit number never gives a smoother profile than a higher one of the same bond', () => {
    const diamonds = abrasives.filter((row) => /^d\d+$/.test(row.id));
    expect(diamonds.length).toBe(6);
    for (const [i, row] of diamonds.entries()) {
      const finer = diamonds[i + 1];
      if (!finer) continue;
      expect(row.csp[0]).toBeGreaterThanOrEqual(finer.csp[0]);
      expect(row.csp[1]).toBeGreaterThanOrEqual(finer.csp[1]);
    }
  });

  test('only what fits on the tool is offered', () => {
    expect(abrasivesFor('hand_grinder').map((row) => row.id)).toEqual(['cup_single', 'cup_double', 'cup_turbo']);
    expect(abrasivesFor('shot_small').every((row) => row.fits === 'shot')).toBe(true);
    expect(abrasivesFor('acid_etch')).toEqual([]);
  });
});

describe('cautions', () => {
  const ask = { holds: [], findings: [], chases: false, fills: false, gasAppliance: false, drops: false };

  test('end with local law, and say silica where concrete is ground', () => {
    const cautions = zoneCautions({ ...ask, prep: planned({}) });
    expect(cautions.at(-1)).toBe('localLaw');
    expect(cautions).toContain('silica');
    expect(cautions).toContain('vacuumBetweenPasses');
    expect(new Set(cautions).size).toBe(cautions.length);
  });

  test('shot blasting is not in Table 1: that is said, and never read as nothing needed (29 CFR 1926.1153)', () => {
    expect(zoneCautions({ ...ask, prep: planned({ method: 'shot_small' }) })).toContain('silicaNotListed');
  });

  test('a held zone has its hold and the law, and no work to be careful at', () => {
    expect(zoneCautions({ ...ask, holds: ['asbestos'], prep: planned({}) })).toEqual(['asbestos', 'localLaw']);
  });

  test('what takes a finding away brings its own: a scarifier throws chips, a scrub is slippery, a grind adds nothing', () => {
    const bare = zoneCautions({ ...ask, prep: planned({}) });
    const oil = zoneCautions({ ...ask, findings: ['oil_deep', 'oil_light'], prep: planned({}) });
    expect(bare).not.toContain('chips');
    for (const wanted of ['chips', 'locate', 'chemical', 'slips']) expect(oil).toContain(wanted);
    expect(zoneCautions({ ...ask, findings: ['laitance'], prep: planned({}) })).toEqual(bare);
  });

  test('engines bring fumes, chasing brings what lies in the slab', () => {
    const cautions = zoneCautions({
      ...ask,
      chases: true,
      gasAppliance: true,
      drops: true,
      prep: planned({ method: 'grinder_ride' }),
    });
    for (const wanted of ['fumes', 'rideOn', 'locate', 'gas', 'fall']) expect(cautions).toContain(wanted);
  });

  test('a drop along the floor or a pit in it: somebody may fall', () => {
    const pit = record('obstruction:p', {
      floor: FLOOR,
      tag: 'B1',
      kind: 'pit',
      shape: { form: 'rectangle', at: [3000, 3000], widthMm: 1000, depthMm: 1000, turnDeg: 0 },
      under: 'none',
    });
    const says = (...cells: readonly (readonly Cell[])[]): boolean => {
      const doc = docOf(...cells);
      return zoneCautions(zoneCautionsAsk(doc, takeoff(doc, FLOOR), restOf(doc))).includes('fall');
    };
    expect(says(jobCells(), slabCells(rectangle(8000, 6000)))).toBe(false);
    expect(says(jobCells(), slabCells(rectangle(8000, 6000), [{ kind: 'drop' }]))).toBe(true);
    expect(says(jobCells(), slabCells(rectangle(8000, 6000)), pit)).toBe(true);
  });
});
