import type { Sourced } from '../../takeoff/rates/rateRow.ts';
import { abrasives } from '../../takeoff/rates/abrasives.ts';
import { checks } from '../../takeoff/rates/checks.ts';
import { conductors } from '../../takeoff/rates/conductors.ts';
import { crackClasses } from '../../takeoff/rates/crackClasses.ts';
import { findingRows } from '../../takeoff/rates/findings.ts';
import { limits } from '../../takeoff/rates/limits.ts';
import { machineBodies } from '../../takeoff/rates/machineBodies.ts';
import { methodOf, methods } from '../../takeoff/rates/methods.ts';
import { noiseHours } from '../../takeoff/rates/noiseHours.ts';
import { profiles } from '../../takeoff/rates/profiles.ts';
import { RESPIRATOR_NOTE, respirators } from '../../takeoff/rates/respirators.ts';
import { shotSizes } from '../../takeoff/rates/shotSizes.ts';
import {
  SILICA_ALWAYS,
  SILICA_ASK,
  SILICA_BOUNDARY,
  SILICA_FROM,
  SILICA_NOT_LISTED,
  SILICA_SHIFT,
  silicaTasks,
  type SilicaControl,
} from '../../takeoff/rates/silicaTable.ts';
import { surveyReadings } from '../../takeoff/rates/surveyReadings.ts';
import { systems } from '../../takeoff/rates/systems.ts';
import { TEST_WAITS_H, testCounts } from '../../takeoff/rates/testCounts.ts';
import { lookUpText } from '../../words/lookUpWords.ts';

/** Tables that nothing is worked with as it stands: limits, rules, sizes, what a class means. */
export const LOOK_UPS = [
  'systems',
  'profiles',
  'methods',
  'bodies',
  'abrasives',
  'shot',
  'findings',
  'cracks',
  'readings',
  'tests',
  'checks',
  'limits',
  'silica',
  'respirators',
  'noise',
  'conductors',
] as const;
export type LookUp = (typeof LOOK_UPS)[number];

/** One row of such a table: what it is, what stands there, and where that comes from. */
export interface LookUpRow extends Sourced {
  readonly name: string;
  readonly says: string;
  readonly more?: string | undefined;
}

const { between, csp } = lookUpText;
const from = ({ source, provenance, fromMemory }: Sourced): Sourced => ({ source, provenance, fromMemory });
const range = ([low, high]: readonly [number, number], unit: string): string => between(low, high, unit);
const present = (...parts: readonly (string | null | undefined)[]): string => parts.filter(Boolean).join('; ');

const rowsOf: Readonly<Record<LookUp, () => readonly LookUpRow[]>> = {
  systems: () =>
    systems.map((row) => ({
      name: row.term,
      says: `${csp(row.csp)}, ${range(row.thicknessMm, 'mm')}`,
      more: row.note,
      ...from(row),
    })),
  profiles: () =>
    profiles.map((row) => ({
      name: `CSP ${row.csp}`,
      says: row.madeBy,
      more: lookUpText.peakValley(range(row.peakValleyMm, 'mm')),
      ...row.madeByFrom,
    })),
  methods: () =>
    methods.map((row) => ({
      name: row.term,
      says: present(
        csp(row.csp),
        lookUpText.removal(range(row.removalMm, 'mm')),
        lookUpText.edge(range(row.edgeClearanceMm, 'mm')),
        lookUpText.noise(range(row.noiseDbA, 'dBA')),
      ),
      more: lookUpText.cannot(row.cannot),
      ...row.cspFrom,
    })),
  bodies: () =>
    machineBodies.map((row) => ({
      name: methodOf(row.method)?.term ?? row.method,
      says: lookUpText.body(row.widthMm, row.lengthMm, row.heightMm),
      more: row.turningMm === 0 ? lookUpText.turnsOnSpot : lookUpText.turns(row.turningMm),
      ...from(row),
    })),
  abrasives: () =>
    abrasives.map((row) => ({
      name: row.term,
      says: present(csp(row.csp), row.cspPractice && lookUpText.inPractice(csp(row.cspPractice))),
      more: row.use,
      ...from(row),
    })),
  shot: () =>
    shotSizes.map((row) => ({
      name: row.shot,
      says: `${row.nominalMm} mm (${row.nominalIn} in)`,
      more: lookUpText.shotGives(csp(row.csp)),
      ...row.sizeFrom,
    })),
  findings: () =>
    findingRows.map((row) => ({
      name: row.term,
      says: row.treatment,
      more: present(row.releaseCheck && lookUpText.release(row.releaseCheck), dwell(row.dwellMin), hazard(row)),
      ...from(row),
    })),
  cracks: () =>
    crackClasses.map((row) => ({
      name: row.term,
      says: present(row.treatment, row.chase && lookUpText.chase(row.chase)),
      more: present(row.widthMm && lookUpText.wide(row.widthMm), row.sign, row.fill),
      source: row.basis || lookUpText.practice,
      provenance: row.provenance,
      fromMemory: false,
    })),
  readings: () =>
    surveyReadings.map((row) => ({
      name: row.term,
      says: row.limit === '' ? lookUpText.kept : lookUpText.limit[row.limitKind](row.limit, row.unit),
      more: present(row.method, row.note),
      ...from(row),
    })),
  tests: () => testCounts.map((row) => ({ name: row.term, says: row.rule, ...from(row) })),
  checks: () => checks.map((row) => ({ name: row.term, says: row.passWhen, more: row.when, ...from(row) })),
  limits: () =>
    limits.map((row) => ({ name: row.term, says: `${row.value} ${row.unit}`, more: row.where, ...from(row) })),
  silica: () =>
    silicaTasks.flatMap(({ entry, task, controls }) =>
      controls.map((control) => ({
        name: `(${entry}) ${task}`,
        says: silicaSays(control),
        more: present(
          lookUpText.controls[control.control] ?? control.control,
          control.cfmPerInch ? lookUpText.airflow(control.cfmPerInch) : null,
          control.vacuumBetweenPassesIndoors && lookUpText.betweenPasses,
        ),
        ...SILICA_FROM,
      })),
    ),
  respirators: () =>
    respirators.map((row) => ({ name: row.term, says: lookUpText.apf(row.apf), more: RESPIRATOR_NOTE, ...from(row) })),
  noise: () =>
    noiseHours.map((row) => ({ name: lookUpText.hours(row.hours), says: `${row.levelDbA} dBA`, ...from(row) })),
  conductors: () =>
    conductors.map((row) => ({
      name: row.size,
      says: lookUpText.resistance(row.ohmPerKm, row.ohmPerKft),
      more: `${row.areaMm2} mm²`,
      ...from(row),
    })),
};

function dwell(minutes: number): string | null {
  return minutes > 0 ? lookUpText.dwell(minutes) : null;
}

function hazard({ asbestos, lead }: { readonly asbestos: 'always' | 'old' | 'no'; readonly lead: boolean }): string {
  return present(lookUpText.asbestos[asbestos], lead ? lookUpText.lead : null);
}

function silicaSays({ outdoor, indoor }: SilicaControl): string {
  const apf = (value: number | null): string => (value === null ? lookUpText.notAllowed : lookUpText.factor(value));
  return lookUpText.silica([apf(indoor.le4), apf(indoor.gt4)], [apf(outdoor.le4), apf(outdoor.gt4)]);
}

export function lookUpRows(table: LookUp): readonly LookUpRow[] {
  return rowsOf[table]();
}

/** What holds for a whole table. */
export function lookUpNotes(table: LookUp): readonly string[] {
  if (table === 'tests') {
    const { f2170, f1869, d4263, pull } = TEST_WAITS_H;
    const dome = f1869.dome.join(' to ');
    const says = lookUpText.testNotes(
      f2170.condition,
      f2170.wait,
      f1869.open,
      dome,
      d4263.wait,
      pull.glue.join(' to '),
    );
    return [lookUpText.testUnits, says];
  }
  if (table !== 'silica') return [];
  const { notListed, ask } = lookUpText.silicaNotes;
  const tasks = [notListed(SILICA_NOT_LISTED.join('; ')), ask(SILICA_ASK.join('; '))];
  return [...tasks, SILICA_SHIFT, SILICA_BOUNDARY, ...SILICA_ALWAYS];
}
