import { drawZone } from '../../edit/drawZone.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { choiceSetting } from './settings.ts';

export const zoneTool = pathTool({
  id: 'zone',
  closed: true,
  call: (env, id, ring) =>
    callOf(drawZone, {
      id,
      floor: env.floor,
      ring,
      place: choiceSetting(env, 'place', ['indoor', 'outdoor']),
      wetAllowed: env.settings['wetAllowed'] === true,
      hardness: choiceSetting(env, 'hardness', ['medium', 'soft', 'hard', 'veryHard']),
    }),
});
