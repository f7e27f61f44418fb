import axe from 'axe-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { page, userEvent } from 'vitest/browser';
import '../../src/app/look/tokens.css';
import '../../src/app/look/base.css';
import { JobScreen } from '../../src/app/frame/JobScreen.tsx';
import { measureFloor, showJob } from '../../src/app/plan.ts';
import { goTo, restSession, showFloor } from '../../src/app/session.ts';
import { orderTabbed } from '../../src/exchange/orderRows.ts';
import type { Doc } from '../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../src/model/store.ts';
import { rateBook } from '../../src/takeoff/rates/rateBook.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { takeoffInline } from '../../src/takeoff/takeoffInline.ts';
import { cautionWords } from '../../src/words/takeoffWords.ts';
import { findingCells, FLOOR, rectangle, withCells } from '../support/jobPlans.ts';
import { richJob } from '../support/richJob.ts';

let root: Root;
let store: PlanStore;
const SIZES = [
  [1440, 900],
  [834, 1112],
  [390, 844],
] as const;

/** The rich job, with mould and efflorescence in one zone: what takes them away must not meet. */
const DOC: Doc = withCells(
  richJob(),
  findingCells('finding:F8', 'mould', rectangle(1_000, 1_000, [1_000, 12_000])),
  findingCells('finding:F9', 'efflorescence', rectangle(1_000, 1_000, [3_000, 12_000])),
);

async function open(width: number, height: number): Promise<void> {
  await page.viewport(width, height);
  document.body.innerHTML = '<div id="root"></div>';
  const place = document.getElementById('root');
  if (!place) throw new Error('no place');
  root = createRoot(place);
  store = planStore({ doc: DOC });
  showJob({ id: 'test', store, port: takeoffInline(), readOnly: null });
  measureFloor(FLOOR);
  showFloor(FLOOR);
  root.render(<JobScreen />);
  goTo('takeoff');
  await page.getByRole('button', { name: 'Orders', exact: true }).click();
  await expect.element(list()).toBeVisible();
}

afterEach(() => {
  root.unmount();
  showJob(null);
  restSession();
});

const list = () => page.getByRole('table', { name: 'To buy and carry' });

/** Smaller than a fingertip. */
function small(): string[] {
  const table = list().element();
  return [...table.querySelectorAll('button')].flatMap((button) => {
    const { width, height } = button.getBoundingClientRect();
    return width < 44 || height < 44 ? [button.getAttribute('aria-label') ?? 'a button'] : [];
  });
}

test.each(SIZES)('%d x %d: items, their figures and what can hurt, nothing sticks out', async (width, height) => {
  await open(width, height);
  await expect.element(list().getByText('Tooling', { exact: true })).toBeVisible();
  await expect.element(list().getByText('Crack filler', { exact: true })).toBeVisible();
  await expect.element(list().getByText(cautionWords.acidAndHypochlorite)).toBeVisible();
  expect(small()).toEqual([]);
  expect(list().element().getBoundingClientRect().right).toBeLessThanOrEqual(width + 0.5);
  expect(document.documentElement.scrollHeight).toBe(height);
  const { violations } = await axe.run(list().element());
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
});

test('a figure asks why: packs, what uses them and the spare ones', async () => {
  await open(1440, 900);
  const figure = list().getByRole('button', { name: /Chase blades, To carry/ });
  await figure.click();
  await expect.element(figure).toHaveAttribute('aria-pressed', 'true');
  await expect.element(page.getByRole('heading', { name: /^Why \d/ })).toBeVisible();
  await expect.element(page.getByRole('button', { name: /Chase blades used up/ }).first()).toBeVisible();
  await expect.element(page.getByText('Spare', { exact: true }).first()).toBeVisible();
});

beforeEach(() => {
  copied = '';
  Object.defineProperty(navigator, 'clipboard', {
    configurable: true,
    value: {
      writeText: (text: string): Promise<void> => {
        copied = text;
        return Promise.resolve();
      },
    },
  });
});
let copied = '';

test('the list goes over the clipboard as it stands in files', async () => {
  await open(1440, 900);
  await page.getByRole('button', { name: 'Copy the list' }).click();
  await expect.poll(() => copied).toBe(orderTabbed(DOC, takeoff(DOC, FLOOR)));
  await expect.element(page.getByText('The list is on the clipboard')).toBeVisible();
});

test('a depth measured with sand takes the place of an estimate (E17: 25 mL, 150 mm across)', async () => {
  await open(1440, 900);
  await page.getByText('Measured with sand').click();
  await page.getByRole('textbox', { name: 'Sand' }).fill('25');
  await page.getByRole('textbox', { name: 'Circle across' }).fill('150');
  await userEvent.keyboard('{Tab}');
  await expect.element(page.getByText('Mean texture depth 1.41 mm.')).toBeVisible();
  await page.getByRole('button', { name: 'Keep for CSP 3' }).click();
  const kept = rateBook(store.getState()).rate('texture/csp3');
  expect(kept.likely).toBeCloseTo(1.4147106, 6);
  expect(kept.provenance).toBe('own');
});
