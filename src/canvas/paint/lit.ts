import { formRing } from '../../geometry/formRing.ts';
import type { FaceMetres, Region, ZoneMeasure } from '../../geometry/floorShape.ts';
import { REST } from '../../geometry/floorShape.ts';
import { LINE } from '../look.ts';
import type { Prim } from './prim.ts';
import { slabRing, type PlanView } from './view.ts';
import { openingPath } from './wall.ts';

/** What a number is made of. Parts are measured; records are drawn as they are. */
export interface Lit {
  readonly zone: string | null;
  readonly parts: readonly ('net' | 'field' | 'strip' | 'tight' | keyof FaceMetres)[];
  readonly records: readonly string[];
  /** Of the field only what this machine works. */
  readonly machine?: string;
}

const FACE_PX = 5;

function area(region: Region): Prim {
  return { kind: 'area', region, fill: 'chalk' };
}

function measured(zone: ZoneMeasure, part: Lit['parts'][number], machine: string | undefined): Prim[] {
  const own = part === 'field' ? zone.fields?.find((field) => field.machine === machine) : undefined;
  if (own) return [area(own.region)];
  if (part === 'net' || part === 'field' || part === 'strip') return [area(zone[part])];
  if (part === 'tight') return zone.tight.map((piece) => area(piece.region));
  return zone.faceLines
    .filter((face) => (part === 'hidden' ? face.hidden : face.kind === part && !face.hidden))
    .map((face) => ({ kind: 'line', path: face.path, ink: 'chalk', px: FACE_PX }));
}

function recordPrims(view: PlanView, id: string): Prim[] {
  const line = [...view.cracks, ...view.joints].find((record) => record.id === id);
  if (line) return [{ kind: 'line', path: line.path, ink: 'chalk', px: LINE.live }];
  const ring =
    view.findings.find((record) => record.id === id)?.ring ??
    view.outOfScope.find((record) => record.id === id)?.ring ??
    view.steps.find((record) => record.id === id)?.ring;
  if (ring) return [area([[ring]])];
  const obstruction = view.obstructions.find((record) => record.id === id);
  if (obstruction) return [area([[formRing(obstruction.shape)]])];
  const slab = view.slabs.find((record) => record.id === id);
  if (slab) return [{ kind: 'line', path: slabRing(slab), closed: true, ink: 'chalk', px: FACE_PX }];
  const zone = view.zones.find((record) => record.zone.id === id);
  if (zone) return [area(zone.region)];
  for (const wall of view.walls) {
    if (wall.wall.id === id) return [{ kind: 'line', path: wall.wall.path, ink: 'chalk', px: FACE_PX }];
    const opening = wall.openings.find((record) => record.id === id);
    if (opening) return [{ kind: 'line', path: openingPath(wall, opening), ink: 'chalk', px: LINE.wall }];
  }
  return [];
}

/** Geometry of one number in solid chalk. Measured parts win: the records that bound them are lit only when nothing was measured. */
export function litPrims(view: PlanView, lit: Lit): Prim[] {
  const zones = (view.measure?.zones ?? []).filter((zone) => {
    if (lit.zone === null) return true;
    const rest = lit.zone === REST || view.zones.some((own) => own.zone.id === lit.zone && own.measure?.id === REST);
    return zone.id === lit.zone || (zone.id === REST && rest);
  });
  const parts = lit.parts.flatMap((part) => zones.flatMap((zone) => measured(zone, part, lit.machine)));
  return parts.length > 0 ? parts : lit.records.flatMap((id) => recordPrims(view, id));
}
