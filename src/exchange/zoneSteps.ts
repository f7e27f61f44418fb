import type { TightPiece, ZoneMeasure } from '../geometry/floorShape.ts';
import { hardMetres } from './hardMetres.ts';
import type { RecordId } from '../model/cell.ts';
import { onFloor, type Doc, type Held } from '../model/doc.ts';
import { isChased } from '../takeoff/crackClass.ts';
import type { PlannedPass, ZonePrep } from '../takeoff/prep.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { tightSpots } from '../takeoff/spotLines.ts';

/**
 * What a crew does in one zone, in order. Plain data without words and without money: paper, the phone card and the
 * overview of ticks read the same list. `of` and `what` name the tick that says it is done.
 */
export type ZoneStep = { readonly of: RecordId; readonly what: string } & (
  | { readonly kind: 'finding'; readonly finding: Held<'finding'>; readonly areaM2: number }
  | { readonly kind: 'cracks'; readonly tags: readonly string[]; readonly metres: number }
  | { readonly kind: 'pass'; readonly pass: PlannedPass }
  | {
      readonly kind: 'edges';
      readonly method: string;
      readonly abrasive: string | null;
      readonly times: number;
      readonly metres: number;
      readonly tightTags: readonly string[];
      readonly handM2: number;
    }
  | { readonly kind: 'joints'; readonly tags: readonly string[]; readonly metres: number }
  | { readonly kind: 'profile' | 'release' }
);

export interface StepsInput {
  readonly doc: Doc;
  readonly floor: RecordId;
  readonly takeoff: Takeoff;
  readonly prep: ZonePrep;
  readonly measure: ZoneMeasure;
}

const TOUCH_M2 = 1e-4;

/** Cracks are chased after the coarse pass opens them and before the last one takes the filler flush. */
export function zoneSteps(input: StepsInput): readonly ZoneStep[] {
  const { doc, floor, prep, measure } = input;
  const zone: RecordId = prep.zone === 'rest' ? (prep.record?.id ?? floor) : prep.zone;
  const passes = prep.passes.map((pass, index): ZoneStep => ({
    kind: 'pass',
    of: pass.record ?? zone,
    what: `pass ${String(index + 1)}`,
    pass,
  }));
  const early = passes.length > 1 ? passes.slice(0, 1) : [];
  const late = passes.length > 1 ? passes.slice(1) : passes;
  const findings = onFloor(doc, 'finding', floor)
    .map((finding) => ({ finding, areaM2: measure.findingM2[finding.id] ?? 0 }))
    .filter(({ areaM2 }) => areaM2 > TOUCH_M2)
    .map(({ finding, areaM2 }): ZoneStep => ({ kind: 'finding', of: finding.id, what: 'finding', finding, areaM2 }));
  return [
    ...findings,
    ...early,
    ...crackStep(input, zone),
    ...late,
    ...edgeSteps(input, zone),
    ...jointStep(input, zone),
    { kind: 'profile', of: zone, what: 'profile' },
    { kind: 'release', of: zone, what: 'release' },
  ];
}

function crackStep({ doc, floor, measure }: StepsInput, zone: RecordId): ZoneStep[] {
  const filled = onFloor(doc, 'crack', floor).filter(
    (crack) => isChased(crack) && (measure.lengthM[crack.id] ?? 0) > 0,
  );
  if (filled.length === 0) return [];
  const metres = filled.reduce((sum, crack) => sum + (measure.lengthM[crack.id] ?? 0), 0);
  return [{ kind: 'cracks', of: zone, what: 'cracks', tags: filled.map((crack) => crack.tag), metres }];
}

function jointStep({ doc, floor, measure }: StepsInput, zone: RecordId): ZoneStep[] {
  const filled = onFloor(doc, 'joint', floor).filter(
    (joint) => joint.treat === 'filled' && joint.kind !== 'isolation' && (measure.lengthM[joint.id] ?? 0) > 0,
  );
  if (filled.length === 0) return [];
  const metres = filled.reduce((sum, joint) => sum + (measure.lengthM[joint.id] ?? 0), 0);
  return [{ kind: 'joints', of: zone, what: 'joints', tags: filled.map((joint) => joint.tag), metres }];
}

function edgeSteps({ takeoff, prep, measure }: StepsInput, zone: RecordId): ZoneStep[] {
  const spots = tightSpots(takeoff.measure.zones).filter((spot) => spot.zone === measure.id);
  const tightTags = spots.map((spot) => spot.tag);
  const handM2 = measure.tight.reduce((sum: number, piece: TightPiece) => sum + piece.areaM2, 0);
  return prep.passes.flatMap((pass, index): ZoneStep[] =>
    pass.edgeMethod === null
      ? []
      : [
          {
            kind: 'edges',
            of: pass.record ?? zone,
            what: `edges ${String(index + 1)}`,
            method: pass.edgeMethod,
            abrasive: pass.edgeAbrasive,
            times: pass.edgeTimes,
            metres: hardMetres(measure),
            tightTags,
            handM2,
          },
        ],
  );
}
