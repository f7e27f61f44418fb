import { textWidth, wrapText } from '../canvas/paint/textWidth.ts';
import type { Estimate } from '../model/records/estimate.ts';
import { figureText, showArea } from '../model/showNumber.ts';
import { estimateText } from '../words/estimateWords.ts';
import { cautionWords } from '../words/takeoffWords.ts';
import { amountOf, buildUpRows, centsOf, extraRows, noticeSentences, toTheCent, totalRows } from './estimateRows.ts';
import { SHEETS, type Sheet } from './paper.ts';
import { flow } from './paperFlow.ts';
import { gapRow, keptWhole, textRows, titleRow, type Row } from './paperRows.ts';
import { box, letters, mm, rule } from './svg.ts';
import type { ZoneMapPage } from './zoneMapInput.ts';

export type EstimateFor = 'customer' | 'house';

const MARGIN = 18;
const FOOT = 8;
const CELL = 3.2;
const ROW = 5.6;
/** Before a heading of the sheet. */
const GAP = 3.5;
/** The last sentences and the caution stay together: it never stands alone on a sheet. */
const END_MM = 60;
/** Columns of amounts, from the right. */
const AMOUNT_MM = 28;

/** An estimate on upright sheets, black on white: what the customer reads, or how the price is made. */
export function estimateSheets(estimate: Estimate, sheet: Sheet, reader: EstimateFor): ZoneMapPage[] {
  // The paper lies on its long side in the list of sheets; a letter stands.
  const { widthMm: heightMm, heightMm: widthMm } = SHEETS[sheet];
  const width = widthMm - 2 * MARGIN;
  const rows = [...headRows(estimate, width), ...(reader === 'customer' ? customerRows : houseRows)(estimate, width)];
  const drawn = flow(rows, (nth) => ({ page: nth, x: MARGIN, y: MARGIN, heightMm: heightMm - 2 * MARGIN - FOOT }));
  const count = Math.max(1, ...drawn.map(({ page }) => page + 1));
  return Array.from({ length: count }, (_, page): ZoneMapPage => {
    const body = drawn.filter((part) => part.page === page).map(({ svg }) => svg);
    const foot = letters(`${estimateText.title(estimate.number)}, ${estimateText.page(page + 1, count)}`, {
      x: MARGIN,
      y: heightMm - MARGIN,
      size: 2.6,
    });
    const size = `width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="0 0 ${mm(widthMm)} ${mm(heightMm)}"`;
    const ground = box(0, 0, widthMm, heightMm, { fill: 'white' });
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" ${size} font-family="'Overpass Variable', Overpass, sans-serif">${ground}${body.join('')}${foot}</svg>`;
    return { svg, widthMm, heightMm };
  });
}

function headRows(estimate: Estimate, width: number): Row[] {
  const { job } = estimate;
  const said = [
    [estimateText.job, job?.name],
    [estimateText.place, job?.place],
    [estimateText.of, job?.customer],
    [estimateText.day, estimate.issuedOn.slice(0, 10)],
  ] as const;
  return [
    titleRow(estimateText.title(estimate.number), 7),
    ...said.flatMap(([lead, text]) => (text ? textRows(text, width, { lead, size: 3.4 }) : [])),
    ...(job?.invented ? textRows(estimateText.invented, width, { size: 3.4 }) : []),
    gapRow(GAP),
  ];
}

function customerRows(estimate: Estimate, width: number): Row[] {
  const currency = estimate.currency ?? '';
  const units = estimate.units ?? 'metric';
  const low = toTheCent(estimate.lowMinor ?? estimate.totalMinor, currency);
  const high = toTheCent(estimate.highMinor ?? estimate.totalMinor, currency);
  const extras = extraRows(estimate);
  const said = [
    ...sentences(estimateText.assumptions, estimate.assumptions ?? [], width),
    ...sentences(estimateText.exclusions, estimate.exclusions ?? [], width),
  ];
  return [
    amountsRow(estimateText.zone, [estimateText.area, currency], width, { strong: true }),
    ...(estimate.parts ?? []).map(({ name, areaM2, amountMinor }) =>
      amountsRow(name, [figureText(showArea(areaM2, units)), centsOf(amountMinor, currency)], width),
    ),
    ...totalRows(estimate).map((row) =>
      amountsRow(row.title, [centsOf(row.range.likely, currency)], width, { strong: row.isSum }),
    ),
    gapRow(1.5),
    ...textRows(estimateText.range(low, high), width, { size: 3.2 }),
    ...noticeRows(estimate, width),
    ...(extras.length > 0
      ? [
          gapRow(GAP),
          titleRow(estimateText.extras),
          ...textRows(estimateText.extrasSay, width, { size: 3 }),
          ...extras.map((row) =>
            amountsRow(`${row.title}, ${estimateText.per(row.per)}`, [centsOf(row.range.likely, currency)], width),
          ),
        ]
      : []),
    ...said.slice(0, -2),
    ...keptWhole([...said.slice(-2), gapRow(GAP), ...textRows(cautionWords.localLaw, width, { size: 3 })], END_MM),
  ];
}

function houseRows(estimate: Estimate, width: number): Row[] {
  const currency = estimate.currency ?? '';
  const heads = [estimateText.low, estimateText.likely, estimateText.high];
  return [
    ...textRows(estimateText.houseOnly, width, { size: 3.2 }),
    gapRow(2),
    amountsRow(`${estimateText.item}, ${currency}`, heads, width, { strong: true }),
    ...buildUpRows(estimate).map((row) =>
      amountsRow(
        row.title,
        [row.range.low, row.range.likely, row.range.high].map((value) => amountOf(row, value, currency)),
        width,
        { strong: row.isSum },
      ),
    ),
    ...noticeRows(estimate, width),
    gapRow(3),
    ...textRows(estimateText.made(estimate.engine ?? '', estimate.book ?? ''), width, { size: 2.6 }),
  ];
}

function noticeRows(estimate: Estimate, width: number): Row[] {
  return noticeSentences(estimate).flatMap((words) => textRows(words, width, { size: 3.2 }));
}

function sentences(title: string, list: readonly string[], width: number): Row[] {
  if (list.length === 0) return [];
  return [
    gapRow(GAP),
    titleRow(title),
    ...list.flatMap((text, i) => textRows(text, width, { mark: String(i + 1), size: 3 })),
  ];
}

/** Words at the left, amounts in columns that end at the right; long words take more lines. */
function amountsRow(title: string, amounts: readonly string[], width: number, look: { strong?: boolean } = {}): Row {
  const weight = look.strong ? 800 : 500;
  const room = width - amounts.length * AMOUNT_MM - 2;
  const lines = wrapText(title, CELL, room);
  const heightMm = ROW + (lines.length - 1) * CELL * 1.25;
  return {
    heightMm,
    keepWithNext: look.strong ?? false,
    draw: (x, y) =>
      lines.map((line, i) => letters(line, { x, y: y + CELL * (1.25 + i * 1.25), size: CELL, weight })).join('') +
      amounts
        .map((amount, i) => {
          const right = x + width - (amounts.length - 1 - i) * AMOUNT_MM;
          const size = Math.min(CELL, (CELL * (AMOUNT_MM - 2)) / Math.max(AMOUNT_MM - 2, textWidth(amount, CELL)));
          return letters(amount, { x: right, y: y + CELL * 1.25, size, weight, anchor: 'end' });
        })
        .join('') +
      rule(x, y + heightMm - 0.4, x + width, y + heightMm - 0.4, look.strong ? 0.35 : 0.12),
  };
}
