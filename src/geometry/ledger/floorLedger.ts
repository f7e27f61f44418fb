import type { FloorShape, GeometryFault } from '../floorShape.ts';
import { cascadePlan, cascadesOf } from './cascades.ts';
import { floorItems } from './floorItems.ts';
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
export function updatedLedger(shape: FloorShape, before: LedgerState | null): LedgerState {
  const plan = cascadePlan(shape);
  const state = stateFor(shape, plan, before);
  const isFresh = state.items.hard.length === 0 && state.runOf.size === 0 && state.clusterOf.size === 0;
  const tiles = isFresh ? state.grid.tiles : [];
  const stale: Stale = { rooms: new Set(tiles), pieces: new Set(tiles), faces: new Set() };
  const was = { items: state.items, cascades: state.cascades };
  state.items = floorItems(shape, state.memory);
  state.cascades = cascadesOf(plan, state.items.zones);

  hardStep(state, shape, was.items.hard, stale);
  const onFloor = reachStep(state, shape, stale);
  const isMoved = (number: number): boolean => was.cascades.ofZone.get(number) !== state.cascades.ofZone.get(number);
  coverStep(
    state,
    [...was.items.zones, ...was.items.findings],
    [...state.items.zones, ...state.items.findings],
    stale,
    (item) => isMoved(item.number),
  );
  pieceStep(state, stale);
  lineStep(state, was.items.lines, stale);
  state.faults = [...state.items.faults, ...machineFaults(shape), ...onFloor];
  return state;
}

function machineFaults(shape: FloorShape): GeometryFault[] {
  const known = new Set(shape.machines.map((machine) => machine.id));
  const asked = [
    ...shape.zones.map(({ id, machine, followedBy }) => ({ id, ids: [machine, ...(followedBy ?? [])] })),
    { id: 'rest', ids: [shape.restMachine, ...(shape.restFollowedBy ?? [])] },
  ];
  return asked.flatMap(({ id, ids }) =>
    ids.flatMap((machine) =>
      machine === null || known.has(machine) ? [] : [{ record: id, code: 'machineMissing', at: null }],
    ),
  );
}
