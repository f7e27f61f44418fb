import { placeNote } from '../../edit/placeNote.ts';
import { callOf } from '../../edit/run.ts';
import { textSetting } from './settings.ts';
import { spotTool } from './spotTool.ts';

export const noteTool = spotTool('note', (env, id, at) =>
  callOf(placeNote, { id, floor: env.floor, at, text: textSetting(env, 'text', '') }),
);
