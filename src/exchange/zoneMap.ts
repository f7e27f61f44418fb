import type { PlanView } from '../canvas/paint/view.ts';
import { recordOf, recordsOf } from '../model/doc.ts';
import { paperWords } from '../words/paperWords.ts';
import { wrapText } from '../canvas/paint/textWidth.ts';
import { PAPER_SCALES, SHEETS } from './paper.ts';
import { flow, type FlowColumn } from './paperFlow.ts';
import {
  cautionRows,
  gapRow,
  keptWhole,
  ruleRow,
  stopRow,
  textRows,
  titleRow,
  zoneHeadRow,
  type Row,
} from './paperRows.ts';
import { box, letters, mm, rule } from './svg.ts';
import { zoneCards, type ZoneCard, type ZoneCards } from './zoneCards.ts';
import { drawMap, mapScale, mapView, type Frame } from './zoneMapDrawing.ts';
import type { ZoneMapInput, ZoneMapPage } from './zoneMapInput.ts';
import { drawLegend, legendHeight } from './zoneMapLegend.ts';
import { wayInSentences } from './zoneMapNotes.ts';
import { tableRows } from './zoneMapTables.ts';

/*
 *   +--------------------------+-----------+
 *   |  map at true scale       | title     |     further sheets: three columns
 *   |                          | cards     |     of what did not fit
 *   +--------------------------+ tables    |
 *   |  profiles, lines, scale  |           |
 *   |  way in                  | sign-off  |
 *   +--------------------------+-----------+
 */
const MARGIN = 6;
const PAD = 4;
/** The map is what the sheet is for: the column beside it is no wider than this share. */
const COLUMN_SHARE = 0.29;
/** Clear of the rule under it. */
const LEGEND_AIR_MM = 2;
const NOTES_MM = 14;
const SIGN_MM = 33;
const PAGE_HEAD_MM = 10;

interface Plan {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Width of what is written in a column. */
  readonly column: number;
  /** Left edge of the first sheet's right column. */
  readonly columnX: number;
  /** Height of a column on the sheets after the first. */
  readonly columnMm: number;
  /** The line between map and column. */
  readonly dividerX: number;
  readonly map: Frame;
  readonly legend: Frame;
  readonly notes: Frame;
}

function planOf(input: ZoneMapInput, view: PlanView): Plan {
  const { widthMm, heightMm } = SHEETS[input.sheet];
  const column = Math.round(widthMm * COLUMN_SHARE);
  const columnX = widthMm - MARGIN - PAD - column;
  const dividerX = columnX - PAD;
  const left = MARGIN + PAD;
  const width = dividerX - PAD - left;
  const notesY = heightMm - MARGIN - NOTES_MM;
  const legendMm = legendHeight(view, width) + LEGEND_AIR_MM;
  const legendY = notesY - legendMm;
  return {
    widthMm,
    heightMm,
    column,
    columnX,
    columnMm: heightMm - 2 * MARGIN - 4 - PAGE_HEAD_MM,
    dividerX,
    map: { x: MARGIN + 1, y: MARGIN + 1, widthMm: dividerX - MARGIN - 2, heightMm: legendY - MARGIN - 2 },
    legend: { x: left, y: legendY + 1, widthMm: width, heightMm: legendMm },
    notes: { x: left, y: notesY, widthMm: width, heightMm: NOTES_MM },
  };
}

function nameOf(input: ZoneMapInput): { readonly job: string; readonly more: string } {
  const job = recordsOf(input.doc, 'job')[0];
  const floor = recordOf(input.doc, 'floor', input.floor);
  const more = [
    floor?.name,
    job?.number ? paperWords.jobNumber(job.number) : null,
    paperWords.crewCopy,
    job?.invented ? paperWords.invented : null,
  ];
  return { job: job?.name ?? paperWords.title, more: more.filter(Boolean).join(', ') };
}

function cardRows(card: ZoneCard, { column: width, columnMm }: Plan): Row[] {
  const stopped = card.stop.length > 0;
  const right = stopped ? paperWords.stop : (card.csp ?? '');
  const rows: Row[] = [
    ...textRows(card.sums, width, { size: 3 }).map((row): Row => ({ ...row, keepWithNext: true })),
    ...card.stop.map((sentence) => stopRow(sentence, 'hold', width)),
    ...card.steps.flatMap((step, i) => textRows(step.more, width, { mark: `${i + 1}.`, lead: step.main })),
    ...(card.cautions.length > 0 ? [gapRow(1), ...cautionRows(card.cautions, width)] : []),
  ];
  const again = zoneHeadRow(card.number, paperWords.continued(card.name), right, stopped, width);
  return keptWhole(
    [
      ruleRow(width),
      zoneHeadRow(card.number, card.name, right, stopped, width),
      ...rows.map((row, i): Row => (i === 0 ? row : { ...row, head: again })),
      gapRow(1),
    ],
    columnMm,
  );
}

function columnRows(input: ZoneMapInput, { common, cards, noCutting }: ZoneCards, plan: Plan): Row[] {
  const { column: width, columnMm } = plan;
  const name = nameOf(input);
  return [
    titleRow(paperWords.title, 3.4),
    ...wrapText(name.job, 4.6, width).map((line) => titleRow(line, 4.6)),
    ...textRows(name.more, width),
    gapRow(1),
    ...(noCutting ? [ruleRow(width), stopRow(paperWords.inSlab, 'locate', width)] : []),
    ...(common.length > 0 ? [ruleRow(width), ...cautionRows(common, width)] : []),
    ...cards.flatMap((card) => cardRows(card, plan)),
    ...tableRows(input, { width, columnMm }),
  ];
}

/** What is signed at the end, and whose word comes first. Stands on the first sheet, where it is found. */
function signOff({ columnX, column, heightMm }: Plan, cards: readonly ZoneCard[]): string {
  const y = heightMm - MARGIN - SIGN_MM;
  const going = cards.filter(({ stop }) => stop.length === 0).slice(0, 8);
  const apart = Math.min(10, (column - 30) / Math.max(1, going.length));
  const ticks = going
    .map(({ number }, i) => {
      const x = columnX + 30 + i * apart;
      return (
        letters(number, { x, y: y + 5.4, size: 2.9, weight: 800 }) + box(x + 2.6, y + 2.4, 3.2, 3.2, { line: 0.3 })
      );
    })
    .join('');
  const law = wrapText(paperWords.law, 2.5, column).map((line, i) =>
    letters(line, { x: columnX, y: y + 23.5 + i * 3.3, size: 2.5, weight: 600 }),
  );
  return [
    rule(columnX, y, columnX + column, y, 0.35),
    letters(paperWords.compared, { x: columnX, y: y + 5.4, size: 2.9, weight: 700 }),
    ticks,
    rule(columnX, y + 9, columnX + column, y + 9, 0.2),
    letters(paperWords.released, { x: columnX, y: y + 15, size: 2.9, weight: 700 }),
    letters(paperWords.date, { x: columnX + column * 0.68, y: y + 15, size: 2.9, weight: 700 }),
    rule(columnX, y + 19, columnX + column, y + 19, 0.2),
    ...law,
  ].join('');
}

const NOTE_SIZE = 2.7;
const NOTE_LINES = 2;

/** The strip under the legend holds two lines; what does not fit goes whole into the columns. */
function noteLines({ notes }: Plan, sentences: readonly string[]): readonly string[] | null {
  const lines = wrapText(sentences.join(' '), NOTE_SIZE, notes.widthMm - 20);
  return lines.length <= NOTE_LINES ? lines : null;
}

function notesSvg(plan: Plan, input: ZoneMapInput, sentences: readonly string[]): string {
  const { notes } = plan;
  const unit = input.units === 'metric' ? 'm' : 'ft';
  const size = NOTE_SIZE;
  const lines = noteLines(plan, sentences) ?? noteLines(plan, sentences.slice(0, 1)) ?? [paperWords.seeWayIn];
  return [
    rule(MARGIN, notes.y, plan.dividerX, notes.y, 0.35),
    letters(paperWords.wayIn, { x: notes.x, y: notes.y + 4.4, size, weight: 800 }),
    ...lines.map((line, i) => letters(line, { x: notes.x + 17, y: notes.y + 4.4 + i * 3.6, size })),
    letters(paperWords.measures, { x: notes.x, y: notes.y + 11.9, size, weight: 800 }),
    letters(paperWords.measuresSay(unit), { x: notes.x + 17, y: notes.y + 11.9, size }),
  ].join('');
}

function wayInRows(plan: Plan, sentences: readonly string[]): Row[] {
  if (noteLines(plan, sentences)) return [];
  return [
    gapRow(2.4),
    titleRow(paperWords.wayIn, 3.4),
    ...sentences.flatMap((sentence) => textRows(sentence, plan.column)),
  ];
}

/** Where the rows go: the first sheet's right column above the signatures, then three columns a sheet. */
function columnsOf(plan: Plan): (nth: number) => FlowColumn {
  return (nth) => {
    if (nth === 0) return { page: 0, x: plan.columnX, y: MARGIN + 2, heightMm: plan.columnMm + PAGE_HEAD_MM - SIGN_MM };
    const place = (nth - 1) % 3;
    return {
      page: 1 + Math.floor((nth - 1) / 3),
      x: MARGIN + PAD + place * (plan.column + PAD),
      y: MARGIN + PAGE_HEAD_MM,
      heightMm: plan.columnMm,
    };
  };
}

function sheet(plan: Plan, body: string): ZoneMapPage {
  const { widthMm, heightMm } = plan;
  const frame = box(MARGIN, MARGIN, widthMm - 2 * MARGIN, heightMm - 2 * MARGIN, { line: 0.5 });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="0 0 ${mm(widthMm)} ${mm(heightMm)}" font-family="'Overpass Variable', Overpass, sans-serif">${box(0, 0, widthMm, heightMm, { fill: 'white' })}${body}${frame}</svg>`;
  return { svg, widthMm, heightMm };
}

/** The scale the map will be drawn at, with a sentence when that is not what was asked for. */
export function zoneMapScale(input: ZoneMapInput): { readonly scale: number | null; readonly sentence: string | null } {
  const view = mapView(input);
  const found = mapScale(view, planOf(input, view).map, input.scale, input.units);
  const name = paperWords.sheets[input.sheet];
  if (!found) {
    const empty = mapView(input).slabs.length === 0;
    return {
      scale: null,
      sentence: empty ? paperWords.noFloor : paperWords.tooLarge(name, PAPER_SCALES[input.units].at(-1) ?? 0),
    };
  }
  const sentence = found.askedFits || input.scale === null ? null : paperWords.noFit(input.scale, name, found.scale);
  return { scale: found.scale, sentence };
}

/**
 * The zone map for print: sheets in black and white, the first with the floor at true scale. Made of the same prims as
 * the screen, of quantities and steps, and of nothing else: no rate, hour or price comes near it. No sheets when there
 * is no floor to draw or none fits (`zoneMapScale` says why).
 */
export function zoneMapPages(input: ZoneMapInput): ZoneMapPage[] {
  const view = mapView(input);
  const plan = planOf(input, view);
  const found = mapScale(view, plan.map, input.scale, input.units);
  if (!found) return [];
  const cards = zoneCards(input);
  const map = drawMap(input, view, plan.map, found.scale);
  const sentences = wayInSentences(input, view);
  const rows = [...columnRows(input, cards, plan), ...wayInRows(plan, sentences)];
  const flowed = flow(rows, columnsOf(plan));
  const count = 1 + Math.max(0, ...flowed.map(({ page }) => page));
  const written = (page: number): string =>
    flowed
      .filter((part) => part.page === page)
      .map(({ svg }) => svg)
      .join('');
  const divide = rule(plan.dividerX, MARGIN, plan.dividerX, plan.heightMm - MARGIN, 0.35);
  const first = [
    map.svg,
    drawLegend(input, view, plan.legend, map.paper),
    notesSvg(plan, input, sentences),
    divide,
    written(0),
    letters(paperWords.page(1, count), {
      x: plan.columnX + plan.column,
      y: MARGIN + 2 + 3.7,
      size: 2.8,
      anchor: 'end',
    }),
    signOff(plan, cards.cards),
  ].join('');
  const { job, more } = nameOf(input);
  const further = Array.from({ length: count - 1 }, (_, i) => {
    const head = letters(`${paperWords.title}: ${job}, ${more}`, {
      x: MARGIN + PAD,
      y: MARGIN + 6,
      size: 3.4,
      weight: 800,
    });
    const number = letters(paperWords.page(i + 2, count), {
      x: plan.widthMm - MARGIN - PAD,
      y: MARGIN + 6,
      size: 3,
      anchor: 'end',
    });
    return sheet(
      plan,
      head + number + rule(MARGIN, MARGIN + 8.6, plan.widthMm - MARGIN, MARGIN + 8.6, 0.35) + written(i + 1),
    );
  });
  return [sheet(plan, first), ...further];
}
