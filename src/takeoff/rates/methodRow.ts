import type { RateRow, Sourced } from './rateRow.ts';

export type MethodGroup =
  | 'wash'
  | 'etch'
  | 'buff'
  | 'strip'
  | 'waterJet'
  | 'openBlast'
  | 'handGrind'
  | 'grind'
  | 'bush'
  | 'shot'
  | 'scarify'
  | 'scabble'
  | 'handImpact'
  | 'handScrape'
  | 'scrape'
  | 'chase';

/** A way to prepare concrete. A null size: the method has no machine of its own. */
export interface MethodRow {
  readonly id: string;
  readonly term: string;
  readonly group: MethodGroup;
  /** ICRI concrete surface profile it can give. */
  readonly csp: readonly [min: number, max: number];
  readonly cspFrom: Sourced;
  /** Concrete taken off in one pass, mm. */
  readonly removalMm: readonly [low: number, high: number];
  readonly cutWidthMm: number | null;
  /** Band that it leaves at a face, mm. */
  readonly edgeClearanceMm: readonly [low: number, high: number];
  readonly smallestOpeningMm: number | null;
  readonly massKg: readonly [low: number, high: number] | null;
  readonly maxSlopeDeg: number;
  readonly power: {
    readonly supply: string;
    readonly kW: readonly [low: number, high: number];
    readonly volts: string;
    readonly amps: string;
  };
  readonly dust: {
    readonly control: string;
    readonly vacuumM3h: number;
    readonly waterLMin: number;
    /** Entry of 29 CFR 1926.1153 Table 1; null or a question: paragraph (d) applies, not "nothing needed". */
    readonly silicaEntry: string | null;
  };
  readonly crew: number;
  readonly noiseDbA: readonly [low: number, high: number];
  readonly waste: string;
  /** Area (or metres, by its unit) finished in a crew-hour, one pass, open dry room of 200 to 1000 m2, medium bare concrete. */
  readonly rate: Omit<RateRow, 'code' | 'term'>;
  readonly cannot: string;
}
