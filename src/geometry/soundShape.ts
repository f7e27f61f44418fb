import type { FloorShape, GeometryFault, PatchShape, Point, Ring, SlabShape, WallShape } from './floorShape.ts';
import { pointToGrid, ringToGrid } from './grid.ts';
import { isFinitePoint, isSame } from './point.ts';
import { corner, ringFault } from './ring.ts';

/**
 * The shape with every item that can be measured, on the plan grid, and a fault for every one that
 * cannot. What is left out here never breaks the rest of the floor.
 */
export function soundShape(shape: FloorShape): { readonly shape: FloorShape; readonly faults: GeometryFault[] } {
  const faults: GeometryFault[] = [];
  const isSound = (record: string, ring: Ring): boolean => {
    const fault = ringFault(ring);
    if (fault) faults.push({ record, ...fault });
    return !fault;
  };
  const patches = <P extends PatchShape>(list: readonly P[]): P[] =>
    list.filter((patch) => isSound(patch.id, patch.ring)).map((patch) => ({ ...patch, ring: ringToGrid(patch.ring) }));

  const slabs = shape.slabs.filter((slab) => isSound(slab.id, slab.ring)).map((slab) => soundSlab(slab, faults));
  const machineIds = new Set(shape.machines.map((machine) => machine.id));
  const known = (record: string, machine: string | null): string | null => {
    if (machine === null || machineIds.has(machine)) return machine;
    faults.push({ record, code: 'machineMissing', at: null });
    return null;
  };
  return {
    faults,
    shape: {
      ...shape,
      slabs,
      walls: shape.walls.filter((wall) => isSound(wall.id, wall.body)).map((wall) => soundWall(wall, isSound)),
      solids: shape.solids
        .filter((solid) => isSound(solid.id, solid.ring))
        .map((solid) => ({ ...solid, ring: ringToGrid(solid.ring) })),
      outOfScope: patches(shape.outOfScope),
      zones: patches(shape.zones).map((zone) => ({ ...zone, machine: known(zone.id, zone.machine) })),
      restMachine: known('rest', shape.restMachine),
      findings: patches(shape.findings),
      lines: shape.lines.filter((line) => isPath(line.id, line.path, faults)),
      entrances: shape.entrances.filter((entrance) => isPath(entrance.id, [entrance.at, [0, 0]], faults)),
    },
  };
}

function soundSlab(slab: SlabShape, faults: GeometryFault[]): SlabShape {
  const count = slab.ring.length;
  if (slab.faces.length !== count || slab.passages.length !== count) {
    faults.push({ record: slab.id, code: 'facesDoNotMatch', at: slab.ring[0] ?? null });
  }
  const ring = slab.ring.map(pointToGrid);
  const kept = ring.map((_, i) => i).filter((i) => !isSame(corner(ring, i), corner(ring, i + 1)));
  return {
    id: slab.id,
    ring: kept.map((i) => corner(ring, i)),
    faces: kept.map((i) => slab.faces[i] ?? 'wall'),
    passages: kept.map((i) => slab.passages[i] ?? null),
  };
}

function soundWall(wall: WallShape, isSound: (record: string, ring: Ring) => boolean): WallShape {
  const gaps = wall.gaps.filter((gap) => isSound(gap.passage.id, gap.ring));
  return { ...wall, body: ringToGrid(wall.body), gaps: gaps.map((gap) => ({ ...gap, ring: ringToGrid(gap.ring) })) };
}

function isPath(record: string, path: readonly Point[], faults: GeometryFault[]): boolean {
  const code = path.length < 2 ? 'tooFewCorners' : path.every(isFinitePoint) ? null : 'notANumber';
  if (code) faults.push({ record, code, at: null });
  return !code;
}
