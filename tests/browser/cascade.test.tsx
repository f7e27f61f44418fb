import axe from 'axe-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page, userEvent } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { measureFloor, showJob, undo } from '../../src/app/plan.ts';
import { goTo, pick, restSession, session, showFloor } from '../../src/app/session.ts';
import { applyCells, recordOf, type Doc } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { defaultMachine } from '../../src/takeoff/fleet.ts';
import { defaultMoneyCells, defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { docOf, FLOOR, jobCells, record, recipeCells, rectangle, slabCells, zoneCells } from '../support/jobPlans.ts';

let root: Root;
let store: PlanStore;

function machine(method: string, name: string, cutWidthMm: number, clearance: number) {
  const of = defaultMachine(method);
  if (!of) throw new Error(`no machine for ${method}`);
  const clearanceMm = { wall: clearance, obstruction: clearance, drop: 600, stop: clearance };
  return { ...of, name, cutWidthMm, clearanceMm };
}

/** A room of 10 x 8 m with a column 500 mm from its wall, worked by a large grinder. */
function room(): Doc {
  return docOf(
    jobCells(),
    slabCells(rectangle(10_000, 8_000)),
    record('obstruction:a', {
      floor: FLOOR,
      tag: 'B3',
      kind: 'column',
      shape: { form: 'rectangle', at: [700, 4_000], widthMm: 400, depthMm: 400, turnDeg: 0 },
      under: 'none',
    }),
    record('machine:large', machine('grinder_large', 'Large one', 750, 300)),
    record('machine:small', machine('grinder_small', 'Small one', 500, 50)),
    zoneCells('zone:1', rectangle(10_000, 8_000), { recipe: 'recipe:a' }),
    recipeCells('a', { method: 'grinder_large', machine: 'machine:large' }),
  );
}

beforeEach(async () => {
  await page.viewport(1440, 900);
  document.body.innerHTML = '<div id="root"></div>';
  const place = document.getElementById('root');
  if (!place) throw new Error('no place');
  root = createRoot(place);
  store = planStore({ doc: applyCells(room(), [...defaultRateCells(), ...defaultMoneyCells()]) });
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

const followers = () => recordOf(store.getState(), 'recipe', 'recipe:a')?.followedBy;
const offered = () => [...document.querySelectorAll('[role=option]')].map((each) => each.textContent).join();
const inDock = (text: string) => page.getByText(text, { exact: true });

test('a smaller machine is let follow, has its part of the zone, and is taken out again', async () => {
  await page.getByRole('combobox', { name: 'Let a machine follow' }).click();
  await page.getByRole('option', { name: /Small one/ }).click();
  await expect.poll(followers).toEqual(['machine:small']);
  await expect.element(page.getByRole('button', { name: 'Take out Small one' })).toBeVisible();
  await expect.element(inDock('reach of Small one')).toBeVisible();
  // Each has a line with its share beside the passes of the recipe.
  await expect.poll(() => document.body.textContent).toMatch(/Large one[\d,.]+ m², [\d.]+ % of the zone/);
  const found = await axe.run(document.body);
  const ofThePage = /^(html-has-lang|document-title|page-has-heading-one|landmark-one-main|region)$/;
  expect(found.violations.map(({ id }) => id).filter((id) => !ofThePage.test(id))).toEqual([]);

  await page.getByRole('button', { name: 'Take out Small one' }).click();
  await expect.poll(followers).toBeUndefined();
  undo();
  await expect.poll(followers).toEqual(['machine:small']);
});

test('only machines that do the same work and are no wider than the first one are offered', async () => {
  await page.getByRole('combobox', { name: 'Let a machine follow' }).click();
  await expect.poll(offered).toContain('Small one');
  expect(offered()).not.toMatch(/Large one|Ride-on|blaster/);
});

test('after a machine was added and its sizes closed, the focus is back on the list it was chosen from', async () => {
  const list = page.getByRole('combobox', { name: 'Let a machine follow' });
  await list.click();
  await page.getByRole('option', { name: 'Another machine' }).click();
  await page.getByRole('combobox', { name: 'Kind of machine' }).click();
  await page.getByRole('option').first().click();
  await page.getByRole('button', { name: 'Add this machine' }).click();
  await expect.element(page.getByRole('dialog').getByText('Cut width')).toBeVisible();
  await userEvent.keyboard('{Escape}');
  await expect.poll(() => document.querySelector('[role=dialog]')).toBeNull();
  await expect.element(list).toHaveFocus();
});

test('a machine that is chosen to go first no longer follows', async () => {
  await page.getByRole('combobox', { name: 'Let a machine follow' }).click();
  await page.getByRole('option', { name: /Small one/ }).click();
  await expect.poll(followers).toEqual(['machine:small']);
  await page.getByRole('combobox', { name: 'Machine', exact: true }).click();
  await page.getByRole('option', { name: /Small one/ }).click();
  await expect.poll(followers).toBeUndefined();
});

test('a tight spot in the list shows its place on the plan, once more lets go of it', async () => {
  const spot = page.getByRole('button', { name: /tight spot T1 .* Show on the plan$/ });
  await spot.click();
  await expect.element(spot).toHaveAttribute('aria-pressed', 'true');
  const at = session().spot;
  // Between the column and the wall, which is at the left.
  expect(at?.[0]).toBeLessThan(1_000);
  await spot.click();
  expect(session().spot).toBeNull();
});
