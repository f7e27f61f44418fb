import type { Doc } from '../model/doc.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { missingPrice } from '../takeoff/rates/missingPrice.ts';
import { tagOf, zoneLabel } from '../takeoff/tagOf.ts';
import { faultWords, holdWords, notAnOfferWords, noticeWords } from '../words/takeoffWords.ts';
import { REST, takeoffRows, type RowCell } from './takeoffRows.ts';

/** The takeoff of one floor as plain text for a terminal, with what is wrong and why it is not an offer. */
export function takeoffText(doc: Doc, takeoff: Takeoff, currency: string): string {
  if (takeoff.blocked) return `${notAnOfferWords[takeoff.blocked] ?? takeoff.blocked}\n`;
  return [...tableText(doc, takeoff, currency), '', ...remarks(doc, takeoff)].join('\n').trimEnd() + '\n';
}

function tableText(doc: Doc, takeoff: Takeoff, currency: string): string[] {
  const { zones, rows } = takeoffRows(doc, takeoff, currency);
  const body: string[][] = [];
  let trade = '';
  for (const row of rows) {
    if (row.trade !== trade) body.push([row.trade]);
    trade = row.trade;
    body.push([`  ${row.work}`, row.unit, ...row.cells.map(likely), likely(row.total), lowToHigh(row.total)]);
  }
  const head = ['Likely', '', ...zones, 'Total', 'Low to high'];
  const all = [head, ...body];
  const widths = head.map((_, i) => Math.max(...all.map((cells) => cells[i]?.length ?? 0)));
  return all.map((cells) =>
    cells
      .map((cell, i) => (i < 2 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
}

function likely(cell: RowCell | null): string {
  if (!cell) return '';
  return cell.held === null ? cell.likely.toFixed(2) : 'held';
}

function lowToHigh(cell: RowCell | null): string {
  if (!cell || cell.held !== null || cell.low === cell.high) return '';
  return `${cell.low.toFixed(2)} to ${cell.high.toFixed(2)}`;
}

function remarks(doc: Doc, takeoff: Takeoff): string[] {
  const where = (zone: string | null): string =>
    zone === null ? 'Whole floor' : (zoneLabel(doc, takeoff.floor, zone as 'rest') ?? REST);
  const holds = takeoff.holds.map(
    (hold) => `${where(hold.zone)}: ${holdWords[`${hold.kind}.${hold.reason}`] ?? hold.kind}`,
  );
  const faults = takeoff.faults.map((fault) => `${tagOf(doc, fault.record)}: ${faultWords[fault.code] ?? fault.code}`);
  const open = [
    ...takeoff.notAnOffer.map((code) => notAnOfferWords[code] ?? code),
    ...takeoff.missingPrices.map((code) => `No price: ${missingPrice(code).term}`),
  ];
  const notices = takeoff.notices.map((code) => noticeWords[code] ?? code);
  return [
    ...listed('Holds', holds),
    ...listed('Not an offer', open),
    ...listed('Note', notices),
    ...listed('Look at', faults),
  ];
}

function listed(title: string, items: readonly string[]): string[] {
  return items.length === 0 ? [] : [title, ...items.map((item) => `  ${item}`), ''];
}
