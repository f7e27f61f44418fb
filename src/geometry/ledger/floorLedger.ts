import { type FloorShape, type GeometryFault, REST } from '../floorShape.ts';
import { cascadePlan, cascadesOf } from './cascades.ts';
import { NO_ITEMS, floorItems, itemFaults, present } from './floorItems.ts';
import { hardStep } from './hardStep.ts';
import { type LedgerState, type Stale, stateFor } from './ledgerState.ts';
import { coverStep, lineStep, pieceStep } from './pieceStep.ts';
import { reachStep } from './reachStep.ts';

/*
 * A floor brought up to date.
 *
 *   records that changed -> their tiles -> rooms, reach -> faces, strips -> cells, lines
 *
 * Each step marks the tiles of the next. A fresh floor goes the same way with all tiles marked, so a floor that was
 * edited a thousand times has the same numbers to the last bit as one that is measured for the first time.
 */
export function updatedLedger(shape: FloorShape, before: LedgerState | null): { state: LedgerState; stale: Stale } {
  const plan = cascadePlan(shape);
  const state = stateFor(shape, plan, before);
  const tiles = state.items === NO_ITEMS ? state.grid.tiles : [];
  const stale: Stale = {
    rooms: new Set(tiles),
    pieces: new Set(tiles),
    faces: new Set(),
    clusters: new Set(),
    faceZones: new Set(),
    runs: new Set(),
    goneRuns: new Set(),
  };
  const items = floorItems(shape, state.items, state.origin);
  const was = state.cascades;
  state.items = items;
  state.cascades = cascadesOf(plan, present(items.zones));

  hardStep(state, items, shape, stale);
  const onFloor = reachStep(state, shape, stale);
  coverStep(state, items, ({ number }) => was.ofZone.get(number) !== state.cascades.ofZone.get(number), stale);
  pieceStep(state, stale);
  lineStep(state, items.lines, stale);
  state.faults = [...itemFaults(items), ...machineFaults(shape), ...onFloor];
  return { state, stale };
}

function machineFaults(shape: FloorShape): GeometryFault[] {
  const known = new Set(shape.machines.map((machine) => machine.id));
  const asked = [
    ...shape.zones.map(({ id, machine, followedBy }) => ({ id, ids: [machine, ...(followedBy ?? [])] })),
    { id: REST, ids: [shape.restMachine, ...(shape.restFollowedBy ?? [])] },
  ];
  return asked.flatMap(({ id, ids }) =>
    ids.flatMap((machine) =>
      machine === null || known.has(machine) ? [] : [{ record: id, code: 'machineMissing', at: null }],
    ),
  );
}
