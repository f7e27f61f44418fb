import type {
  FloorShape,
  GeometryFault,
  LineShape,
  PatchShape,
  Point,
  Ring,
  SlabShape,
  SolidShape,
  WallShape,
} from '../floorShape.ts';
import { isFinitePoint } from '../point.ts';
import { ringFault } from '../ring.ts';
import type { HardItem } from './cluster.ts';
import { movedRing, scopeItem, slabItem, solidItem, wallItem } from './hardItems.ts';
import { FINDING, ZONE } from './layers.ts';
import { type Outline, ringOutline } from './outline.ts';

/*
 * The records of a floor as the ledger holds them. A record that is the very same object as last time gives the very
 * same item: that is how the ledger knows what did not change.
 *
 *     before   a   b   c   d        Lists are compared place by place, so an edit costs no more than looking along
 *     now      a   b'  c   d        them: here b went, and b' came with its number.
 */
export interface FloorItems {
  readonly slabs: ItemList<HardItem>;
  readonly solids: ItemList<HardItem>;
  readonly walls: ItemList<HardItem>;
  readonly scope: ItemList<HardItem>;
  readonly zones: ItemList<CoverItem>;
  readonly findings: ItemList<CoverItem>;
  readonly lines: ItemList<LineItem>;
}

/** A zone or a finding. */
export interface CoverItem {
  readonly id: string;
  readonly number: number;
  readonly outlines: readonly Outline[];
}

export interface LineItem {
  readonly id: string;
  readonly number: number;
  readonly path: readonly Point[];
}

interface Item {
  readonly id: string;
  readonly number: number;
}

/** The items of one list of records, and what came and went since the list before. */
export interface ItemList<I extends Item> {
  readonly records: readonly object[];
  /** One a record, null for a record that cannot be measured. */
  readonly entries: readonly (I | null)[];
  readonly faults: readonly GeometryFault[];
  readonly gone: readonly I[];
  readonly fresh: readonly I[];
}

type Fault = Omit<GeometryFault, 'record'>;

/** How a kind of record becomes items. Numbers of one kind lie between those of its neighbours. */
interface Kind<R, I extends Item> {
  readonly first: number;
  readonly faultsOf: (record: R) => readonly GeometryFault[];
  /** The item of a record, or null when its faults leave nothing to measure. */
  readonly make: (record: R, number: number, origin: Point) => I | null;
}

function ringKind<R extends { readonly id: string }, I extends Item>(
  first: number,
  ringOf: (record: R) => Ring,
  make: (record: R, number: number, origin: Point) => I,
): Kind<R, I> {
  return {
    first,
    faultsOf: (record) => named(record.id, faultOfRing(ringOf(record))),
    make: (record, number, origin) => (faultOfRing(ringOf(record)) ? null : make(record, number, origin)),
  };
}

const faultOf = new WeakMap<Ring, { readonly fault: Fault | null }>();

/** The fault of a ring; looking for a place where it crosses itself takes long enough to be remembered. */
function faultOfRing(ring: Ring): Fault | null {
  const known = faultOf.get(ring);
  if (known) return known.fault;
  const fault = ringFault(ring);
  faultOf.set(ring, { fault });
  return fault;
}

function named(record: string, fault: Fault | null): GeometryFault[] {
  return fault ? [{ record, ...fault }] : [];
}

const SLABS: Kind<SlabShape, HardItem> = {
  ...ringKind(0, (slab: SlabShape) => slab.ring, slabItem),
  faultsOf: (slab) => {
    const isMatched = slab.faces.length === slab.ring.length && slab.passages.length === slab.ring.length;
    const mismatch = isMatched ? null : { code: 'facesDoNotMatch', at: slab.ring[0] ?? null };
    return [...named(slab.id, faultOfRing(slab.ring)), ...named(slab.id, mismatch)];
  },
};

/** Solids take floor before walls, and walls before what is out of scope. What is cleared before takes none. */
const SOLIDS: Kind<SolidShape, HardItem> = {
  ...ringKind(1e6, (solid: SolidShape) => solid.ring, solidItem),
  make: (solid, number, origin) => (solid.solid && !faultOfRing(solid.ring) ? solidItem(solid, number, origin) : null),
};

const WALLS: Kind<WallShape, HardItem> = {
  ...ringKind(
    2e6,
    (wall: WallShape) => wall.body,
    (wall, number, origin) =>
      wallItem({ ...wall, gaps: wall.gaps.filter((gap) => !faultOfRing(gap.ring)) }, number, origin),
  ),
  faultsOf: (wall) => [
    ...named(wall.id, faultOfRing(wall.body)),
    ...wall.gaps.flatMap((gap) => named(gap.passage.id, faultOfRing(gap.ring))),
  ],
};

const SCOPE = ringKind(3e6, (patch: PatchShape) => patch.ring, scopeItem);
const ZONES = ringKind(4e6, (zone: PatchShape) => zone.ring, coverItem(ZONE));
const FINDINGS = ringKind(5e6, (finding: PatchShape) => finding.ring, coverItem(FINDING));
const LINES: Kind<LineShape, LineItem> = {
  first: 6e6,
  faultsOf: (line) => named(line.id, pathFault(line.path)),
  make: (line, number, origin) =>
    pathFault(line.path) ? null : { id: line.id, number, path: movedRing(line.path, origin) },
};

function coverItem(layer: number): (record: PatchShape, number: number, origin: Point) => CoverItem {
  return ({ id, ring }, number, origin) => ({
    id,
    number,
    outlines: [ringOutline(movedRing(ring, origin), layer, number)],
  });
}

const NO_LIST = { records: [], entries: [], faults: [], gone: [], fresh: [] };

/** Of a floor that was never looked at. */
export const NO_ITEMS: FloorItems = {
  slabs: NO_LIST,
  solids: NO_LIST,
  walls: NO_LIST,
  scope: NO_LIST,
  zones: NO_LIST,
  findings: NO_LIST,
  lines: NO_LIST,
};

/** Items of all records that can be measured; what cannot is a fault and never breaks the rest. */
export function floorItems(shape: FloorShape, before: FloorItems, origin: Point): FloorItems {
  return {
    slabs: itemList(shape.slabs, before.slabs, SLABS, origin),
    solids: itemList(shape.solids, before.solids, SOLIDS, origin),
    walls: itemList(shape.walls, before.walls, WALLS, origin),
    scope: itemList(shape.outOfScope, before.scope, SCOPE, origin),
    zones: itemList(shape.zones, before.zones, ZONES, origin),
    findings: itemList(shape.findings, before.findings, FINDINGS, origin),
    lines: itemList(shape.lines, before.lines, LINES, origin),
  };
}

export function present<I extends Item>(list: ItemList<I>): I[] {
  return list.entries.filter((item) => item !== null);
}

/** What came and went, number by number: an item that was changed comes in place of its old self. */
export function exchanges<I extends Item>(
  gone: readonly I[],
  fresh: readonly I[],
): { readonly number: number; readonly old: I | undefined; readonly next: I | undefined }[] {
  const oldOf = new Map(gone.map((item) => [item.number, item]));
  const nextOf = new Map(fresh.map((item) => [item.number, item]));
  const numbers = new Set([...oldOf.keys(), ...nextOf.keys()]);
  return Array.from(numbers, (number) => ({ number, old: oldOf.get(number), next: nextOf.get(number) }));
}

export function itemFaults(items: FloorItems): GeometryFault[] {
  return Object.values(items).flatMap((list: ItemList<Item>) => list.faults);
}

function itemList<R extends { readonly id: string }, I extends Item>(
  records: readonly R[],
  before: ItemList<I>,
  kind: Kind<R, I>,
  origin: Point,
): ItemList<I> {
  if (before.records === records) return { ...before, gone: [], fresh: [] };
  const changed = samePlaces(before.records as readonly R[], records);
  if (!changed) return freshList(records, before, kind, origin);
  const entries = [...before.entries];
  const gone: I[] = [];
  const fresh: I[] = [];
  for (const i of changed) {
    const old = entries[i];
    if (!old) return freshList(records, before, kind, origin);
    const item = kind.make(records[i] as R, old.number, origin);
    entries[i] = item;
    gone.push(old);
    if (item) fresh.push(item);
  }
  const isSound = changed.every((i) => kind.faultsOf(records[i] as R).length === 0) && before.faults.length === 0;
  return {
    records,
    entries,
    faults: isSound ? [] : records.flatMap((record) => kind.faultsOf(record)),
    gone,
    fresh,
  };
}

/** Places at which two lists of the same records differ; null when records came, went or changed places. */
function samePlaces<R extends { readonly id: string }>(before: readonly R[], now: readonly R[]): number[] | null {
  if (before.length !== now.length) return null;
  const changed: number[] = [];
  for (let i = 0; i < now.length; i += 1) {
    if (before[i] === now[i]) continue;
    if (before[i]?.id !== now[i]?.id) return null;
    changed.push(i);
  }
  return changed;
}

/** A list from the start. Records that were there keep their items and numbers, as long as those still grow along the list. */
function freshList<R extends { readonly id: string }, I extends Item>(
  records: readonly R[],
  before: ItemList<I>,
  kind: Kind<R, I>,
  origin: Point,
): ItemList<I> {
  const known = new Map(before.records.map((record, i) => [record, before.entries[i] ?? null]));
  const numbers = numbersOf(records, before, kind.first);
  const entries = records.map((record, i) => {
    const item = known.get(record);
    return item && item.number === numbers[i] ? item : kind.make(record, numbers[i] as number, origin);
  });
  const kept = new Set(entries);
  const was = new Set(before.entries);
  return {
    records,
    entries,
    faults: records.flatMap((record) => kind.faultsOf(record)),
    gone: before.entries.filter((item) => item !== null && !kept.has(item)) as I[],
    fresh: entries.filter((item) => item !== null && !was.has(item)) as I[],
  };
}

/** A number for each record that grows along the list and stays with its id as long as the order does. */
function numbersOf<I extends Item>(
  records: readonly { readonly id: string }[],
  before: ItemList<I>,
  first: number,
): readonly number[] {
  const known = new Map<string, number>();
  for (const item of before.entries) if (item) known.set(item.id, item.number);
  const seen = new Set<string>();
  let last = first - 1;
  let isRising = true;
  const numbers = records.map(({ id }) => {
    const number = seen.has(id) ? last + 1 : (known.get(id) ?? last + 1);
    seen.add(id);
    isRising &&= number > last;
    last = Math.max(last, number);
    return number;
  });
  return isRising ? numbers : records.map((_, i) => first + i);
}

function pathFault(path: readonly Point[]): Fault | null {
  const code = path.length < 2 ? 'tooFewCorners' : path.every(isFinitePoint) ? null : 'notANumber';
  return code ? { code, at: null } : null;
}
