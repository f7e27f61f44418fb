import type { FloorShape, LineParts } from '../floorShape.ts';
import { REST } from '../floorShape.ts';
import { HARD_KINDS } from '../hardFace.ts';
import { addAreas, cellsInOrder } from './areaSums.ts';
import { LAP, NET, STRIP, TIGHT, cascadeOfZone } from './cells.ts';
import { NO_ZONE } from './place.ts';
import { type FaceTally, emptyTally } from './faceTally.ts';
import { present } from './floorItems.ts';
import type { LedgerState, Stale } from './ledgerState.ts';
import type { LineLength } from './lineRuns.ts';
import type { KnownCell, LineInZone, ZoneSums } from './sumsMemory.ts';

/*
 * What a floor adds up to, zone by zone.
 *
 *     areas of cells -----+
 *     metres of lines ----+---> a sheet for each zone, and one for the rest; where nothing changed, that of last time
 *     tallies of faces ---+
 */

/** Sums of each zone, and of the rest (zone number NO_ZONE). Zones in which nothing changed are those of last time. */
export function zoneSums(state: LedgerState, shape: FloorShape, stale: Stale): ZoneSums[] {
  const { sums } = state;
  const { findings } = state.items;
  const renamed = new Set<number>();
  for (const { number, id } of findings.fresh) if (sums.findingIds.get(number) !== id) renamed.add(number);
  for (const item of findings.gone) sums.findingIds.delete(item.number);
  for (const item of findings.fresh) sums.findingIds.set(item.number, item.id);
  const changed = addAreas(state, stale);
  addRenamed(state, renamed, changed);
  addLines(state, stale, changed);
  addFaces(state, stale, changed);
  const machineOf = new Map(shape.zones.map((zone) => [zone.id, zone.machine]));
  const sheets = [
    ...present(state.items.zones).map(({ number, id }) => ({ number, id, machine: machineOf.get(id) ?? null })),
    { number: NO_ZONE, id: REST, machine: shape.restMachine },
  ];
  return sheets.map((sheet) => {
    const known = sums.zones.get(sheet.number);
    const cascade = cascadeOfZone(sheet.number, state.cascades);
    if (known?.id === sheet.id && !changed.has(sheet.number) && isSameCrew(state, known, sheet, cascade)) return known;
    const zone = sumZone(state, sheet, cascade);
    sums.zones.set(sheet.number, zone);
    return zone;
  });
}

/**
 * A finding that takes the place of another one, with the same outline, changes no area, and still is told: what a hand
 * draws gets its id when it is put down.
 */
function addRenamed({ sums }: LedgerState, renamed: ReadonlySet<number>, changed: Set<number>): void {
  if (renamed.size === 0) return;
  for (const { zone, findings } of sums.cells) if (findings.some((item) => renamed.has(item))) changed.add(zone);
}

/** A machine that follows without getting any floor changes no area, and still is told. */
function isSameCrew(state: LedgerState, { machine, fields }: ZoneSums, sheet: Sheet, cascade: number): boolean {
  const crew = machineIds(state, cascade);
  const isSameFirst = machine === (cascade < 0 ? null : sheet.machine);
  return isSameFirst && crew.length === fields.length && crew.every((id, k) => id === fields[k]?.machine);
}

/** Machines of a cascade in their order. */
function machineIds({ cascades, plan }: LedgerState, cascade: number): string[] {
  return (cascades.machinesOf[cascade] ?? []).map((number) => plan.machines[number]?.shape.id ?? '');
}

interface Sheet {
  readonly number: number;
  readonly id: string;
  readonly machine: string | null;
}

interface AreaCell extends KnownCell {
  readonly areaMm2: number;
}

function sumZone(state: LedgerState, { number, id, machine }: Sheet, cascade: number): ZoneSums {
  const { sums } = state;
  const cells = cellsInOrder(sums, number).map((cell): AreaCell => ({
    ...(sums.cells[cell] as KnownCell),
    areaMm2: sums.areas[cell] ?? 0,
  }));
  const sum = (isIt: (part: number) => boolean): number =>
    cells.reduce((total, cell) => (isIt(cell.part) ? total + cell.areaMm2 : total), 0) / 1e6;
  const tally = sums.faces.get(number) ?? emptyTally();
  return {
    number,
    id,
    machine: cascade < 0 ? null : machine,
    netM2: sum((part) => part === NET),
    fieldM2: sum((part) => part < STRIP),
    stripM2: sum((part) => part === STRIP || part === LAP),
    tightM2: sum((part) => part === TIGHT),
    lapM2: sum((part) => part === LAP),
    fields: machineIds(state, cascade).map((ownId, k) => ({ machine: ownId, areaM2: sum((part) => part === k) })),
    faces: tally.metres,
    hiddenFaces: tally.hidden,
    innerCorners: tally.innerCorners,
    outerCorners: tally.outerCorners,
    ...lineSums(sums.lines.get(number)),
    ...findingSums(cells, sums.findingIds),
  };
}

/** Puts the metres of lines that changed under their zones. */
function addLines({ sums }: LedgerState, { runs, goneRuns }: Stale, changed: Set<number>): void {
  for (const run of [...goneRuns, ...runs]) {
    for (const [zone, lines] of sums.lines) if (lines.delete(run.line.number)) changed.add(zone);
    sums.offLines.delete(run.line.number);
  }
  for (const { line, lengths } of runs) {
    if (lengths.length === 0) sums.offLines.set(line.number, { id: line.id, at: line.path[0] ?? null });
    for (const zone of new Set(lengths.map((length) => length.zone))) {
      const lines = sums.lines.get(zone) ?? new Map<number, LineInZone>();
      sums.lines.set(zone, lines);
      lines.set(line.number, { id: line.id, parts: lineParts(lengths.filter((length) => length.zone === zone)) });
      changed.add(zone);
    }
  }
}

function lineParts(lengths: readonly LineLength[]): LineParts {
  let [fieldM, stripM, tightM] = [0, 0, 0];
  for (const { part, metres } of lengths) {
    if (part === TIGHT) tightM += metres;
    else if (part >= STRIP) stripM += metres;
    else fieldM += metres;
  }
  return { fieldM, stripM, tightM };
}

function lineSums(lines: ReadonlyMap<number, LineInZone> | undefined) {
  const lengthM: Record<string, number> = {};
  const parts: Record<string, LineParts> = {};
  for (const [, { id, parts: own }] of [...(lines ?? [])].toSorted(([a], [b]) => a - b)) {
    parts[id] = own;
    lengthM[id] = own.fieldM + own.stripM + own.tightM;
  }
  return { lengthM, lineParts: parts };
}

type AreaName = 'fieldM2' | 'stripM2' | 'tightM2';

/** The sum that an area of a part goes into. */
function areaName(part: number): AreaName {
  if (part === TIGHT) return 'tightM2';
  return part >= STRIP ? 'stripM2' : 'fieldM2';
}

function findingSums(cells: readonly AreaCell[], idOf: ReadonlyMap<number, string>) {
  const findingM2: Record<string, number> = {};
  const sets = new Map<string, { findings: readonly string[] } & Record<AreaName, number>>();
  for (const { findings, part, areaMm2 } of cells) {
    if (findings.length === 0 || part === NET || areaMm2 === 0) continue;
    const ids = findings.flatMap((number) => idOf.get(number) ?? []);
    const key = ids.join(' ');
    const set = sets.get(key) ?? { findings: ids, fieldM2: 0, stripM2: 0, tightM2: 0 };
    sets.set(key, set);
    set[areaName(part)] += areaMm2 / 1e6;
    for (const id of ids) findingM2[id] = (findingM2[id] ?? 0) + areaMm2 / 1e6;
  }
  return { findingM2, findingParts: [...sets.values()] };
}

/** Adds up the faces again in zones where some changed, and tells the zones whose sums are other ones. */
function addFaces({ sums, clustersIn, tallyOf }: LedgerState, { faceZones }: Stale, changed: Set<number>): void {
  for (const zone of faceZones) {
    const sum = emptyTally();
    for (const cluster of [...(clustersIn.get(zone) ?? [])].toSorted((a, b) => a.owner - b.owner)) {
      const tally = tallyOf.get(cluster)?.get(zone);
      if (tally) addTally(sum, tally);
    }
    if (!isSameTally(sum, sums.faces.get(zone))) changed.add(zone);
    sums.faces.set(zone, sum);
  }
}

function addTally(sum: FaceTally, tally: FaceTally): void {
  for (const kind of HARD_KINDS) {
    sum.metres[kind] += tally.metres[kind];
    sum.hidden[kind] += tally.hidden[kind];
  }
  sum.metres.hidden += tally.metres.hidden;
  sum.innerCorners += tally.innerCorners;
  sum.outerCorners += tally.outerCorners;
}

function isSameTally(a: FaceTally, b: FaceTally | undefined): boolean {
  if (!b) return false;
  return (
    HARD_KINDS.every((kind) => a.metres[kind] === b.metres[kind] && a.hidden[kind] === b.hidden[kind]) &&
    a.metres.hidden === b.metres.hidden &&
    a.innerCorners === b.innerCorners &&
    a.outerCorners === b.outerCorners
  );
}
