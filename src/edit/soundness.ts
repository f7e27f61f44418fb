import type { Point } from '../geometry/floorShape.ts';
import { cross, isSame, minus } from '../geometry/point.ts';
import { ringFault } from '../geometry/ring.ts';
import type { Cell, Json, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import { laidOver } from '../model/overlay.ts';
import { checkRecord } from '../model/records/all.ts';
import { itemShape } from './itemShape.ts';
import { openingsFault, openingsOf } from './wallOpenings.ts';

/**
 * What every change must leave behind, whichever command made it: locked items untouched, records that
 * can be read, outlines that do not cross themselves, openings that fit their wall. A fault that was
 * there before does not stand in the way of a change: it may be the one that mends it.
 */
export function faultOfChange(doc: Doc, cells: readonly Cell[], passesLocks: boolean): string | null {
  // What was issued is on somebody's desk: it stays as it is, whatever command asks.
  if (cells.some(([id]) => typeOf(id) === 'estimate' && doc.has(id))) return 'issuedStays';
  const locked = passesLocks ? null : lockFault(doc, cells);
  if (locked) return locked;
  const next = laidOver(doc, cells);
  if (cells.some(([id, slot]) => next.get(id)?.['gone'] === true && !GOING.has(slot))) return 'unknownRecord';
  const touched = new Set(cells.map(([id]) => id));
  for (const id of touched) {
    const fault = faultOfRecord(next, id);
    if (fault && fault !== faultOfRecord(doc, id)) return fault;
  }
  return null;
}

/** What may be written to a record that is gone, or goes with this change. */
const GOING = new Set(['gone', 'goneWith']);

/** Slots that may change on a locked item: the lock itself, and its place in a list. */
const LOCK_LETS = new Set(['locked', 'order', 'note']);

function lockFault(doc: Doc, cells: readonly Cell[]): string | null {
  const held = cells.some(([id, slot]) => {
    const fields = doc.get(id);
    return fields?.['locked'] === true && fields['gone'] !== true && !LOCK_LETS.has(slot);
  });
  return held ? 'locked' : null;
}

function faultOfRecord(doc: Doc, id: RecordId): string | null {
  const fields = doc.get(id);
  if (!fields || fields['gone'] === true) return null;
  return shapeFault(doc, id) ?? (checkRecord(id, fields) ? 'badValue' : null);
}

/** Before the record is parsed, so that a ring of two corners is named as such. */
function shapeFault(doc: Doc, id: RecordId): string | null {
  const shape = itemShape(doc, id);
  if (!shape) return null;
  const { points, closed } = shape;
  if (points.some((at) => !Number.isFinite(at[0]) || !Number.isFinite(at[1]))) return 'notANumber';
  if (closed) {
    if (points.some((at, index) => isSame(at, points[(index + 1) % points.length] ?? at))) return 'zeroLength';
    return outlineFault(points);
  }
  return lineFault(doc, id, points);
}

/** A rectangle whose corners were set crosswise encloses nothing, but what is wrong with it is the order. */
function outlineFault(points: readonly Point[]): string | null {
  const code = ringFault(points)?.code ?? null;
  return code === 'noArea' && !isStraight(points) ? 'crossesItself' : code;
}

function isStraight([first, second, ...rest]: readonly Point[]): boolean {
  if (!first || !second) return true;
  const run = minus(second, first);
  return rest.every((at) => cross(run, minus(at, first)) === 0);
}

const LINES = new Set(['wall', 'crack', 'joint', 'dimension', 'opening']);

function lineFault(doc: Doc, id: RecordId, points: readonly Point[]): string | null {
  const type = typeOf(id);
  if (!LINES.has(type)) return null;
  if (type === 'opening') return wallFault(doc, doc.get(id)?.['wall']);
  if (points.length < 2) return 'tooFewCorners';
  if (points.some((at, index) => index > 0 && isSame(at, points[index - 1] ?? at))) return 'zeroLength';
  return type === 'wall' ? wallFault(doc, id) : null;
}

function wallFault(doc: Doc, wall: Json | undefined): string | null {
  const path = itemShape(doc, wall as RecordId)?.points;
  return path ? openingsFault(path, openingsOf(doc, wall as RecordId)) : 'unknownRecord';
}
