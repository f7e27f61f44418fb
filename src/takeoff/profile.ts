import type { Zone } from '../model/records/zone.ts';
import type { PlannedPass, ZonePrep } from './prep.ts';
import { abrasiveOf, abrasives, type AbrasiveFit, type AbrasiveRow } from './rates/abrasives.ts';
import type { MethodGroup, MethodRow } from './rates/methodRow.ts';
import { isHandMethod, methodOf, methods } from './rates/methods.ts';
import { systemOf } from './rates/systems.ts';

/** A range of ICRI concrete surface profile. */
export interface CspRange {
  readonly min: number;
  readonly max: number;
}

/** ok: plainly. mockUp: only by what installers get, which is disputed: agree on a mock-up first. */
export type Reach = 'ok' | 'mockUp' | 'tooSmooth' | 'tooRough' | 'noTool';

export interface ReachOf {
  readonly reach: Reach;
  /** What the tool gives; null without a tool. */
  readonly gives: CspRange | null;
  readonly method: string | null;
  readonly abrasive: string | null;
}

/** Whether what is planned brings a zone to the profile that is asked for, in the field and at the edge. */
export interface ProfileCheck {
  readonly required: CspRange | null;
  readonly field: ReachOf;
  readonly edge: ReachOf;
}

/**
 * Profile that a zone is asked for: the one set outright, else that of the system that will be laid (ICRI 310.2R bands
 * from memory, or common practice; the system's own data sheet comes before both). Null when neither is known.
 */
export function requiredCsp(zone: Pick<Zone, 'csp' | 'system'> | null): CspRange | null {
  if (zone?.csp) return { min: zone.csp.min, max: zone.csp.max };
  const row = zone?.system ? systemOf(zone.system.kind) : null;
  return row ? { min: row.csp[0], max: row.csp[1] } : null;
}

/** The last tool that touches a place decides its profile: the last pass in the field, the last edge tool at the edge. */
export function profileCheck(prep: ZonePrep): ProfileCheck {
  const required = requiredCsp(prep.record);
  const last = prep.passes.findLast((pass) => givesProfile(pass.method)) ?? prep.passes.at(-1) ?? null;
  const edge = prep.passes.findLast((pass) => pass.edgeMethod !== null && pass.edgeTimes > 0) ?? null;
  return {
    required,
    field: reachOf(required, last?.method ?? null, last?.abrasive ?? null),
    edge: reachOf(required, edge?.edgeMethod ?? null, edge?.edgeAbrasive ?? null),
  };
}

/** Hand tools that reach a profile at the edge by their own band, those that finish more in an hour first. */
export function edgeToolsFor(required: CspRange): readonly MethodRow[] {
  return methods
    .filter((row) => isHandMethod(row) && row.rate.unit === 'm2/h' && givesProfile(row.id) && meets(required, row.csp))
    .toSorted((a, b) => b.rate.likely - a.rate.likely);
}

/** Washing and pads after the grind leave its profile as it is. */
function givesProfile(method: PlannedPass['method']): boolean {
  const row = methodOf(method);
  return row !== null && row.csp[1] > 1;
}

function reachOf(required: CspRange | null, method: string | null, abrasive: string | null): ReachOf {
  const row = method === null ? null : methodOf(method);
  if (!row) return { reach: 'noTool', gives: null, method, abrasive };
  const grain = abrasive === null ? null : abrasiveOf(abrasive);
  const fits = grain !== null && abrasivesFor(row.id).includes(grain);
  const cautious = grain && fits ? grain.csp : row.csp;
  const practice = grain && fits ? (grain.cspPractice ?? null) : null;
  const gives = { min: cautious[0], max: cautious[1] };
  const reach = judge(required, cautious, practice);
  const shown = reach === 'mockUp' && practice ? { min: practice[0], max: practice[1] } : gives;
  return { reach, gives: shown, method, abrasive };
}

type Span = readonly [min: number, max: number];

function judge(required: CspRange | null, cautious: Span, practice: Span | null): Reach {
  if (!required || meets(required, cautious)) return 'ok';
  if (practice && meets(required, practice)) return 'mockUp';
  return cautious[1] < required.min ? 'tooSmooth' : 'tooRough';
}

function meets(required: CspRange, [min, max]: Span): boolean {
  return min <= required.max && max >= required.min;
}

const FITS: Partial<Record<MethodGroup, AbrasiveFit>> = {
  handGrind: 'cup',
  grind: 'diamond',
  bush: 'bush',
  shot: 'shot',
};

/** Abrasives that go on the tool of a method; none for methods without. */
export function abrasivesFor(method: string): readonly AbrasiveRow[] {
  const row = methodOf(method);
  const fit = row ? (FITS[row.group] ?? buffFit(row.id)) : null;
  return fit ? abrasives.filter((each) => each.fits === fit) : [];
}

function buffFit(method: string): AbrasiveFit | null {
  if (method === 'buffer_screen') return 'screen';
  return method === 'buffer_sandpaper' ? 'paper' : null;
}
