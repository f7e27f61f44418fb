import { drawCrack } from '../../edit/drawCrack.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { choiceSetting, numberOrNull } from './settings.ts';

export const crackTool = pathTool({
  id: 'crack',
  closed: false,
  // A crack runs as it likes: it may begin or end at something, but is parallel or square to nothing.
  snaps: ['corner', 'edge'],
  call: (env, id, path) =>
    callOf(drawCrack, {
      id,
      floor: env.floor,
      path,
      widthMm: numberOrNull(env, 'widthMm'),
      depthMm: numberOrNull(env, 'depthMm'),
      behaviour: choiceSetting(env, 'behaviour', ['notJudged', 'static', 'working', 'structural']),
    }),
});
