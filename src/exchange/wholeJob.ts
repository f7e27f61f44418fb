import { recordsOf, type Doc } from '../model/doc.ts';
import { estimateText } from '../words/estimateWords.ts';
import { notAnOfferWords } from '../words/takeoffWords.ts';
import { estimateNow } from './estimateNow.ts';
import { amountOf, buildUpRows } from './estimateRows.ts';

/** A job with several floors has one price over them; one with a single floor, or without money, has none of its own. */
function several(doc: Doc) {
  if (recordsOf(doc, 'floor').length < 2) return null;
  const { job, frozen } = estimateNow(doc);
  return frozen ? { job, frozen } : null;
}

/** The price over all floors as text for a terminal, cost by cost; empty where the floor's own price is the job's. */
export function wholeJobText(doc: Doc): string {
  const whole = several(doc);
  if (!whole) return '';
  const { frozen, job } = whole;
  const currency = frozen.currency ?? '';
  const rows = buildUpRows(frozen).map((row) => {
    const amounts = [row.range.low, row.range.likely, row.range.high].map((value) => amountOf(row, value, currency));
    return [row.title, ...amounts];
  });
  const all = [[currency, estimateText.low, estimateText.likely, estimateText.high], ...rows];
  const widths = [0, 1, 2, 3].map((i) => Math.max(...all.map((row) => row[i]?.length ?? 0)));
  const table = all.map((row) =>
    row.map((text, i) => (i === 0 ? text.padEnd(widths[i] ?? 0) : text.padStart(widths[i] ?? 0))).join('  '),
  );
  const open = job.notAnOffer.map((code) => `  ${notAnOfferWords[code] ?? code}`);
  return [estimateText.wholeJob, ...table, ...(open.length > 0 ? ['', estimateText.notAnOffer, ...open] : []), ''].join(
    '\n',
  );
}

/** The same as data: money lines of the job with their working; null where there is none. */
export function wholeJobJson(doc: Doc) {
  const whole = several(doc);
  if (!whole) return null;
  const { job, frozen } = whole;
  return {
    totalMinor: frozen.totalMinor,
    lowMinor: frozen.lowMinor,
    highMinor: frozen.highMinor,
    notAnOffer: job.notAnOffer,
    notices: job.notices,
    leftOut: job.leftOut.map(({ id }) => id),
    lines: job.money,
  };
}
