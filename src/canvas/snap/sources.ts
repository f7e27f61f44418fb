import { axisSource } from './axis.ts';
import { cornerSource } from './corners.ts';
import { crossingSource } from './crossings.ts';
import { edgeSource } from './edges.ts';
import { extensionSource } from './extensions.ts';
import type { SnapScene } from './floorLines.ts';
import { gridSource } from './grid.ts';
import { middleSource } from './middles.ts';
import { parallelSource } from './parallels.ts';
import type { SnapSource } from './snap.ts';
import { squareSource } from './squares.ts';

/** All that a hand can snap to on a floor. `gridMm` null: no grid, as when a page is traced. */
export function snapSources(scene: SnapScene, gridMm: number | null): readonly SnapSource[] {
  const sources = [
    cornerSource(scene),
    crossingSource(scene),
    middleSource(scene),
    squareSource(scene),
    parallelSource(scene),
    extensionSource(scene),
    edgeSource(scene),
    axisSource(scene),
  ];
  return gridMm === null ? sources : [...sources, gridSource(gridMm)];
}
