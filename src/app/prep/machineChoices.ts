import type { RecordId } from '../../model/cell.ts';
import { recordOf, recordsOf, type Doc } from '../../model/doc.ts';
import { showLength } from '../../model/showLength.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { passageMm } from '../../takeoff/planShape.ts';
import { isHandMethod, methodOf, methods } from '../../takeoff/rates/methods.ts';
import type { PickerOption } from '../parts/Picker.tsx';
import { prepText } from '../../words/stageWords.ts';

const BY_METHOD = 'method:';

/** The fleet first, then the machines of the book that nobody has added, then the hand tools for a zone without a machine. */
export function machineChoices(doc: Doc, units: Units): readonly PickerOption<string>[] {
  const fleet = recordsOf(doc, 'machine').filter((machine) => !isHand(machine.method));
  const owned = new Set(fleet.map((machine) => machine.method));
  const book = methods.filter(
    (row) => row.cutWidthMm !== null && row.group !== 'chase' && !isHandMethod(row) && !owned.has(row.id),
  );
  const byHand = methods.filter((row) => row.group !== 'chase' && (isHandMethod(row) || row.cutWidthMm === null));
  return [
    ...fleet.map((machine) => ({
      value: machine.id,
      words: machine.name,
      more: prepText.yoursNeeds(figureText(showLength(passageMm(machine), units))),
    })),
    ...book.map((row) => ({ value: BY_METHOD + row.id, words: row.term })),
    ...byHand.map((row) => ({ value: BY_METHOD + row.id, words: row.term, more: prepText.byHand })),
  ];
}

function isHand(method: string): boolean {
  const row = methodOf(method);
  return row !== null && isHandMethod(row);
}

/** The method and machine record that a choice stands for. */
export function machineOfChoice(
  doc: Doc,
  choice: string,
): { readonly method: string; readonly machine: RecordId | null } {
  const machine = recordOf(doc, 'machine', choice);
  if (machine) return { method: machine.method, machine: machine.id };
  return { method: choice.slice(BY_METHOD.length), machine: null };
}
