import type { Point, Region } from '../../geometry/floorShape.ts';
import { strokesOf } from '../paint/strokes.ts';
import type { LinePrim } from '../paint/prim.ts';

/** Paths of prims, floor mm, kept as long as their prim is. */
export interface LinePaths {
  readonly path: Path2D;
  readonly bars: Path2D | null;
  readonly triangles: Path2D | null;
  readonly teethPx: number;
}

export function tracedPath(paths: Iterable<readonly Point[]>, closed: boolean): Path2D {
  const traced = new Path2D();
  for (const path of paths) {
    for (const [i, [x, y]] of path.entries()) {
      if (i === 0) traced.moveTo(x, y);
      else traced.lineTo(x, y);
    }
    if (closed) traced.closePath();
  }
  return traced;
}

const regions = new WeakMap<Region, Path2D>();

export function regionPath(region: Region): Path2D {
  let path = regions.get(region);
  if (!path) {
    path = tracedPath(region.flat(), true);
    regions.set(region, path);
  }
  return path;
}

const lines = new WeakMap<LinePrim, { readonly pxPerMm: number; readonly paths: LinePaths }>();

/** Shifts and teeth are px, so those lines are traced again when the scale changes; plain ones never. */
export function linePaths(line: LinePrim, pxPerMm: number): LinePaths {
  const known = lines.get(line);
  const sized = line.shiftPx !== undefined || line.teeth !== undefined;
  if (known && (!sized || known.pxPerMm === pxPerMm)) return known.paths;
  const strokes = strokesOf(line, pxPerMm);
  const paths: LinePaths = {
    path: tracedPath([strokes.path], strokes.closed),
    bars: strokes.bars.length > 0 ? tracedPath(strokes.bars, false) : null,
    triangles: strokes.triangles.length > 0 ? tracedPath(strokes.triangles, true) : null,
    teethPx: strokes.teethPx,
  };
  lines.set(line, { pxPerMm, paths });
  return paths;
}
