import { planStoreNow, run, undo, unitsNow } from '../plan.ts';
import { pick, say, session } from '../session.ts';
import { surveyText } from '../../words/surveyWords.ts';
import { ui } from '../../words/uiWords.ts';
import { itemLine } from './itemLine.ts';

/** Takes what is picked off the plan and says how to bring it back. */
export function removePicked(): boolean {
  const { picked } = session();
  if (picked.length === 0) return false;
  const doc = planStoreNow().getState();
  const [first] = picked;
  const line = first && itemLine(doc, first, unitsNow());
  const words = picked.length === 1 && line ? `${line.tag} ${line.words}` : surveyText.several(picked.length);
  if (!run('removeRecords', { ids: [...picked] })) return false;
  pick([]);
  say(surveyText.removed(words), { words: ui.undo, run: undo });
  return true;
}
