import { codeWords } from './codeWords.ts';
import { recordName } from './recordName.ts';
import { unitOnScreen } from './showQuantity.ts';
import type { Doc } from '../../model/doc.ts';
import type { Term } from '../../takeoff/line.ts';
import { recordOf } from '../../model/doc.ts';
import { zoneNumber } from '../prep/zoneNames.ts';
import { whyText } from '../../words/whyWords.ts';

/** A term by name. Terms that are lines of their own carry a key: code, zone, and what it is of. */
export function termWords(term: Term, doc: Doc): string {
  const [code = '', zone, ...of] = term.name.split('|');
  if (zone === undefined) return sentenceStart(recordName(term.name, doc));
  const record = recordOf(doc, 'zone', zone);
  const where = zone === 'floor' ? [] : [record ? whyText.zone(zoneNumber(record)) : whyText.rest];
  return [codeWords(code), ...of.map((part) => recordName(part, doc)), ...where].join(', ');
}

function sentenceStart(text: string): string {
  return unitOnScreen(text.charAt(0).toUpperCase() + text.slice(1));
}
