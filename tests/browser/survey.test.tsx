import axe from 'axe-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page, userEvent } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { JobsScreen } from '../../src/app/jobs/JobsScreen.tsx';
import { measureFloor, showJob } from '../../src/app/plan.ts';
import { arm, restSession, session, setTheme, setUnits, showFloor } from '../../src/app/session.ts';
import { onFloor, recordOf } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { docOf, FLOOR, jobCells, record, rectangle, slabCells } from '../support/jobPlans.ts';

const doc = docOf(
  jobCells(),
  slabCells(rectangle(6000, 5000)),
  record('crack:a', {
    floor: FLOOR,
    tag: 'C1',
    path: [
      [3000, 1000],
      [3000, 3000],
    ],
    widthMm: 0.6,
    depthMm: null,
    behaviour: 'static',
  }),
  record('obstruction:a', {
    floor: FLOOR,
    tag: 'B1',
    kind: 'column',
    shape: { form: 'rectangle', at: [4500, 2500], widthMm: 400, depthMm: 400, turnDeg: 0 },
    under: 'none',
  }),
);

let root: Root;
let store: PlanStore;

function start(): void {
  store = planStore({ doc });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: null });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  root.render(<JobScreen />);
}

beforeEach(async () => {
  await page.viewport(1440, 900);
  document.body.innerHTML = '<div id="root"></div><div id="overlays" role="region" aria-label="Opened list"></div>';
  const place = document.getElementById('root');
  if (!place) throw new Error('no place');
  root = createRoot(place);
  setUnits('metric');
});

afterEach(() => {
  root.unmount();
  showJob(null);
  restSession();
  setTheme('device');
});

async function violations(): Promise<string[]> {
  const { violations: found } = await axe.run(document.body);
  return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 140)}`));
}

const sill = (): string => page.getByRole('region', { name: 'Totals of this floor' }).element().textContent ?? '';
const row = (tag: string) => page.getByRole('button', { name: new RegExp(`^${tag}`) });

describe.each(['light', 'dark', 'daylight'] as const)('in the %s theme', (theme) => {
  test.each([
    [1440, 900],
    [834, 1112],
    [390, 844],
    [844, 390],
  ])('Survey has no axe finding at %i x %i', async (width, height) => {
    setTheme(theme);
    await page.viewport(width, height);
    start();
    await expect.element(page.getByRole('region', { name: 'Totals of this floor' })).toHaveTextContent('29.84');
    expect(await violations()).toEqual([]);
    arm('crack');
    await expect.element(page.getByRole('heading', { name: 'Crack', exact: true })).toBeVisible();
    expect(await violations()).toEqual([]);
  });

  test('the list of jobs has none', async () => {
    setTheme(theme);
    root.render(<JobsScreen />);
    await expect.element(page.getByRole('heading', { name: 'Your jobs' })).toBeVisible();
    expect(await violations()).toEqual([]);
  });
});

test('the menu of the job and the list of a picker have no axe finding while they are open', async () => {
  start();
  await page.getByRole('button', { name: /Test job/ }).click();
  await expect.element(page.getByRole('menuitem', { name: 'Save file' })).toBeVisible();
  expect(await violations()).toEqual([]);
  await userEvent.keyboard('{Escape}');
  arm('finding');
  await page.getByRole('combobox', { name: 'Kind' }).click();
  await expect.element(page.getByRole('option', { name: 'Black mastic' })).toBeVisible();
  expect(await violations()).toEqual([]);
});

test('by keyboard alone: focus picks, arrows nudge, Delete removes, and each is said', async () => {
  start();
  await row('S1').click();
  await userEvent.tab();
  expect(session().picked).toEqual(['obstruction:a']);
  await userEvent.keyboard('{ArrowRight}');
  expect(recordOf(store.getState(), 'obstruction', 'obstruction:a')?.shape).toMatchObject({ at: [4600, 2500] });
  await expect.element(page.getByText('B1 Column 0.40 square moved right by 0.10 m')).toBeInTheDocument();
  await userEvent.keyboard('{Shift>}{ArrowUp}{/Shift}');
  expect(recordOf(store.getState(), 'obstruction', 'obstruction:a')?.shape).toMatchObject({ at: [4600, 1500] });
  await userEvent.keyboard('{Delete}');
  expect(onFloor(store.getState(), 'obstruction', FLOOR)).toEqual([]);
  await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
  expect(onFloor(store.getState(), 'obstruction', FLOOR)).toHaveLength(1);
});

async function typeLine(length: string, turn: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Length' }).fill(length);
  await page.getByRole('textbox', { name: 'Turn' }).fill(turn);
  await userEvent.keyboard('{Enter}');
}

test('a room is drawn by keyboard alone: a letter, Enter for the first point, then lengths and turns', async () => {
  start();
  await userEvent.keyboard('x{Enter}');
  await typeLine('1', '0');
  await typeLine('0.5', '90');
  await typeLine('1', '90');
  await page.getByRole('button', { name: 'Done' }).click();
  const [area] = onFloor(store.getState(), 'outOfScope', FLOOR);
  expect(area?.ring).toHaveLength(4);
  await expect.element(row('X1')).toHaveTextContent('0.50 m²');
});

test('a width that is no length is answered by a sentence and changes nothing', async () => {
  start();
  await row('B1').click();
  const width = page.getByRole('textbox', { name: 'Width' });
  await width.fill('forty');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('alert')).toHaveTextContent('"forty" is not a length');
  expect(store.steps().undo).toEqual([]);
  await width.fill("1' 6");
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByRole('alert')).not.toBeInTheDocument();
  expect(recordOf(store.getState(), 'obstruction', 'obstruction:a')?.shape).toMatchObject({ widthMm: 457.2 });
});

test('edges: kind, what lies beyond and an upstand, from the sheet of the slab', async () => {
  start();
  await row('S1').click();
  const sheet = page.getByRole('region', { name: 'Picked item' });
  await sheet.getByRole('button', { name: /^1 Wall/ }).click();
  await sheet.getByRole('button', { name: 'Doorway' }).click();
  await sheet.getByRole('button', { name: 'Floor runs on' }).click();
  await sheet.getByRole('button', { name: 'Add an upstand' }).click();
  const edge = recordOf(store.getState(), 'slab', 'slab:a')?.outline[0]?.edge;
  expect(edge).toMatchObject({
    kind: 'doorway',
    beyond: 'run',
    tag: 'D1',
    upstand: { kind: 'stemWall', heightMm: 150 },
  });
  expect(store.steps().undo).toHaveLength(3);
});

test('a figure of the sill answers why; a new pick takes the place back', async () => {
  start();
  await expect.poll(sill).toContain('29.84');
  await page.getByRole('button', { name: /^Net floor/ }).click();
  await expect.element(page.getByRole('heading', { name: /^Why 29.84/ })).toBeVisible();
  await userEvent.keyboard('{Escape}');
  await expect.element(row('S1')).toBeVisible();
});

test('a plan that may only be read says so and takes no change', async () => {
  store = planStore({ doc });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: 'otherTab' });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  root.render(<JobScreen />);
  await expect.element(page.getByText(/^Read only: this job is open in another tab/)).toBeVisible();
  await row('B1').click();
  await page.getByRole('region', { name: 'Picked item' }).getByRole('button', { name: 'Remove' }).click();
  await expect.element(page.getByText(/^Nothing was changed: this job is open/)).toBeVisible();
  expect(onFloor(store.getState(), 'obstruction', FLOOR)).toHaveLength(1);
});
