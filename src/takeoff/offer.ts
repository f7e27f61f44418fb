import type { Doc } from '../model/doc.ts';
import { hasCoveringDrawn } from './holds.ts';
import type { Hold } from './line.ts';
import { answersOf, isNotKnown, QUESTIONS } from './questions.ts';
import type { RateBook } from './rates/rateBook.ts';

/**
 * Why a range is not an offer yet: questions nobody can answer, a covering that is there and not drawn, holds, and work
 * without a price. Codes: the question's own name, `coveringNotDrawn`, `hold.asbestos` and so on, `priceMissing`.
 */
export function notAnOffer(doc: Doc, holds: readonly Hold[], missingPrices: readonly string[]): string[] {
  const answers = answersOf(doc);
  const open = QUESTIONS.filter((question) => isNotKnown(answers[question]));
  const undrawn = answers.coatingOrTile === 'yes' && !hasCoveringDrawn(doc);
  return [
    ...open,
    ...(undrawn ? ['coveringNotDrawn'] : []),
    ...new Set(holds.map((hold) => `hold.${hold.kind}`)),
    ...(missingPrices.length > 0 ? ['priceMissing'] : []),
  ];
}

/** What is said beside the price without blocking it. */
export function noticesOf(doc: Doc, book: RateBook): string[] {
  return [
    ...(book.currency === null || book.pricing.confirmedOn ? [] : ['samplePrices']),
    ...(answersOf(doc).gasAppliance === 'yes' ? ['gasAppliance'] : []),
  ];
}
