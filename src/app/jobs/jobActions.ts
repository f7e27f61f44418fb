import { fileSave } from 'browser-fs-access';
import type { WrittenFile } from '../keep/openJob.ts';
import type { SaveFault } from '../keep/saveFault.ts';
import { useOpen } from '../plan.ts';
import { say } from '../session.ts';
import { jobText, saveFaultWords } from '../../words/jobWords.ts';
import { ui } from '../../words/uiWords.ts';
import { noteSaved, useKept } from './kept.ts';
import { shortDay } from './shortDay.ts';

/** True when the file has been written, false when the person left the picker without choosing a place. */
async function toDisk({ fileName, bytes }: WrittenFile): Promise<boolean> {
  const blob = new Blob([new Uint8Array(bytes)], { type: 'application/octet-stream' });
  try {
    await fileSave(blob, { fileName, extensions: ['.slabtooth'], description: jobText.fileKind, id: 'slabtooth' });
    return true;
  } catch (fault) {
    if (fault instanceof DOMException && fault.name === 'AbortError') return false;
    throw fault;
  }
}

/** Writes a file and says so; a fault is said, never thrown away. */
async function save(which: 'whole' | 'crew'): Promise<void> {
  const { job } = useKept.getState();
  if (!job) return;
  try {
    const file = which === 'whole' ? await job.writeFile() : await job.writeCrewFile();
    if (!(await toDisk(file))) return;
    if (which === 'whole') await job.copySaved(file);
    await noteSaved();
    const saved = which === 'whole' ? jobText.fileSaved : jobText.crewSaved;
    say((file.missingImages.length > 0 ? jobText.savedLacking : saved)(file.fileName));
  } catch (fault) {
    say(jobText.fileFailed(fault instanceof Error ? fault.message : String(fault)));
  }
}

export function saveFile(): void {
  void save('whole');
}

/** For the crew: no rates in money, no wages, no prices. */
export function saveCrewCopy(): void {
  void save('crew');
}

/** Where the job's last copy is, in one line. */
export function useCopyLine(): string {
  const { save: state, row } = useKept();
  const readOnly = useOpen()?.readOnly ?? null;
  if (readOnly) return ui.copy.readOnly;
  if (state.at === 'notSaved') return state.fault === 'diskFull' ? ui.copy.failed : ui.copy.notSaved;
  if (state.at === 'saving') return ui.copy.saving;
  if (!row?.lastCopy) return ui.copy.never;
  const when = shortDay(row.lastCopy.on);
  return row.editsSinceCopy > 0 ? ui.copy.editsSince(when, row.editsSinceCopy) : ui.copy.onFile(when);
}

/** Why edits are not being kept, as a sentence; null while they are. */
export function useKeptState(): { readonly fault: string | null } {
  const state = useKept((now) => now.save);
  return { fault: state.at === 'notSaved' ? saveFaultWords(state.fault satisfies SaveFault, state.waiting) : null };
}
