import { minorDigits } from '../model/money.ts';
import type { Estimate } from '../model/records/estimate.ts';
import { frozenRates } from '../takeoff/issuedEstimate.ts';
import type { Range } from '../takeoff/line.ts';
import { estimateText } from '../words/estimateWords.ts';
import { csvText } from './csv.ts';
import { buildUpRows, extraRows, noticeSentences, type EstimateRow } from './estimateRows.ts';

type Cell = string | number | null;

/** An issued estimate as CSV, amounts in main units to the cent: for the house, with its costs, rates and margin. */
export function estimateCsv(estimate: Estimate): string {
  const currency = estimate.currency ?? '';
  const digits = minorDigits(currency);
  const amount = (minor: number): number => Number((minor / 10 ** digits).toFixed(digits));
  const amounts = ({ low, likely, high }: Range, unit: EstimateRow['unit']): Cell[] =>
    [low, likely, high].map((value) => (unit === 'minor' ? amount(value) : Number(value.toFixed(2))));
  const unitOf = (unit: EstimateRow['unit']): string => (unit === 'minor' ? currency : unit);
  const { job } = estimate;
  const head: Cell[][] = [
    [estimateText.title(estimate.number), job?.name ?? ''],
    [estimateText.day, estimate.issuedOn],
    ...(job?.place ? [[estimateText.place, job.place]] : []),
    ...(job?.customer ? [[estimateText.of, job.customer]] : []),
    ...(job?.invented ? [[estimateText.invented]] : []),
    ...noticeSentences(estimate).map((words) => [words]),
    [estimateText.made(estimate.engine ?? '', estimate.book ?? '')],
  ];
  return csvText([
    ...head,
    [],
    ['Part', 'Item', 'Unit', estimateText.low, estimateText.likely, estimateText.high],
    ...(estimate.parts ?? []).map((part) => [
      estimateText.zone,
      part.name,
      currency,
      null,
      amount(part.amountMinor),
      null,
    ]),
    ...buildUpRows(estimate).map((row) => [
      estimateText.house,
      row.title,
      unitOf(row.unit),
      ...amounts(row.range, row.unit),
    ]),
    ...extraRows(estimate).map((row) => [
      estimateText.extras,
      row.title,
      `${currency} ${estimateText.per(row.per)}`,
      ...amounts(row.range, row.unit),
    ]),
    ...frozenRates(estimate).map(({ term, unit, low, likely, high, isPrice }): Cell[] => [
      isPrice ? 'Price' : 'Rate',
      term,
      isPrice ? `${currency} ${unit}` : unit,
      ...[low, likely, high].map((value) => (isPrice ? amount(value) : value)),
    ]),
    ...(estimate.assumptions ?? []).map((sentence) => [estimateText.assumptions, sentence]),
    ...(estimate.exclusions ?? []).map((sentence) => [estimateText.exclusions, sentence]),
  ]);
}
