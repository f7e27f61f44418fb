import { placeReading } from '../../edit/placeReading.ts';
import { callOf } from '../../edit/run.ts';
import { numberOrNull, textSetting } from './settings.ts';
import { spotTool } from './spotTool.ts';

export const readingTool = spotTool('reading', (env, id, at) => {
  const takenOn = textSetting(env, 'takenOn', '');
  return callOf(placeReading, {
    id,
    floor: env.floor,
    at,
    kind: textSetting(env, 'kind', ''),
    value: numberOrNull(env, 'value'),
    unit: textSetting(env, 'unit', ''),
    ...(takenOn === '' ? {} : { takenOn }),
  });
});
