import type { Matrix } from '../../geometry/transform.ts';
import type { Held } from '../../model/doc.ts';
import type { Paint } from './prim.ts';

/** A page that has not been faded by the user is shown as it is. */
const AS_IT_IS = 1;

export const paintPage: Paint<Held<'page'>, Matrix> = (page, matrix) => [
  {
    kind: 'image',
    hash: page.image,
    matrix,
    widthPx: page.widthPx,
    heightPx: page.heightPx,
    opacity: Math.min(1, Math.max(0, page.fade ?? AS_IT_IS)),
  },
];
