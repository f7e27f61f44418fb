/** One row of the price list, as it stands before anyone has set his own. Whole minor units (cents). */
export interface PriceRow {
  readonly code: string;
  readonly term: string;
  readonly unit: string;
  readonly amount: number;
}
