/**
 * What the engine is told about one floor, and what it answers.
 *
 *        wall (hard)                    X = N and an apron where the floor runs on
 *   +-----------------+                 W = hard faces
 *   |  strip          |                 field + strip + tight = net, each summed on its own
 *   |  +-----------+  :  run
 *   |  |  field  # |  :  apron          # = obstruction, all its faces hard
 *   |  +-----------+  :
 *   +-----------------+
 *
 * Rings and lines only: the engine knows no slab, no record, no price. `id` is whatever the caller
 * likes to get back. Lengths in mm, areas in m2. Rings are open (first corner not repeated), of
 * either direction; edge i runs from corner i to corner i + 1.
 */
export type Point = readonly [x: number, y: number];
export type Ring = readonly Point[];
/** Outer ring first, then its holes. */
export type Region = readonly (readonly Ring[])[];

/** How a face meets a machine. `run`: the floor goes on past it, so it is not a face at all. */
export type FaceKind = 'wall' | 'obstruction' | 'drop' | 'stop' | 'run';

export interface SlabShape {
  readonly id: string;
  readonly ring: Ring;
  /** One per edge, same count as `ring`; never 'obstruction'. */
  readonly faces: readonly FaceKind[];
  /** Clear width and height of an edge that is a doorway, for its reasons; null elsewhere. */
  readonly passages: readonly (Passage | null)[];
}

/** A way through: floor of net, with clear width and height in mm (height null: not limited). */
export interface Passage {
  readonly id: string;
  readonly widthMm: number;
  readonly heightMm: number | null;
}

/** A wall that stands on the slab: its body, and the gaps in it. Floor inside a gap is net floor. */
export interface WallShape {
  readonly id: string;
  readonly body: Ring;
  readonly gaps: readonly { readonly passage: Passage; readonly ring: Ring }[];
}

export interface SolidShape {
  readonly id: string;
  readonly ring: Ring;
  /** False: floor stays under it and is not taken from net ("cleared before"); its faces are soft. */
  readonly solid: boolean;
}

export interface LineShape {
  readonly id: string;
  readonly path: readonly Point[];
}

export interface PatchShape {
  readonly id: string;
  readonly ring: Ring;
}

/** A zone; later in the list lies on top and wins where two overlap. */
export interface ZoneShape extends PatchShape {
  readonly machine: string | null;
  /** Smaller machines that work what the one before left, in their order. */
  readonly followedBy?: readonly string[];
}

/** One machine: `headRadiusMm` is half its cut width. */
export interface MachineShape {
  readonly id: string;
  readonly headRadiusMm: number;
  readonly clearanceMm: {
    readonly wall: number;
    readonly obstruction: number;
    readonly drop: number;
    readonly stop: number;
  };
  readonly lapMm: number;
  /** Least clear width it passes: max(2(r + c), body width, smallest opening). */
  readonly passageMm: number;
  /** Radius of the circle it turns in; absent: on the spot. */
  readonly turningRadiusMm?: number;
  readonly heightMm: number;
}

export interface FloorShape {
  readonly slabs: readonly SlabShape[];
  readonly walls: readonly WallShape[];
  readonly solids: readonly SolidShape[];
  readonly outOfScope: readonly PatchShape[];
  readonly zones: readonly ZoneShape[];
  /** Machine of the rest of the slab, which no zone covers. */
  readonly restMachine: string | null;
  readonly restFollowedBy?: readonly string[];
  readonly findings: readonly PatchShape[];
  readonly lines: readonly LineShape[];
  readonly machines: readonly MachineShape[];
  /** Where machines come on to the floor; with none, every piece counts as entered. */
  readonly entrances: readonly {
    readonly id: string;
    readonly at: Point;
    readonly widthMm: number | null;
    readonly heightMm: number | null;
  }[];
}

/** Metres of face by kind; `hidden` are faces beside floor that no machine works. */
export interface FaceMetres {
  readonly wall: number;
  readonly obstruction: number;
  readonly drop: number;
  readonly stop: number;
  readonly hidden: number;
}

/** The place that keeps a machine out: free width between two faces, and what it needs. */
export interface NarrowGap {
  readonly machine: string;
  readonly widthMm: number;
  readonly needsMm: number;
  /** The two faces' ends of the width, to draw it. */
  readonly from: Point;
  readonly to: Point;
  /** What stands on either side: kind of face, and id of what the face belongs to. */
  readonly sides?: readonly [GapSide, GapSide];
}

export interface GapSide {
  readonly kind: Exclude<FaceKind, 'run'>;
  readonly of: string;
}

export interface TightPiece {
  readonly kind: 'cutOff' | 'gap';
  readonly areaM2: number;
  readonly region: Region;
  readonly at: Point;
  readonly zone: string;
  /** The passage that keeps the machine out, when there is one. */
  readonly blockedBy: { readonly passage: Passage; readonly needsMm: number; readonly what: 'width' | 'height' } | null;
  /** A face that it lies along and that the head keeps so far off that hand area is left and no strip: a drop. */
  readonly keptOff?: { readonly kind: Exclude<FaceKind, 'run'>; readonly clearanceMm: number } | null;
  /** Where no passage is the reason: the narrowest place of the piece, or between it and reached floor. */
  readonly gap?: NarrowGap | null;
}

/** What one machine of a zone's cascade works, after those before it. */
export interface MachineField {
  readonly machine: string;
  readonly areaM2: number;
  readonly region: Region;
  /** The passage that keeps this machine out of all of the zone, when there is one. */
  readonly blockedBy?: TightPiece['blockedBy'];
}

/** Areas of one zone where just these findings lie over each other. */
export interface FindingParts {
  readonly findings: readonly string[];
  readonly fieldM2: number;
  readonly stripM2: number;
  readonly tightM2: number;
}

/** Metres of one line in the parts of a zone. */
export interface LineParts {
  readonly fieldM: number;
  readonly stripM: number;
  readonly tightM: number;
}

/** Everything of one zone, or of the rest of the slab (id REST). */
export interface ZoneMeasure {
  readonly id: string;
  readonly machine: string | null;
  readonly netM2: number;
  /** All machines of the cascade together; each alone in `fields`. */
  readonly fieldM2: number;
  readonly stripM2: number;
  readonly tightM2: number;
  readonly cutOffM2: number;
  /** Strip that a machine's head covers as well. */
  readonly lapM2?: number;
  readonly fields?: readonly MachineField[];
  readonly faces: FaceMetres;
  /** Corners of hard faces beside machine field; inner ones are finished by hand. */
  readonly innerCorners: number;
  readonly outerCorners: number;
  readonly lengthM: Readonly<Record<string, number>>;
  readonly findingM2: Readonly<Record<string, number>>;
  readonly lineParts?: Readonly<Record<string, LineParts>>;
  readonly findingParts?: readonly FindingParts[];
  /** Solids that stand in this zone by the larger part of their outline, with their plan area. */
  readonly solids: readonly string[];
  readonly net: Region;
  readonly field: Region;
  readonly strip: Region;
  readonly tight: readonly TightPiece[];
  /** Faces for drawing: each piece with its kind, as a polyline. */
  readonly faceLines: readonly {
    readonly kind: Exclude<FaceKind, 'run'>;
    readonly of: string;
    readonly path: readonly Point[];
    readonly hidden: boolean;
  }[];
}

export interface GeometryFault {
  readonly record: string;
  readonly code: string;
  readonly at: Point | null;
}

export interface FloorMeasure {
  readonly grossM2: number;
  readonly deductedM2: Readonly<Record<string, number>>;
  readonly netM2: number;
  readonly perimeterM: number;
  readonly zones: readonly ZoneMeasure[];
  readonly faults: readonly GeometryFault[];
}

export const REST = 'rest';
