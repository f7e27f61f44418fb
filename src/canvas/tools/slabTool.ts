import { drawSlab } from '../../edit/drawSlab.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { choiceSetting, optionalNumber } from './settings.ts';

export const slabTool = pathTool({
  id: 'slab',
  closed: true,
  once: true,
  call: (env, id, ring) =>
    callOf(drawSlab, {
      id,
      floor: env.floor,
      ring,
      ...optionalNumber(env, 'thicknessMm'),
      ...(env.settings['builtUp'] ? { builtUp: choiceSetting(env, 'builtUp', ['onGround', 'suspended']) } : {}),
    }),
});
