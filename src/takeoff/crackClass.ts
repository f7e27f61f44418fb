import type { Crack } from '../model/records/crack.ts';
import type { Joint } from '../model/records/joint.ts';
import { CHASE_MM, HAIRLINE_MM, JOINT_MM, WIDE_CHASE_MM, WIDE_MM } from './rates/cracks.ts';

/** Class by width alone; behaviour is a judgement of its own and never follows from it. */
export type WidthClass = 'hairline' | 'ordinary' | 'wide' | 'notMeasured';

/** Class of a crack by its width, mm, at 0.3 and 6 mm; common practice, no source. */
export function widthClass(widthMm: number | null): WidthClass {
  if (widthMm === null) return 'notMeasured';
  if (widthMm < HAIRLINE_MM) return 'hairline';
  return widthMm <= WIDE_MM ? 'ordinary' : 'wide';
}

/**
 * Whether a crack is chased and filled: static ones over the hairline. One that is not judged is priced as static; a
 * working crack is carried through like a joint and never gets a rigid filler; a structural one waits for an engineer.
 */
export function isChased(crack: Pick<Crack, 'behaviour' | 'widthMm'>): boolean {
  const still = crack.behaviour === 'static' || crack.behaviour === 'notJudged';
  return still && widthClass(crack.widthMm) !== 'hairline';
}

export interface SectionMm {
  readonly width: number;
  readonly depth: number;
}

/** Section of the chase of a crack, mm: 6 x 12, also where its depth is not known; wide ones opened on both sides. */
export function chaseSection(crack: Pick<Crack, 'widthMm'>): SectionMm {
  if (crack.widthMm === null || crack.widthMm <= WIDE_MM) return CHASE_MM;
  return { width: crack.widthMm + 2 * WIDE_CHASE_MM.eachSide, depth: WIDE_CHASE_MM.depth };
}

/** What stays open under the chase of a crack that is known to go deeper, mm. */
export function openBelow(crack: Pick<Crack, 'widthMm' | 'depthMm'>): SectionMm {
  const { depth } = chaseSection(crack);
  return { width: crack.widthMm ?? 0, depth: Math.max(0, (crack.depthMm ?? depth) - depth) };
}

/** Old filler is sawn out of a joint before it is filled again. */
export function isSawnOut(joint: Pick<Joint, 'treat' | 'kind' | 'oldFiller'>): boolean {
  return joint.oldFiller === true && joint.treat === 'filled' && joint.kind !== 'isolation';
}

/** A joint that is carried through and is too narrow for a sealant: a reservoir is sawn. An isolation joint stays as built. */
export function isWidened(joint: Pick<Joint, 'treat' | 'kind' | 'widthMm'>, leastMm: number): boolean {
  if (joint.treat !== 'carried' || joint.kind === 'isolation') return false;
  const usualMm = joint.kind === 'control' ? JOINT_MM.controlWidth : JOINT_MM.constructionWidth;
  return (joint.widthMm ?? usualMm) < leastMm;
}

/** A working crack is sealed like a joint, in a reservoir where it is too narrow. */
export function isSawnOpen(crack: Pick<Crack, 'behaviour' | 'widthMm'>, leastMm: number): boolean {
  return crack.behaviour === 'working' && (crack.widthMm ?? 0) < leastMm;
}

/** Section of a joint that is filled, mm; null when it must not be: an isolation joint is never filled rigid. */
export function jointSection(joint: Joint): SectionMm | null {
  if (joint.treat !== 'filled' || joint.kind === 'isolation') return null;
  const usual =
    joint.kind === 'control'
      ? { width: JOINT_MM.controlWidth, depth: JOINT_MM.controlDepth }
      : { width: JOINT_MM.constructionWidth, depth: JOINT_MM.constructionDepth };
  return { width: joint.widthMm ?? usual.width, depth: joint.depthMm ?? usual.depth };
}
