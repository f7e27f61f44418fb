import { describe, expect, test } from 'vitest';
import type { Doc } from '../../../src/model/doc.ts';
import { defaultRateCells, rateRecordId } from '../../../src/takeoff/rates/defaults.ts';
import { factors } from '../../../src/takeoff/rates/factors.ts';
import { labour } from '../../../src/takeoff/rates/labour.ts';
import { waits } from '../../../src/takeoff/rates/waits.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { everythingJob, factorJobs } from '../../support/hoursJobs.ts';
import { FLOOR, withCells } from '../../support/jobPlans.ts';

/** Rows that no line of hours takes, each with its reason. */
const NOT_USED: Readonly<Record<string, string>> = {
  'labour/change_tool': 'tool changes are inside the rates of methods (trade text 03, what a rate is)',
  'labour/change_bag': 'bag changes are inside the rates of methods (trade text 03, what a rate is)',
  'labour/lane_turn': 'only for the second opinion by lanes',
  'labour/lane_move': 'only for the second opinion by lanes',
  'factors/open_lane': 'only for the second opinion by lanes',
  'factors/overlap/shot': 'only for the second opinion by lanes: the strip is worked by a grinder or by area',
  'factors/utilisation/toolOn': 'already inside the rates of methods, as its note says',
  'factors/finding/elastomer': 'a rubbery coating is scarified off before: nothing of it is left to slow a pass',
};

/** Lines of hours by the row they take: every rate of the job is a record, and a term names the record it was read from. */
function usesIn(docs: readonly Doc[]): ReadonlyMap<string, ReadonlySet<string>> {
  const uses = new Map<string, Set<string>>();
  for (const doc of docs) {
    const { lines } = takeoff(withCells(doc, defaultRateCells()), FLOOR);
    for (const line of lines.filter(({ trade }) => trade === 'hours')) {
      for (const { from } of line.working.terms) {
        if (!from?.startsWith('rate:')) continue;
        const codes = uses.get(from) ?? new Set<string>();
        codes.add(line.code.startsWith('hours.finding.') ? 'hours.finding.' : line.code);
        uses.set(from, codes);
      }
    }
  }
  return uses;
}

const uses = usesIn([everythingJob(), ...factorJobs()]);

/** Which line takes which row of labour. */
const LABOUR: Readonly<Record<string, readonly string[]>> = {
  edge_hand: ['hours.edge', 'hours.stopLines'],
  edge_cove: ['hours.edgeCove'],
  corner: ['hours.corners'],
  post_base: ['hours.posts'],
  drain: ['hours.drains'],
  stair_tread: ['hours.steps'],
  doorway: ['hours.stopLines'],
  terminate_groove: ['hours.groove'],
  crack_chase: ['hours.crackChase', 'hours.reservoir'],
  crack_clean: ['hours.crackClean'],
  crack_fill: ['hours.crackFill'],
  crack_trim: ['hours.crackTrim', 'hours.jointTrim'],
  joint_clean: ['hours.jointClean'],
  joint_fill: ['hours.jointFill'],
  joint_seal: ['hours.seal'],
  mortar_fill: ['hours.finding.', 'hours.pitFill'],
  spall_patch: ['hours.finding.'],
  finding_least: ['hours.finding.'],
  set_up: ['hours.setUp'],
  daily_start: ['days', 'hours.dailyStart'],
  tear_down: ['hours.tearDown'],
  move_zone: ['hours.machineChanges', 'hours.moves'],
  hepa_between: ['hours.hepa'],
  final_vac: ['hours.vacuum'],
  move_goods: ['hours.goods'],
  protect: ['hours.protect'],
  test_rh: ['hours.probes'],
  test_pull: ['hours.tests'],
  test_csp: ['hours.tests'],
  upstand_prep: ['hours.upstands'],
  cove_remove: ['hours.coveRemove'],
  joint_protect: ['hours.jointsProtect'],
  joint_magnet: ['hours.jointsClear'],
  steel_angle: ['hours.steelAngle'],
};

describe('every row of labour, factors and waits is taken by a line of hours, or says why not', () => {
  test.each(labour.filter(({ code }) => !(code in NOT_USED)).map(({ code }) => code))('%s', (code) => {
    const taken = [...(uses.get(rateRecordId(code)) ?? [])];
    expect(taken.toSorted()).toEqual(LABOUR[code.slice('labour/'.length)]);
  });

  test.each([...factors, ...waits].filter(({ code }) => !(code in NOT_USED)).map(({ code }) => code))('%s', (code) => {
    expect(uses.get(rateRecordId(code))?.size ?? 0).toBeGreaterThan(0);
  });

  test('rows that are said not to be used are there, and are not', () => {
    const codes = [...labour, ...factors].map(({ code }) => code);
    for (const [code, reason] of Object.entries(NOT_USED)) {
      expect(codes, reason).toContain(code);
      expect(uses.has(rateRecordId(code)), code).toBe(false);
    }
  });
});
