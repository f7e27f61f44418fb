import { drawOutOfScope } from '../../edit/drawOutOfScope.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { textSetting } from './settings.ts';

export const outOfScopeTool = pathTool({
  id: 'outOfScope',
  closed: true,
  call: (env, id, ring) => {
    const reason = textSetting(env, 'reason', '');
    return callOf(drawOutOfScope, { id, floor: env.floor, ring, ...(reason === '' ? {} : { reason }) });
  },
});
