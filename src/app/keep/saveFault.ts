/** Why the last edits are not in the database. They stay in memory, are tried again, and go into a file all the same. */
export type SaveFault =
  /** The disk is full, or the browser gives this page no more room. */
  | 'diskFull'
  | 'writeFailed'
  /** Another tab has taken the job over while this one slept. */
  | 'takenOver'
  /** This browser keeps nothing for us. */
  | 'noDatabase';

export type SaveState =
  | { readonly at: 'saved' }
  | { readonly at: 'saving' }
  | { readonly at: 'notSaved'; readonly fault: SaveFault; readonly what: string; readonly waiting: number };

export class TakenOver extends Error {
  constructor() {
    super('another tab writes this job');
    this.name = 'TakenOver';
  }
}

/** What went wrong with a write, by the name that the browser gave it. */
export function saveFaultOf(error: unknown): SaveFault {
  if (!(error instanceof Error)) return 'writeFailed';
  if (error.name === 'TakenOver') return 'takenOver';
  if (error.name === 'NoDatabase') return 'noDatabase';
  return error.name === 'QuotaExceededError' || /quota|disk|full|space/i.test(error.message)
    ? 'diskFull'
    : 'writeFailed';
}
