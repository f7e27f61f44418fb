import type { CostInputs, CostSite } from './costInputs.ts';
import { equipmentLines } from './equipmentLines.ts';
import { goodsLines } from './goodsLines.ts';
import { labourLines } from './labourLines.ts';
import type { Line } from './line.ts';
import { lumpLines } from './lumpLines.ts';
import { besidesCostLines } from './besidesCostLines.ts';
import { travelLines } from './travelLines.ts';
import { wasteCostLines } from './wasteCostLines.ts';

/** What the direct cost is made of, and what nobody has set a price for. */
export interface Direct {
  readonly lines: readonly Line[];
  readonly missing: readonly string[];
}

/**
 * Labour, equipment, tooling, goods, waste, travel, tests, mock-up and lump sums, each a line of whole minor
 * units (cents). Structure of the build-up: common practice, no source.
 */
export function directLines(site: CostSite, inputs: CostInputs): Direct {
  const missing = new Set<string>();
  const lines = [
    ...labourLines(site, inputs),
    ...equipmentLines(site, inputs, missing),
    ...goodsLines(site, inputs.material, missing),
    ...wasteCostLines(site, inputs.material, missing),
    ...travelLines(site, inputs, missing),
    ...besidesCostLines(site, inputs.quantities, missing),
    ...lumpLines(site),
  ];
  return { lines, missing: [...missing] };
}
