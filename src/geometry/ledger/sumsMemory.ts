import type { FaceMetres, FindingParts, LineParts, Point } from '../floorShape.ts';
import type { FaceTally } from './faceTally.ts';

/*
 * The sums of zones, and what stays of them from one measure to the next.
 *
 *     number of a cell      0           1           2
 *     `cells`            a, field    a, strip    rest, NET         once met, a cell keeps its number
 *     `areas`             80.2e6      12.4e6      95.1e6
 */

/** The numbers of one zone. Areas in m2, lengths in m. */
export interface ZoneSums {
  readonly number: number;
  readonly id: string;
  readonly machine: string | null;
  /** All net floor of the zone, added up apart from its parts. */
  readonly netM2: number;
  readonly fieldM2: number;
  readonly stripM2: number;
  readonly tightM2: number;
  readonly lapM2: number;
  readonly fields: readonly { readonly machine: string; readonly areaM2: number }[];
  readonly faces: FaceMetres;
  readonly hiddenFaces: Omit<FaceMetres, 'hidden'>;
  readonly innerCorners: number;
  readonly outerCorners: number;
  readonly lengthM: Readonly<Record<string, number>>;
  readonly lineParts: Readonly<Record<string, LineParts>>;
  readonly findingM2: Readonly<Record<string, number>>;
  readonly findingParts: readonly FindingParts[];
}

/** Sums that go on from one measure to the next: what did not change is not added up again. */
export interface SumsMemory {
  /** A number for each cell that any tile ever had, by zone, part and findings. */
  readonly cellNumbers: Map<string, number>;
  readonly cells: KnownCell[];
  /** Numbers of the cells of a zone. */
  readonly cellsOfZone: Map<number, number[]>;
  /** Area of each cell, in mm2, over all tiles. */
  areas: Float64Array;
  /** Lines of each zone by line number. */
  readonly lines: Map<number, Map<number, LineInZone>>;
  readonly findingIds: Map<number, string>;
  readonly faces: Map<number, FaceTally>;
  readonly zones: Map<number, ZoneSums>;
  deductedM2: Readonly<Record<string, number>>;
  /** True when a finding came to lie on the floor in some part of a zone, or left it. */
  isFindingMoved: boolean;
  offFindings: readonly { readonly id: string; readonly at: Point | null }[];
  /** Lines that lie off the floor altogether. */
  readonly offLines: Map<number, { readonly id: string; readonly at: Point | null }>;
}

export interface LineInZone {
  readonly id: string;
  readonly parts: LineParts;
}

export interface KnownCell {
  readonly zone: number;
  readonly findings: readonly number[];
  readonly part: number;
}

export function sumsMemory(): SumsMemory {
  return {
    cellNumbers: new Map(),
    cells: [],
    cellsOfZone: new Map(),
    areas: new Float64Array(0),
    lines: new Map(),
    findingIds: new Map(),
    faces: new Map(),
    zones: new Map(),
    deductedM2: {},
    isFindingMoved: false,
    offFindings: [],
    offLines: new Map(),
  };
}
