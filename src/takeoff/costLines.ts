import type { Doc } from '../model/doc.ts';
import { equipmentLines, type ToolHours } from './equipmentLines.ts';
import { goodsLines } from './goodsLines.ts';
import { labourLines } from './labourLines.ts';
import type { Line } from './line.ts';
import { lumpLines } from './lumpLines.ts';
import type { RateBook } from './rates/rateBook.ts';
import { besidesCostLines } from './besidesCostLines.ts';
import { travelLines } from './travelLines.ts';
import { wasteCostLines } from './wasteCostLines.ts';

/** What the direct cost is made of, and what nobody has set a price for. */
export interface Direct {
  readonly lines: readonly Line[];
  readonly missing: readonly string[];
}

/** A cost knows the job and its prices, and no floor: the same lines price one floor or all of them. */
export interface CostSite {
  readonly doc: Doc;
  readonly book: RateBook;
}

export interface CostInputs extends ToolHours {
  readonly crewHours: Line;
  /** Hours of the floor as a whole: set-up, moves, tear-down. Floors of one job share some of them. */
  readonly onSite: readonly Line[];
  /** Person-hours of zones that are worked at night. */
  readonly atNight: readonly Line[];
  /** Lines of material, dust and orders, zones and floor. */
  readonly material: readonly Line[];
  /** Quantities off the plan: tests, mock-up, masked walls. */
  readonly quantities: readonly Line[];
}

/**
 * Labour, equipment, tooling, goods, waste, travel, tests, mock-up, masking and lump sums, each a line of whole minor
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

/** The price of a code, or null with the code noted among what has no price. */
export function priceOrMissing({ book }: CostSite, code: string, missing: Set<string>) {
  const price = book.price(code);
  if (!price) missing.add(code);
  return price;
}
