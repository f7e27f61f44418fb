import { drawFinding } from '../../edit/drawFinding.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { optionalNumber, textSetting } from './settings.ts';

export const findingTool = pathTool({
  id: 'finding',
  closed: true,
  call: (env, id, ring) =>
    callOf(drawFinding, {
      id,
      floor: env.floor,
      ring,
      kind: textSetting(env, 'kind', 'oil_light'),
      ...optionalNumber(env, 'thicknessMm'),
      ...optionalNumber(env, 'depthMm'),
    }),
});
