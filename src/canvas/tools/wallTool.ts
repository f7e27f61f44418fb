import { drawWall } from '../../edit/drawWall.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { numberSetting } from './settings.ts';

/** A block wall of one stone; common practice, no source. */
const THICKNESS_MM = 200;

export const wallTool = pathTool({
  id: 'wall',
  closed: false,
  call: (env, id, path) =>
    callOf(drawWall, { id, floor: env.floor, path, thicknessMm: numberSetting(env, 'thicknessMm', THICKNESS_MM) }),
});
