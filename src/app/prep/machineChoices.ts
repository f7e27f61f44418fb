import type { RecordId } from '../../model/cell.ts';
import { recordOf, recordsOf, type Doc } from '../../model/doc.ts';
import { showLength } from '../../model/showLength.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import type { Machine } from '../../model/records/machine.ts';
import { defaultMachine } from '../../takeoff/fleet.ts';
import { passageMm } from '../../takeoff/planShape.ts';
import { cascadeOf, type ZonePrep } from '../../takeoff/prep.ts';
import type { MethodRow } from '../../takeoff/rates/methodRow.ts';
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

/**
 * Machines that can follow those of a zone: of the same kind of work, no wider than its first one and not there yet. The
 * fleet first, then what the book has besides.
 */
export function followerChoices(doc: Doc, prep: ZonePrep, units: Units): readonly PickerOption<string>[] {
  const { machine: first, passes } = prep;
  const group = methodOf(passes[0]?.method ?? '')?.group;
  if (!first || !group) return [];
  const there = new Set(cascadeOf(prep).map(({ id }) => id));
  const fits = (machine: Machine): boolean =>
    methodOf(machine.method)?.group === group && machine.cutWidthMm <= first.cutWidthMm;
  const fleet = recordsOf(doc, 'machine').filter((machine) => !there.has(machine.id) && fits(machine));
  const owned = new Set([first.method, ...recordsOf(doc, 'machine').map((machine) => machine.method)]);
  const book = methods.flatMap((row) => {
    const machine = owned.has(row.id) || isHandMethod(row) ? null : defaultMachine(row.id);
    return machine && fits(machine) ? [machine] : [];
  });
  const needs = (machine: Machine): string => figureText(showLength(passageMm(machine), units));
  return [
    ...fleet.map((machine) => ({ value: machine.id, words: machine.name, more: prepText.yoursNeeds(needs(machine)) })),
    ...book.map((machine) => ({ value: BY_METHOD + machine.method, words: machine.name })),
  ];
}

/** Kinds of machine in the book that can follow those of a zone. */
export function followerMethods({ machine: first, passes }: ZonePrep): readonly MethodRow[] {
  const group = methodOf(passes[0]?.method ?? '')?.group;
  return methods.filter((row) => {
    if (!first || row.group !== group || isHandMethod(row)) return false;
    const machine = defaultMachine(row.id);
    return machine !== null && machine.cutWidthMm <= first.cutWidthMm;
  });
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
