import type { FloorMeasure, FloorShape, Region, ZoneMeasure } from './floorShape.ts';
import { withBarriers } from './ledger/barredFields.ts';
import { NET, STRIP } from './ledger/cells.ts';
import { type FaceLine, faceLines } from './ledger/faceTally.ts';
import { floorSums } from './ledger/floorSums.ts';
import type { LedgerState } from './ledger/ledgerState.ts';
import { partKey, partOutlines } from './ledger/partOutlines.ts';
import { solidsByZone } from './ledger/solidZones.ts';
import { tightPieces } from './ledger/tightPieces.ts';
import type { ZoneSums } from './ledger/sumsMemory.ts';
import { type FloorSums, type MeasureMemory, measureMemory } from './measureMemory.ts';

/**
 * A floor to its numbers and outlines. The numbers come from the ledger (ledger/floorLedger.ts): areas in m2, lengths
 * in m, in each zone field + strip + tight = net with every part added up on its own. Outlines are traced from the same
 * tiles. With a memory only what changed is done again. Never throws: what cannot be measured is a fault that names its
 * record.
 */
export function measureFloor(shape: FloorShape, memory: MeasureMemory = measureMemory()): FloorMeasure {
  const sums = floorSums(shape, memory);
  if (memory.measure) return memory.measure;
  const measure = withOutlines(sums, shape);
  memory.measure = measure;
  return measure;
}

function withOutlines(sums: FloorSums, shape: FloorShape): FloorMeasure {
  const { state } = sums;
  const outlines = partOutlines(state);
  const tight = tightPieces(state, shape, outlines);
  const barred = withBarriers(state, shape);
  const lines = linesByZone(state);
  const solids = solidsByZone(state, shape);
  const regionOf = (zone: number, part: number): Region => outlines.get(partKey(zone, part)) ?? [];
  const zoneMeasure = ({ number, hiddenFaces: _hiddenFaces, ...zone }: ZoneSums): ZoneMeasure => {
    const net = regionOf(number, NET);
    const own = zone.fields.map((field, k) => ({ ...field, region: regionOf(number, k) }));
    const fields = barred(own, net, zone.netM2);
    const pieces = tight.get(number) ?? [];
    return {
      ...zone,
      fields,
      cutOffM2: pieces.reduce((sum, piece) => (piece.kind === 'cutOff' ? sum + piece.areaM2 : sum), 0),
      solids: solids.get(zone.id) ?? [],
      net,
      field: fields.flatMap((field) => field.region),
      strip: regionOf(number, STRIP),
      tight: pieces,
      faceLines: lines.get(number) ?? [],
    };
  };
  return {
    grossM2: sums.grossM2,
    deductedM2: sums.deductedM2,
    netM2: sums.netM2,
    perimeterM: sums.perimeterM,
    zones: sums.zones.map(zoneMeasure),
    faults: sums.faults,
  };
}

function linesByZone(state: LedgerState): ReadonlyMap<number, FaceLine[]> {
  const lines = new Map<number, FaceLine[]>();
  for (const cluster of state.clusters) {
    const edging = state.edgingOf.get(cluster);
    if (edging) faceLines(edging, state.cascades, state.plan.edges, state.origin, lines);
  }
  return lines;
}
