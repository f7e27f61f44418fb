import { fitOf } from '../../edit/pageMap.ts';
import { pathLength } from '../../geometry/polyline.ts';
import { onFloor, recordsOf, type Doc } from '../../model/doc.ts';
import { showArea, showNumber, showRun, type Figure } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { grouped } from '../../takeoff/grouped.ts';
import type { Line, Range } from '../../takeoff/line.ts';
import { EDGE_KINDS } from '../../takeoff/edgeLines.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { sumOfZones, type Totals, type ZoneFigures } from '../../takeoff/totals.ts';
import { moneyOnScreen } from '../takeoff/showQuantity.ts';
import { ALL_EDGE } from '../takeoff/allEdgeLine.ts';
import { whyKey } from '../takeoff/whyLine.ts';
import { sillWords } from '../../words/surveyWords.ts';

/** One figure of the sill, and the takeoff line that answers why. */
export interface SillFigure {
  readonly key: string;
  readonly label: string;
  readonly figure: Figure | null;
  readonly why: string | null;
  /** It waits for the whole takeoff; the others come with the totals, at once. */
  readonly waits: boolean;
}

export interface Sums {
  readonly doc: Doc;
  readonly floor: string;
  readonly units: Units;
  readonly takeoff: Takeoff | null;
  /** Areas and lengths of the takeoff, or newer ones. Null: there are no quantities. */
  readonly totals: Totals | null;
  readonly currency: string;
}

const byCode = new WeakMap<readonly Line[], ReadonlyMap<string, readonly Line[]>>();

/** Lines of a takeoff by their code: asked for on every move of the hand, and the same as long as the takeoff is. */
function linesByCode({ takeoff }: Sums): ReadonlyMap<string, readonly Line[]> {
  if (!takeoff) return new Map();
  const known = byCode.get(takeoff.lines);
  if (known) return known;
  const lists = grouped(takeoff.lines, (line) => line.code);
  byCode.set(takeoff.lines, lists);
  return lists;
}

function linesOf(sums: Sums, code: string): readonly Line[] {
  return linesByCode(sums).get(code) ?? [];
}

function linesOfKind(sums: Sums, kind: 'crack' | 'joint'): readonly Line[] {
  return [...linesByCode(sums)].flatMap(([code, lines]) => (code.startsWith(`${kind}.`) ? lines : []));
}

function sum(lines: readonly Line[], pick: keyof Range = 'likely'): number {
  return lines.reduce((all, line) => all + line.quantity[pick], 0);
}

/** Why it is that much: the sum of the lines that are something; with one line its own working. */
function whyOf(lines: readonly Line[]): string | null {
  const counting = lines.filter((line) => line.quantity.likely !== 0);
  return whyKey(counting.length > 0 ? counting : lines.slice(0, 1));
}

type Show = (value: number) => Figure;

function total(sums: Sums, key: string, codes: readonly string[], label: string, show: Show): SillFigure {
  const lines = codes.flatMap((code) => linesOf(sums, code));
  const known = sums.takeoff !== null && sums.takeoff.blocked === null;
  return { key, label, figure: known ? show(sum(lines)) : null, why: whyOf(lines), waits: true };
}

/** A figure that follows the hand: out of the totals, with the lines that answer why. */
function live(
  { totals }: Sums,
  item: Pick<SillFigure, 'key' | 'label' | 'why'>,
  show: (totals: Totals) => Figure,
): SillFigure {
  return { ...item, figure: totals && show(totals), waits: false };
}

function edgeMetres({ facesM }: ZoneFigures): number {
  return EDGE_KINDS.reduce((all, kind) => all + facesM[kind], 0);
}

function allEdgeMetres({ facesM, hiddenFacesM }: ZoneFigures): number {
  return EDGE_KINDS.reduce((all, kind) => all + facesM[kind] + hiddenFacesM[kind], 0);
}

/** Tight spots; where a machine cannot get in at all the label says that too. */
function left(sums: Sums, area: Show): SillFigure {
  const hasCutOff = sum(linesOf(sums, 'cutOff')) > 0;
  return total(sums, 'tight', ['tight', 'cutOff'], hasCutOff ? sillWords.tightAndCutOff : sillWords.tight, area);
}

function runOf(sums: Sums, kind: 'crack' | 'joint'): SillFigure {
  const items = onFloor(sums.doc, kind, sums.floor);
  const known = sums.takeoff?.blocked !== 'pageNotTrued';
  const lines = linesOfKind(sums, kind);
  // What lies on the slab counts, as in the takeoff; before there is a slab, what has been drawn.
  const drawnM = (): number => items.reduce((all, item) => all + pathLength(item.path), 0) / 1000;
  const { totals } = sums;
  const lengthM = totals ? sumOfZones(totals, (zone) => (kind === 'crack' ? zone.crackM : zone.jointM)) : drawnM();
  const label = sillWords[kind === 'crack' ? 'cracks' : 'joints'](items.length);
  return { key: kind, label, figure: known ? showRun(lengthM, sums.units) : null, why: whyOf(lines), waits: false };
}

function pageFigure({ doc, floor }: Sums): SillFigure {
  const pages = onFloor(doc, 'page', floor).filter((page) => page.hidden !== true);
  const fits = pages.map(fitOf);
  const worst = Math.max(0, ...fits.map((result) => (result.ok ? result.fit.areaPlusMinusPct : 0)));
  const known = pages.length > 0 && fits.every((result) => result.ok);
  return {
    key: 'page',
    label: pages.length === 0 ? sillWords.noPage : sillWords.page,
    figure: known ? { figure: `±${showNumber(worst, worst < 0.095 ? 2 : 1)}`, unit: '%' } : null,
    why: null,
    waits: false,
  };
}

function range(lines: readonly Line[], show: (value: number) => string, unit: string): Figure | null {
  if (lines.length === 0) return null;
  const [low, high] = [show(sum(lines, 'low')), show(sum(lines, 'high'))];
  return { figure: low === high ? low : sillWords.range(low, high), unit };
}

function hours(sums: Sums): SillFigure {
  const lines = linesOf(sums, 'hours.crew');
  return {
    key: 'hours',
    label: sillWords.hours,
    figure: range(lines, (value) => showNumber(value, 0), 'h'),
    why: whyOf(lines),
    waits: true,
  };
}

/** A price is of one floor: with several it must not be taken for that of the job. */
function priceLabel(open: boolean, severalFloors: boolean): string {
  if (severalFloors) return open ? sillWords.floorNotAnOffer : sillWords.floorPrice;
  return open ? sillWords.notAnOffer : sillWords.price;
}

/** Money only where it belongs; with a hold open the range speaks of the rest, and is no offer. */
function price(sums: Sums): SillFigure {
  const lines = linesOf(sums, 'money.price');
  const open = (sums.takeoff?.notAnOffer.length ?? 0) > 0;
  return {
    key: 'price',
    label: priceLabel(open, recordsOf(sums.doc, 'floor').length > 1),
    figure: range(lines, (value) => moneyOnScreen(value, sums.currency), ''),
    why: whyOf(lines),
    waits: true,
  };
}

/** The figures of the sill by name, so that each screen takes those it has room for. */
export function sillFigure(name: SillName, sums: Sums): SillFigure {
  const area: Show = (value) => showArea(value, sums.units);
  const run: Show = (value) => showRun(value, sums.units);
  const why = (code: string): string | null => whyOf(linesOf(sums, code));
  switch (name) {
    case 'net':
      return live(sums, { key: name, label: sillWords.net, why: why('netFloorAll') }, ({ netM2 }) => area(netM2));
    case 'field':
      return live(sums, { key: name, label: sillWords.field, why: why('field') }, (totals) =>
        area(sumOfZones(totals, ({ fieldM2 }) => fieldM2)),
      );
    case 'allEdge':
      return live(sums, { key: 'edge', label: sillWords.edge, why: sums.totals && ALL_EDGE }, (totals) =>
        run(sumOfZones(totals, allEdgeMetres)),
      );
    case 'edge':
      return live(sums, { key: name, label: sillWords.edgeByHand, why: why('edge') }, (totals) =>
        run(sumOfZones(totals, edgeMetres)),
      );
    case 'tight':
      return left(sums, area);
    case 'upstands':
      return total(
        sums,
        name,
        ['upstandArea.keep', 'upstandArea.prepare', 'upstandArea.remove'],
        sillWords.upstands,
        area,
      );
    case 'obstructions':
      return {
        ...total(sums, name, ['obstructions'], sillWords.obstructions, area),
        figure: { figure: String(onFloor(sums.doc, 'obstruction', sums.floor).length), unit: '' },
        waits: false,
      };
    case 'cracks':
      return runOf(sums, 'crack');
    case 'joints':
      return runOf(sums, 'joint');
    case 'page':
      return pageFigure(sums);
    case 'hours':
      return hours(sums);
    case 'price':
      return price(sums);
  }
}

export type SillName =
  | 'net'
  | 'field'
  | 'allEdge'
  | 'edge'
  | 'tight'
  | 'upstands'
  | 'obstructions'
  | 'cracks'
  | 'joints'
  | 'page'
  | 'hours'
  | 'price';
