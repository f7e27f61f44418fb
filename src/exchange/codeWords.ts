import { findingRowOf } from '../takeoff/rates/findings.ts';
import { lineTitleOf } from '../words/takeoffWords.ts';

/** Title of a line by its code, findings by their kind. */
export function codeWords(code: string): string {
  return lineTitleOf(code, (kind) => findingRowOf(kind)?.term ?? kind);
}
