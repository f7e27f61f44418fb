import { drawDimension } from '../../edit/drawDimension.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';

export const dimensionTool = pathTool({
  id: 'dimension',
  closed: false,
  most: 2,
  call: (env, id, points) => {
    const from = points[0] ?? [0, 0];
    return callOf(drawDimension, { id, floor: env.floor, from, to: points[1] ?? from });
  },
});
