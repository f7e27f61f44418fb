import type { Doc } from '../model/doc.ts';
import { passageTag } from '../takeoff/passageTag.ts';
import { prepText } from '../words/stageWords.ts';

/** What people call a passage: its number, or what it is. */
export function passageName(doc: Doc, passage: string): string {
  return passageTag(doc, passage) ?? (passage.includes('#') ? prepText.theDoorway : prepText.theWayIn);
}
