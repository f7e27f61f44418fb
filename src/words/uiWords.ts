import type { LengthFault } from '../model/parseLength.ts';
import type { NumberFault } from '../model/parseNumber.ts';

/** What the frame of the app, the Survey stage, the plan page and the job list say. */
export const ui = {
  close: 'Close',
  also: (length: string): string => `Also ${length}`,
  unitOf: (label: string, unit: string): string => `Unit of ${label}: ${unit}. Change the unit`,
  numberTooSmall: (min: number, unit = ''): string => `Too small. Type ${min}${unit && ` ${unit}`} or more.`,
  numberTooLarge: (max: number, unit = ''): string => `Too large. Type ${max}${unit && ` ${unit}`} or less.`,
  measureTooSmall: (least: string): string => `Too short. Type ${least} or more.`,
  measureTooLarge: (most: string): string => `Too long. Type ${most} or less.`,
  readOnlyRefusal: {
    otherTab: 'Nothing was changed: this job is open for drawing in another tab. Close it there to draw here.',
    newerFile: 'Nothing was changed: this job was saved by a newer Slabtooth and can only be read here.',
  },
  app: 'Slabtooth',
  stages: { survey: 'Survey', prep: 'Prep', takeoff: 'Takeoff', crew: 'Crew', handover: 'Handover' },
  stagesLabel: 'Stages of the job',
  fit: 'Fit',
  undo: 'Undo',
  redo: 'Redo',
  undoWhat: (what: string): string => `Undo: ${what}`,
  redoWhat: (what: string): string => `Redo: ${what}`,
  jobMenu: 'Job menu',
  jobHeading: (job: string, stage: string): string => `${job}: ${stage}`,
  more: 'More',
  backToJobs: 'Back to the jobs',
  chooseStage: 'Choose a stage',
  jobAndFloor: (job: string, floor: string): string => `${job}, ${floor}`,
  invented: 'Invented example',
  menu: {
    saveFile: 'Save file',
    saveCrewCopy: 'Save crew copy',
    saveCrewCopyMore: 'without rates, wages, prices',
    planPage: 'Plan page',
    rename: 'Rename the job',
    floors: 'Floor',
    addFloor: 'Add a floor',
    renameFloor: 'Rename this floor',
    units: 'Units',
    metric: 'Metres',
    imperial: 'Feet and inches',
    theme: 'Screen',
    themes: { device: 'As the device', light: 'Light', dark: 'Dark', daylight: 'Daylight, for glare' },
    rates: 'Rates and prices',
    jobs: 'All jobs',
  },
  copy: {
    saving: 'Saving',
    saved: 'Saved on this device',
    onFile: (when: string): string => `Copy on file ${when}`,
    editsSince: (when: string, edits: number): string => `Copy on file ${when}, ${edits} edits since`,
    never: 'Saved here, no copy on file',
    failed: 'Not saved: the disk is full',
    notSaved: 'Not saved',
    readOnly: 'Read only',
  },
  rename: { title: 'Name of the job', label: 'Name', do: 'Rename', floorTitle: 'Name of the floor' },
  newFloorName: (count: number): string => `Floor ${count}`,
  groundFloor: 'ground floor',
  cancel: 'Leave it',
  needsName: 'Type a name first.',
  why: 'Why',
  zones: 'Zones',
  zoneSheet: 'Picked zone',
  readOnlyBar: {
    otherTab: 'Read only: this job is open in another tab. Close it there and you can draw here.',
    newerFile:
      'Read only: a newer Slabtooth saved this job. Load the page again to get the newer one, or ask for an older file.',
  },
  remove: 'Remove',
  done: 'Done',
  saveNow: 'Save file',
  show: 'Show',
  retry: 'Try again',
  crash: 'This part of the screen stopped. Your job is kept. Load the page again to go on.',
  takeoffStopped: 'The numbers are not up to date: working them out has stopped. Load the page again to go on.',
  reload: 'Load again',
  newVersion: 'A newer Slabtooth is ready. It is used when you load the page again.',
  replaced: 'Another tab went on to a newer Slabtooth. Load this page again before you go on.',
  useIt: 'Use it now',
  overtaken: 'Not undone: the same thing has been changed on another device since.',
} as const;

const EXAMPLE: Readonly<Record<string, string>> = { ft: '12\' 6 1/2"', in: '6 1/2', m: '3.81', cm: '381', mm: '3810' };

/** What is wrong with a typed length, and what to type instead. */
export function lengthFault(fault: LengthFault, what: string, unit: string): string {
  const example = EXAMPLE[unit] ?? '3.81';
  const sentences: Readonly<Record<LengthFault, string>> = {
    empty: `Type a length, for example ${example}.`,
    notALength: `"${what}" is not a length. Type it like ${example}.`,
    negative: 'A length cannot be less than nothing. Leave the minus out.',
    ambiguousComma: `"${what}" can be read two ways. Type ${what.replace(',', '')} or ${what.replace(',', '.')}.`,
    ambiguousFraction: `"${what}" can be read two ways. Type the feet with ' and the inches with ".`,
    twoNumbers: `"${what}" is two numbers. Type one, for example ${example}.`,
    unitsMixed: `"${what}" mixes units. Type one kind, for example ${example}.`,
    inchesOver12: `${what} inches is a foot or more. Add it to the feet.`,
    brokenFeetWithInches: `"${what}" is part of a foot with inches behind it. Type whole feet and inches.`,
    divideByZero: `"${what}" divides by nothing. Type it like ${example}.`,
    tooLong: 'That is over 10 kilometres. Check the unit at the right of the field.',
  };
  return sentences[fault];
}

export function numberFault(fault: NumberFault, what: string): string {
  const sentences: Readonly<Record<NumberFault, string>> = {
    empty: 'Type a number, for example 12.5.',
    notANumber: `"${what}" is not a number. Type it like 12.5.`,
    negative: 'It cannot be less than nothing. Leave the minus out.',
    ambiguousComma: `"${what}" can be read two ways. Type ${what.replace(',', '')} or ${what.replace(',', '.')}.`,
  };
  return sentences[fault];
}
