import type { FloorShape, GeometryFault, Point, Ring } from '../floorShape.ts';
import { isFinitePoint } from '../point.ts';
import { ringFault } from '../ring.ts';
import type { HardItem } from './cluster.ts';
import { movedRing, scopeItem, slabItem, solidItem, wallItem } from './hardItems.ts';
import { FINDING, ZONE } from './layers.ts';
import { type Outline, ringOutline } from './outline.ts';

/*
 * The records of a floor as the ledger holds them. A record that is the very same object as last time gives the very
 * same item: that is how the ledger knows what did not change.
 */
export interface FloorItems {
  readonly hard: readonly HardItem[];
  readonly zones: readonly CoverItem[];
  readonly findings: readonly CoverItem[];
  readonly lines: readonly LineItem[];
  readonly faults: readonly GeometryFault[];
}

/** A zone or a finding. */
export interface CoverItem {
  readonly id: string;
  readonly number: number;
  readonly outlines: readonly Outline[];
}

export interface LineItem {
  readonly id: string;
  readonly path: readonly Point[];
}

type Fault = Omit<GeometryFault, 'record'>;

interface Kept {
  readonly number: number;
  readonly item: HardItem | CoverItem | LineItem | null;
  readonly fault: Fault | null;
}

/** Remembers items by record, and record numbers by id. */
export interface ItemMemory {
  readonly origin: Point;
  readonly kept: WeakMap<object, Kept>;
  readonly numbers: Map<string, Map<string, number>>;
}

export function itemMemory(origin: Point): ItemMemory {
  return { origin, kept: new WeakMap(), numbers: new Map() };
}

/** Numbers of one kind of record lie between those of its neighbours: solids take floor before walls, walls before what is out of scope. */
const FIRST = { slab: 0, solid: 1e6, wall: 2e6, scope: 3e6, zone: 4e6, finding: 5e6, line: 6e6 };

/** Items of all records that can be measured, and a fault for each that cannot: what is left out never breaks the rest. */
export function floorItems(shape: FloorShape, memory: ItemMemory): FloorItems {
  const faults: GeometryFault[] = [];
  const { origin } = memory;
  const list = <R extends { readonly id: string }, I extends HardItem | CoverItem | LineItem>(
    kind: keyof typeof FIRST,
    records: readonly R[],
    fault: (record: R) => Fault | null,
    make: (record: R, number: number) => I,
  ): I[] => {
    const numbers = numbered(memory, kind, records);
    return records.flatMap((record, i) => {
      const kept = keptItem(memory, record, FIRST[kind] + (numbers[i] as number), fault, make);
      if (kept.fault) faults.push({ record: record.id, ...kept.fault });
      return kept.item ? [kept.item as I] : [];
    });
  };
  const solids = shape.solids.filter((solid) => solid.solid);
  const hard = [
    ...list(
      'slab',
      shape.slabs,
      (slab) => ringFault(slab.ring),
      (slab, number) => slabItem(slab, number, origin),
    ),
    ...list(
      'solid',
      solids,
      (solid) => ringFault(solid.ring),
      (solid, number) => solidItem(solid, number, origin),
    ),
    ...list(
      'wall',
      shape.walls,
      (wall) => ringFault(wall.body),
      (wall, number) => wallItem({ ...wall, gaps: wall.gaps.filter((gap) => !ringFault(gap.ring)) }, number, origin),
    ),
    ...list(
      'scope',
      shape.outOfScope,
      (patch) => ringFault(patch.ring),
      (patch, number) => scopeItem(patch, number, origin),
    ),
  ];
  for (const solid of shape.solids) {
    if (solid.solid) continue;
    const fault = keptItem(
      memory,
      solid,
      0,
      () => ringFault(solid.ring),
      () => ({ id: solid.id, path: [] }),
    ).fault;
    if (fault) faults.push({ record: solid.id, ...fault });
  }
  for (const wall of shape.walls)
    for (const gap of wall.gaps) {
      const fault = ringFault(gap.ring);
      if (fault) faults.push({ record: gap.passage.id, ...fault });
    }
  for (const slab of shape.slabs)
    if (slab.faces.length !== slab.ring.length || slab.passages.length !== slab.ring.length)
      faults.push({ record: slab.id, code: 'facesDoNotMatch', at: slab.ring[0] ?? null });
  const cover =
    (layer: number) =>
    (record: { readonly id: string; readonly ring: Ring }, number: number): CoverItem => ({
      id: record.id,
      number,
      outlines: [ringOutline(movedRing(record.ring, origin), layer, number)],
    });
  return {
    hard,
    zones: list('zone', shape.zones, (zone) => ringFault(zone.ring), cover(ZONE)),
    findings: list('finding', shape.findings, (finding) => ringFault(finding.ring), cover(FINDING)),
    lines: list(
      'line',
      shape.lines,
      (line) => pathFault(line.path),
      ({ id, path }) => ({ id, path: movedRing(path, origin) }),
    ),
    faults,
  };
}

function keptItem<R extends object>(
  memory: ItemMemory,
  record: R,
  number: number,
  fault: (record: R) => Fault | null,
  make: (record: R, number: number) => HardItem | CoverItem | LineItem,
): Kept {
  const known = memory.kept.get(record);
  if (known && (known.number === number || known.item === null)) return known;
  const found = known ? known.fault : fault(record);
  const kept: Kept = { number, item: found ? null : make(record, number), fault: found };
  memory.kept.set(record, kept);
  return kept;
}

/** A number for each record that grows along the list and stays with its id as long as the order does. */
function numbered(memory: ItemMemory, kind: string, records: readonly { readonly id: string }[]): readonly number[] {
  const known = memory.numbers.get(kind) ?? new Map<string, number>();
  const seen = new Map<string, number>();
  const keys = records.map(({ id }) => {
    const times = seen.get(id) ?? 0;
    seen.set(id, times + 1);
    return times === 0 ? id : `${id} ${times}`;
  });
  let last = -1;
  let isRising = true;
  const numbers = keys.map((key) => {
    const number = known.get(key) ?? last + 1;
    isRising &&= number > last;
    last = Math.max(last, number);
    return number;
  });
  const kept = isRising ? numbers : keys.map((_, i) => i);
  memory.numbers.set(kind, new Map(keys.map((key, i) => [key, kept[i] as number])));
  return kept;
}

export function pathFault(path: readonly Point[]): Fault | null {
  const code = path.length < 2 ? 'tooFewCorners' : path.every(isFinitePoint) ? null : 'notANumber';
  return code ? { code, at: null } : null;
}
