import { drawJoint } from '../../edit/drawJoint.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { choiceSetting, optionalNumber } from './settings.ts';

export const jointTool = pathTool({
  id: 'joint',
  closed: false,
  call: (env, id, path) =>
    callOf(drawJoint, {
      id,
      floor: env.floor,
      path,
      kind: choiceSetting(env, 'kind', ['control', 'construction', 'isolation']),
      treat: choiceSetting(env, 'treat', ['carried', 'filled']),
      ...optionalNumber(env, 'widthMm'),
      ...optionalNumber(env, 'depthMm'),
    }),
});
