import { questionsText, questionSlots } from '../../words/stageWords.ts';
import { notAnOfferWords } from '../../words/takeoffWords.ts';

/** Why a range is not an offer: how many questions and holds are open, then whatever else stands in the way. */
export function offerWords(codes: readonly string[]): string {
  const questions = codes.filter((code) => (questionSlots as readonly string[]).includes(code));
  const holds = codes.filter((code) => code.startsWith('hold.'));
  const others = codes.filter((code) => !questions.includes(code) && !holds.includes(code));
  const sentences = [
    ...(questions.length > 0 ? [questionsText.open(questions.length)] : []),
    ...(holds.length > 0 ? [questionsText.openHolds(holds.length)] : []),
    ...others.map((code) => notAnOfferWords[code] ?? code),
  ];
  return sentences.map((sentence) => (sentence.endsWith('.') ? sentence : `${sentence}.`)).join(' ');
}
