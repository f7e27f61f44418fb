import type { ZoneMapPage } from '../../exchange/zoneMapInput.ts';

/** Prints what a screen has put on paper (`data-paper`), at 100 %: the sheet's own size is told to the browser first. */
export function printPages(pages: readonly ZoneMapPage[]): void {
  const [first] = pages;
  if (!first) return;
  const rule = document.createElement('style');
  const size = `${String(first.widthMm)}mm ${String(first.heightMm)}mm`;
  rule.textContent = `@page { size: ${size}; margin: 0 } @media print { body > :not([data-paper]) { display: none } }`;
  document.head.append(rule);
  window.addEventListener('afterprint', () => rule.remove(), { once: true });
  window.print();
}
