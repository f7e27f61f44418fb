import type { Sourced } from './rateRow.ts';

/** What is put on a floor to clean, strip or etch it. */
export type Chemical =
  | 'degreaser'
  | 'cleaner'
  | 'finishStripper'
  | 'coatingStripper'
  | 'etch'
  | 'etchGel'
  | 'neutraliser'
  | 'hypochlorite';

/** Anything on or wrong with the floor: what removes it, and which hold it calls for. */
export interface FindingRow extends Sourced {
  readonly id: string;
  readonly term: string;
  readonly treatment: string;
  /** The method that removes it, or null when none may be planned. */
  readonly method: string | null;
  /** Row of factors.ts that slows the zone's own passes over it. */
  readonly factor: string | null;
  /** always: presumed asbestos until tested. old: unless the building is known to be later than 1980. */
  readonly asbestos: 'always' | 'old' | 'no';
  /** Paint and coatings: no dry abrasion until tested for lead, whatever the year. */
  readonly lead: boolean;
  /** What is put on it; null where nothing is. */
  readonly chemical: Chemical | null;
  readonly chemicalLM2: number;
  readonly dwellMin: number;
  readonly rinseLM2: number;
  readonly neutraliser?: string;
  readonly releaseCheck: string;
}
