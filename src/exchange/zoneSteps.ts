import type { TightPiece, ZoneMeasure } from '../geometry/floorShape.ts';
import { edgeMetres } from './edgeMetres.ts';
import type { RecordId } from '../model/cell.ts';
import { onFloor, type Doc, type Held } from '../model/doc.ts';
import { isChased } from '../takeoff/crackClass.ts';
import { grouped } from '../takeoff/grouped.ts';
import type { PlannedPass, ZonePrep } from '../takeoff/prep.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { TOUCH_M2 } from '../takeoff/holds.ts';
import { tightSpots } from '../takeoff/spotLines.ts';
import { workedFields } from '../takeoff/workedFields.ts';
import { upstandRuns, type UpstandRun } from '../takeoff/upstandLines.ts';

/**
 * What a crew does in one zone, in order. Plain data without words and without money: paper, the phone card and the
 * overview of ticks read the same list. `of` and `what` name the tick that says it is done.
 */
export type ZoneStep = { readonly of: RecordId; readonly what: string } & (
  | { readonly kind: 'finding'; readonly finding: Held<'finding'>; readonly areaM2: number }
  | { readonly kind: 'cracks'; readonly tags: readonly string[]; readonly metres: number }
  /** `followers` are the names of machines that do the same pass in what the ones before them leave. */
  | { readonly kind: 'pass'; readonly pass: PlannedPass; readonly followers: readonly string[] }
  | {
      readonly kind: 'edges';
      readonly method: string;
      readonly abrasive: string | null;
      readonly times: number;
      readonly metres: number;
      /** Of stop lines, worked up to with the same tool. */
      readonly stopM: number;
      readonly tightTags: readonly string[];
      readonly handM2: number;
      /** Of that: floor that no machine gets to. */
      readonly cutOffM2: number;
    }
  | { readonly kind: 'upstands'; readonly treat: 'prepare' | 'remove'; readonly runs: readonly UpstandRun[] }
  | { readonly kind: 'joints'; readonly tags: readonly string[]; readonly metres: number }
  | { readonly kind: 'profile' | 'release' }
);

/** Less field than this, m2, shows as nothing on a card. */
const LEAST_FIELD_M2 = 0.005;

export interface StepsInput {
  readonly doc: Doc;
  readonly floor: RecordId;
  readonly takeoff: Takeoff;
  readonly prep: ZonePrep;
  readonly measure: ZoneMeasure;
}

/**
 * What has to go comes off first, then findings; cracks are chased after the coarse pass opens them and before the last one
 * takes the filler flush; what is done by hand alone comes after the machine.
 */
export function zoneSteps(input: StepsInput): readonly ZoneStep[] {
  const { doc, floor, prep, measure } = input;
  const zone: RecordId = prep.zone === 'rest' ? (prep.record?.id ?? floor) : prep.zone;
  const followers = followersIn(input);
  const passes = prep.passes.map((pass, index): ZoneStep => ({
    kind: 'pass',
    of: pass.record ?? zone,
    what: `pass ${String(index + 1)}`,
    pass,
    followers: pass.machine ? followers : [],
  }));
  const early = passes.length > 1 ? passes.slice(0, 1) : [];
  const late = passes.length > 1 ? passes.slice(1) : passes;
  const findings = onFloor(doc, 'finding', floor)
    .map((finding) => ({ finding, areaM2: measure.findingM2[finding.id] ?? 0 }))
    .filter(({ areaM2 }) => areaM2 > TOUCH_M2)
    .map(({ finding, areaM2 }): ZoneStep => ({ kind: 'finding', of: finding.id, what: 'finding', finding, areaM2 }));
  return [
    ...upstandStep(input, zone, 'remove'),
    ...findings,
    ...early,
    ...crackStep(input, zone),
    ...late,
    ...upstandStep(input, zone, 'prepare'),
    ...edgeSteps(input, zone),
    ...jointStep(input, zone),
    { kind: 'profile', of: zone, what: 'profile' },
    { kind: 'release', of: zone, what: 'release' },
  ];
}

/** Machines for which something is left that a crew would bring them for. */
function followersIn({ prep, measure }: StepsInput): readonly string[] {
  return workedFields({ prep, measure, held: null })
    .filter(({ follows, areaM2 }) => follows && areaM2 >= LEAST_FIELD_M2)
    .flatMap(({ machine }) => (machine ? [machine.name] : []));
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

function upstandStep({ doc, floor, measure }: StepsInput, zone: RecordId, treat: 'prepare' | 'remove'): ZoneStep[] {
  const runs = upstandRuns({ doc, floor }, { measure }).filter(({ upstand }) => upstand.treat === treat);
  return runs.length === 0 ? [] : [{ kind: 'upstands', of: zone, what: `upstands ${treat}`, treat, runs }];
}

/** Passes that have the same tool at the edge are one step, so many times over. */
function edgeSteps({ takeoff, prep, measure }: StepsInput, zone: RecordId): ZoneStep[] {
  const spots = tightSpots(takeoff.measure.zones).filter((spot) => spot.zone === measure.id);
  const tightTags = spots.map((spot) => spot.tag);
  const handM2 = measure.tight.reduce((sum: number, piece: TightPiece) => sum + piece.areaM2, 0);
  const planned = prep.passes.map((pass, index) => ({ pass, what: `edges ${String(index + 1)}` }));
  const edged = planned.filter(({ pass }) => pass.edgeMethod !== null && pass.edgeTimes > 0);
  const alike = grouped(edged, ({ pass }) => `${pass.edgeMethod ?? ''} ${pass.edgeAbrasive ?? ''}`);
  return [...alike.values()].flatMap((passes): ZoneStep[] => {
    const [first] = passes;
    if (!first?.pass.edgeMethod) return [];
    return [
      {
        kind: 'edges',
        of: first.pass.record ?? zone,
        what: first.what,
        method: first.pass.edgeMethod,
        abrasive: first.pass.edgeAbrasive,
        times: passes.reduce((sum, { pass }) => sum + pass.edgeTimes, 0),
        metres: edgeMetres(measure),
        stopM: measure.faces.stop,
        tightTags,
        handM2,
        cutOffM2: measure.cutOffM2,
      },
    ];
  });
}
