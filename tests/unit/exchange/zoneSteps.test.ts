import { expect, test } from 'vitest';
import { zoneSteps } from '../../../src/exchange/zoneSteps.ts';
import type { Doc } from '../../../src/model/doc.ts';
import { prepOfFloor } from '../../../src/takeoff/prep.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  rectangle,
  slabCells,
  zoneCells,
} from '../../support/jobPlans.ts';

const pass = {
  recipe: 'recipe:a',
  machine: null,
  times: 1,
  edgeMethod: null,
  edgeTimes: 0,
  method: 'grinder_small',
} as const;

function hall(passes: number): Doc {
  return docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8000)),
    record('recipe:a', { name: 'Grind' }),
    ...Array.from({ length: passes }, (_, i) =>
      record(`pass:${String(i)}`, {
        ...pass,
        order: `a${String(i)}`,
        ...(i === passes - 1 ? { edgeMethod: 'hand_grinder', edgeTimes: 1 } : {}),
      }),
    ),
    zoneCells('zone:1', rectangle(10_000, 8000), { recipe: 'recipe:a' }),
    findingCells('finding:1', 'oil_light', rectangle(1000, 1000, [2000, 2000])),
    crackCells(
      'crack:1',
      [
        [1000, 4000],
        [4000, 4000],
      ],
      { behaviour: 'static', widthMm: 1 },
    ),
    crackCells(
      'crack:2',
      [
        [1000, 6000],
        [4000, 6000],
      ],
      { behaviour: 'working', widthMm: 1 },
    ),
    crackCells(
      'crack:3',
      [
        [1000, 7000],
        [4000, 7000],
      ],
      { behaviour: 'static', widthMm: 0.2 },
    ),
  );
}

function stepsOf(doc: Doc) {
  const answer = takeoff(doc, FLOOR);
  const prep = prepOfFloor(doc, FLOOR).find((each) => each.zone === 'zone:1');
  const measure = answer.measure.zones.find((zone) => zone.id === 'zone:1');
  if (!prep || !measure) throw new Error('no zone');
  return zoneSteps({ doc, floor: FLOOR, takeoff: answer, prep, measure });
}

test('findings first, cracks between the coarse and the last pass, edges after, release at the end', () => {
  expect(stepsOf(hall(2)).map((step) => step.kind)).toEqual([
    'finding',
    'pass',
    'cracks',
    'pass',
    'edges',
    'profile',
    'release',
  ]);
});

test('with one pass the cracks are filled before it grinds them flush', () => {
  expect(stepsOf(hall(1)).map((step) => step.kind)).toEqual([
    'finding',
    'cracks',
    'pass',
    'edges',
    'profile',
    'release',
  ]);
});

test('only what is chased is chased: no hairline, and never a working crack', () => {
  const cracks = stepsOf(hall(2)).find((step) => step.kind === 'cracks');
  expect(cracks?.kind === 'cracks' && cracks.metres).toBeCloseTo(3, 6);
  expect(cracks?.kind === 'cracks' && cracks.tags).toHaveLength(1);
});

test('every step has a tick of its own', () => {
  const steps = stepsOf(hall(3));
  expect(new Set(steps.map((step) => `${step.of} ${step.what}`)).size).toBe(steps.length);
});
