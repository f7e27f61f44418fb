import type { FaceMetres, FindingParts, FloorShape, LineParts } from '../floorShape.ts';
import { REST } from '../floorShape.ts';
import { LAP, NET, STRIP, TIGHT } from './cells.ts';
import { NO_ZONE } from './place.ts';
import { type FaceTally, emptyTally } from './faceTally.ts';
import type { LedgerState } from './ledgerState.ts';

/*
 * The cells of all tiles added up by zone. Tiles are taken in one order, always the same.
 */
export interface ZoneSums {
  readonly number: number;
  readonly id: string;
  readonly machine: string | null;
  /** All net floor of the zone, added up apart from its parts. */
  readonly netM2: number;
  readonly fieldM2: number;
  readonly stripM2: number;
  readonly tightM2: number;
  readonly lapM2: number;
  readonly fields: readonly { readonly machine: string; readonly areaM2: number }[];
  readonly faces: FaceMetres;
  readonly hiddenFaces: Omit<FaceMetres, 'hidden'>;
  readonly innerCorners: number;
  readonly outerCorners: number;
  readonly lengthM: Readonly<Record<string, number>>;
  readonly lineParts: Readonly<Record<string, LineParts>>;
  readonly findingM2: Readonly<Record<string, number>>;
  readonly findingParts: readonly FindingParts[];
}

/** The areas of a zone before anything is derived: by finding set and part. */
interface Areas {
  readonly byKey: Map<string, { readonly findings: readonly number[]; readonly part: number; areaMm2: number }>;
}

/** Sums of each zone, and of the rest (zone number NO_ZONE). Areas in m2, lengths in m. */
export function zoneSums(state: LedgerState, shape: FloorShape): ZoneSums[] {
  const areas = areasByZone(state);
  const lines = linesByZone(state);
  const faces = facesByZone(state);
  const findingIds = new Map(state.items.findings.map((item) => [item.number, item.id]));
  const sheets = [
    ...state.items.zones.map((item) => ({
      number: item.number,
      id: item.id,
      machine: shape.zones.find((zone) => zone.id === item.id)?.machine ?? null,
    })),
    { number: NO_ZONE, id: REST, machine: shape.restMachine },
  ];
  return sheets.map(({ number, id, machine }) => {
    const cascade = number === NO_ZONE ? state.cascades.ofRest : (state.cascades.ofZone.get(number) ?? -1);
    const cells = [...(areas.get(number)?.byKey.values() ?? [])];
    const sum = (isIt: (part: number) => boolean): number =>
      cells.reduce((total, cell) => (isIt(cell.part) ? total + cell.areaMm2 : total), 0) / 1e6;
    const machines = state.cascades.machinesOf[cascade] ?? [];
    const tally = faces.get(number) ?? emptyTally();
    return {
      number,
      id,
      machine: cascade < 0 ? null : machine,
      netM2: sum((part) => part === NET),
      fieldM2: sum((part) => part < STRIP),
      stripM2: sum((part) => part === STRIP || part === LAP),
      tightM2: sum((part) => part === TIGHT),
      lapM2: sum((part) => part === LAP),
      fields: machines.map((machineNumber, k) => ({
        machine: state.plan.machines[machineNumber]?.shape.id ?? '',
        areaM2: sum((part) => part === k),
      })),
      faces: tally.metres,
      hiddenFaces: tally.hidden,
      innerCorners: tally.innerCorners,
      outerCorners: tally.outerCorners,
      ...lineSums(lines.get(number)),
      ...findingSums(cells, findingIds),
    };
  });
}

function areasByZone(state: LedgerState): Map<number, Areas> {
  const zones = new Map<number, Areas>();
  for (const tile of state.grid.tiles) {
    for (const { zone, findings, part, areaMm2 } of tile.cells) {
      let areas = zones.get(zone);
      if (!areas) zones.set(zone, (areas = { byKey: new Map() }));
      const key = findings.length === 0 ? `${part}` : `${part} ${findings.join()}`;
      const cell = areas.byKey.get(key);
      if (cell) cell.areaMm2 += areaMm2;
      else areas.byKey.set(key, { findings, part, areaMm2 });
    }
  }
  return zones;
}

function linesByZone(state: LedgerState): Map<number, Map<string, Map<number, number>>> {
  const zones = new Map<number, Map<string, Map<number, number>>>();
  for (const line of state.items.lines) {
    for (const { zone, part, metres } of state.runOf.get(line)?.lengths ?? []) {
      let ids = zones.get(zone);
      if (!ids) zones.set(zone, (ids = new Map()));
      let parts = ids.get(line.id);
      if (!parts) ids.set(line.id, (parts = new Map()));
      parts.set(part, (parts.get(part) ?? 0) + metres);
    }
  }
  return zones;
}

function lineSums(ids: Map<string, Map<number, number>> | undefined) {
  const lengthM: Record<string, number> = {};
  const lineParts: Record<string, LineParts> = {};
  for (const [id, parts] of ids ?? []) {
    let [fieldM, stripM, tightM] = [0, 0, 0];
    for (const [part, metres] of parts) {
      if (part === TIGHT) tightM += metres;
      else if (part >= STRIP) stripM += metres;
      else fieldM += metres;
    }
    lineParts[id] = { fieldM, stripM, tightM };
    lengthM[id] = fieldM + stripM + tightM;
  }
  return { lengthM, lineParts };
}

interface AreaCell {
  readonly findings: readonly number[];
  readonly part: number;
  readonly areaMm2: number;
}

function findingSums(cells: readonly AreaCell[], idOf: ReadonlyMap<number, string>) {
  const findingM2: Record<string, number> = {};
  const sets = new Map<string, { findings: string[]; fieldM2: number; stripM2: number; tightM2: number }>();
  for (const { findings, part, areaMm2 } of cells) {
    if (findings.length === 0 || part === NET) continue;
    const ids = findings.flatMap((number) => idOf.get(number) ?? []);
    const key = ids.join(' ');
    const set = sets.get(key) ?? { findings: ids, fieldM2: 0, stripM2: 0, tightM2: 0 };
    sets.set(key, set);
    set[part === TIGHT ? 'tightM2' : part >= STRIP ? 'stripM2' : 'fieldM2'] += areaMm2 / 1e6;
    for (const id of ids) findingM2[id] = (findingM2[id] ?? 0) + areaMm2 / 1e6;
  }
  return { findingM2, findingParts: [...sets.values()] };
}

function facesByZone(state: LedgerState): Map<number, FaceTally> {
  const zones = new Map<number, FaceTally>();
  for (const cluster of clustersInOrder(state)) {
    for (const [zone, tally] of state.tallyOf.get(cluster) ?? []) {
      const sum = zones.get(zone) ?? emptyTally();
      zones.set(zone, sum);
      addTally(sum, tally);
    }
  }
  return zones;
}

const KINDS = ['wall', 'obstruction', 'drop', 'stop'] as const;

function addTally(sum: FaceTally, tally: FaceTally): void {
  for (const kind of KINDS) {
    sum.metres[kind] += tally.metres[kind];
    sum.hidden[kind] += tally.hidden[kind];
  }
  sum.metres.hidden += tally.metres.hidden;
  sum.innerCorners += tally.innerCorners;
  sum.outerCorners += tally.outerCorners;
}

/** Clusters by owner: the order in which a fresh floor has them. */
export function clustersInOrder(state: LedgerState) {
  return [...state.bands.keys()].toSorted((a, b) => a.owner - b.owner);
}
