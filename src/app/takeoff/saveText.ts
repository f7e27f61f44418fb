import { fileSave } from 'browser-fs-access';

/** Offers a text as a file. Turning the picker away is an answer, not a fault. */
export async function saveText(text: string, fileName: string, type: string): Promise<void> {
  const safe = fileName.replaceAll(/[\\/:*?"<>|]/g, '-');
  const blob = new Blob([text], { type });
  try {
    await fileSave(blob, { fileName: safe, extensions: [safe.slice(safe.lastIndexOf('.'))] });
  } catch (error) {
    if ((error as Error).name !== 'AbortError') throw error;
  }
}
