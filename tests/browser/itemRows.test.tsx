import { afterEach, expect, test } from 'vitest';
import { createRoot, type Root } from 'react-dom/client';
import { ItemRows } from '../../src/app/survey/ItemRows.tsx';

const COUNT = 3000;
let root: Root | null = null;

function show(mustShow: number): HTMLElement {
  const place = document.createElement('div');
  document.body.append(place);
  root = createRoot(place);
  root.render(
    <div data-testid="scrolls" style={{ height: 400, overflowY: 'auto' }}>
      <div role="list">
        <ItemRows
          count={COUNT}
          mustShow={mustShow}
          row={(index) => <button style={{ height: 44 }}>row {index}</button>}
        />
      </div>
    </div>,
  );
  return place;
}

const rows = (): string[] => Array.from(document.querySelectorAll('[role="listitem"]'), (row) => row.textContent ?? '');

afterEach(() => {
  root?.unmount();
  root = null;
  document.body.replaceChildren();
});

test('of thousands of rows only those near what is seen are in the page, and all have their room', async () => {
  const place = show(-1);
  await expect.poll(rows).toContain('row 0');
  expect(rows().length).toBeLessThan(200);
  const scrolls = place.querySelector('[data-testid="scrolls"]') as HTMLElement;
  expect(scrolls.scrollHeight).toBeGreaterThan(COUNT * 40);

  scrolls.scrollTop = scrolls.scrollHeight;
  await expect.poll(rows).toContain(`row ${COUNT - 1}`);
  await expect.poll(rows).not.toContain('row 0');
  const last = document.querySelector(`[aria-posinset="${COUNT}"]`);
  expect(last?.getAttribute('aria-setsize')).toBe(String(COUNT));
});

test('the picked row is there wherever it stands', async () => {
  show(1500);
  await expect.poll(rows).toContain('row 1500');
  expect(rows()).toContain('row 0');
  expect(rows()).not.toContain('row 1000');
});
