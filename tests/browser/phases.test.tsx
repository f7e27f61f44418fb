import axe from 'axe-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page, userEvent } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { measureFloor, showJob, undo } from '../../src/app/plan.ts';
import { goTo, pick, restSession, showFloor } from '../../src/app/session.ts';
import { applyCells, recordOf } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { phasesOf } from '../../src/takeoff/phases.ts';
import { defaultMoneyCells, defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { docOf, FLOOR, jobCells, rectangle, recipeCells, slabCells, zoneCells } from '../support/jobPlans.ts';

let root: Root;
let store: PlanStore;

beforeEach(async () => {
  await page.viewport(1440, 900);
  document.body.innerHTML = '<div id="root"></div>';
  const place = document.getElementById('root');
  if (!place) throw new Error('no place');
  root = createRoot(place);
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8_000)),
    zoneCells('zone:1', rectangle(5_000, 8_000), { recipe: 'recipe:a', csp: { min: 4, max: 5 } }),
    recipeCells('a'),
  );
  store = planStore({ doc: applyCells(doc, [...defaultRateCells(), ...defaultMoneyCells()]) });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: null });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  root.render(<JobScreen />);
  goTo('prep');
  pick(['zone:1']);
});

afterEach(() => {
  root.unmount();
  showJob(null);
  restSession();
});

const zone = () => recordOf(store.getState(), 'zone', 'zone:1');
const names = () => phasesOf(store.getState(), FLOOR).map(({ name }) => name);
const press = (name: string) => page.getByRole('button', { name, exact: true }).click();

test('a phase is added, named, put earlier and taken out; each is one step to undo', async () => {
  await press('Add a phase');
  await expect.poll(names).toEqual(['Phase 1']);
  expect(zone()?.phase).toBe(phasesOf(store.getState(), FLOOR)[0]?.id);
  await press('Add a phase');
  await expect.poll(names).toEqual(['Phase 1', 'Phase 2']);
  await page.getByRole('combobox', { name: 'Phase' }).click();
  await page.getByRole('option', { name: 'Phase 1' }).click();
  await expect.poll(() => zone()?.phase).toBe(phasesOf(store.getState(), FLOOR)[0]?.id);

  await press('Change phases');
  await press('Earlier: Phase 2');
  await expect.poll(names).toEqual(['Phase 2', 'Phase 1']);
  await page.getByRole('textbox', { name: 'Name of phase 1' }).fill('Night');
  await userEvent.keyboard('{Enter}');
  await expect.poll(names).toEqual(['Night', 'Phase 1']);
  await page.getByRole('textbox', { name: 'Name of phase 1' }).fill('');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByText('A phase has a name: type one.')).toBeVisible();
  expect(names()).toEqual(['Night', 'Phase 1']);
  const found = await axe.run(document.body);
  const ofThePage = /^(html-has-lang|document-title|page-has-heading-one|landmark-one-main|region)$/;
  expect(found.violations.map(({ id }) => id).filter((id) => !ofThePage.test(id))).toEqual([]);

  await press('Take out Phase 1');
  await expect.poll(names).toEqual(['Night']);
  undo();
  await expect.poll(names).toEqual(['Night', 'Phase 1']);
});

test('goods, a mock-up and tests are set; an edge that stays too smooth is told which tools reach the profile', async () => {
  await press('We move them');
  await page.getByRole('textbox', { name: 'Floor under light goods' }).fill('12');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => [zone()?.goodsBy, zone()?.goodsM2]).toEqual(['us', 12]);
  await page.getByRole('group', { name: 'Pull-off tests' }).getByRole('button', { name: 'Yes' }).click();
  await expect.poll(() => zone()?.tests).toEqual(['csp', 'pull']);
  await expect.element(page.getByText(/These reach it: Handheld rotary-peening tool/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Mock-up first' }).fill('2');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => zone()?.mockUpM2).toBe(2);
  await page.getByRole('textbox', { name: 'Mock-up first' }).fill('');
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => zone()?.mockUpM2).toBeUndefined();
});
