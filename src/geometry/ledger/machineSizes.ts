import type { MachineShape } from '../floorShape.ts';
import { HARD_KINDS } from '../hardFace.ts';
import { type WidthByKind, byKind } from './faceBands.ts';

/*
 * The widths that one machine leaves, in mm, by kind of face.
 *
 *    face ====================
 *          |  c  |   r   |          c clearance, r head radius: the middle of the head stays r + c off
 *          |     p       |  rho |   p half of what the body needs to pass; a head may go ahead of the body by rho
 */
export interface MachineSizes {
  readonly headMm: number;
  /** How near the middle of the body comes. A gap of just the width needed counts as wide enough. */
  readonly bodyMm: WidthByKind;
  /** How near the middle of the head comes. */
  readonly standMm: WidthByKind;
  /** How far the middle of the head may be from where the body has been; 0: the head is as wide as the body. */
  readonly leadMm: number;
  /** Farthest that anything of the machine is felt from a face. */
  readonly mostMm: number;
}

/** Half of how much a gap may be narrower than what the machine needs and still let it pass. */
const BIAS_MM = 0.25;

export function machineSizes(machine: MachineShape): MachineSizes {
  const head = machine.headRadiusMm;
  const standMm = byKind((kind) => head + machine.clearanceMm[kind]);
  const bodyMm = byKind((kind) => Math.max(standMm[kind], machine.passageMm / 2));
  const ahead = Math.max(...HARD_KINDS.map((kind) => bodyMm[kind] - standMm[kind]));
  return {
    headMm: head,
    standMm,
    bodyMm: byKind((kind) => Math.max(0, bodyMm[kind] - BIAS_MM)),
    // Far enough to turn the head into a square corner while the body waits in front of it.
    leadMm: ahead > 1e-9 ? Math.SQRT2 * ahead : 0,
    mostMm: Math.max(...HARD_KINDS.map((kind) => bodyMm[kind])) + head,
  };
}
