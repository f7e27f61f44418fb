import { describe, expect, it } from 'vitest';
import type { FloorShape, MachineShape, WallShape } from '../../../src/geometry/floorShape.ts';
import { measureFloor } from '../../../src/geometry/measureFloor.ts';
import { column, floorOf, machine, rectangle, slab, total, zoneNamed } from '../../support/floors.ts';

/** A hall 10 x 6 m with a wall across at x = 6 m, 100 mm thick, and one door in it. */
const HALL = slab(rectangle(0, 0, 10_000, 6_000));
const SMALL = machine(250, 50, 50, { passageMm: 800 });

function wallWithDoor(drawnMm: number, widthMm = drawnMm, heightMm: number | null = null): WallShape {
  return {
    id: 'w1',
    body: rectangle(6_000, 0, 100, 6_000),
    gaps: [{ passage: { id: 'd1', widthMm, heightMm }, ring: rectangle(6_000, 2_000, 100, drawnMm) }],
  };
}

function twoRooms(wall: WallShape, one: MachineShape = SMALL, more: Partial<FloorShape> = {}): FloorShape {
  return floorOf([HALL], one, {
    walls: [wall],
    entrances: [{ id: 'e1', at: [1_000, 1_000], widthMm: null, heightMm: null }],
    ...more,
  });
}

function cutOffM2(shape: FloorShape): number {
  return total(measureFloor(shape), (zone) => zone.cutOffM2);
}

describe('a door between two rooms', () => {
  const farRoomM2 = 3.9 * 6;
  it('of 0.79 m cuts the far room off, of 0.80 m does not', () => {
    expect(cutOffM2(twoRooms(wallWithDoor(790)))).toBeGreaterThan(farRoomM2 - 0.2);
    expect(cutOffM2(twoRooms(wallWithDoor(800)))).toBe(0);
  });
  it('names the passage, what it lacks and how much is needed', () => {
    const [piece] = zoneNamed(measureFloor(twoRooms(wallWithDoor(790)))).tight;
    expect(piece?.kind).toBe('cutOff');
    expect(piece?.blockedBy).toEqual({
      passage: { id: 'd1', widthMm: 790, heightMm: null },
      needsMm: 800,
      what: 'width',
    });
  });
  it('drawn wide but stated narrow is narrow; stated wide but drawn narrow is narrow too', () => {
    // The head comes up to the door from the near room and reaches some way through it.
    expect(cutOffM2(twoRooms(wallWithDoor(1_000, 700)))).toBeGreaterThan(farRoomM2 - 0.25);
    const drawn = measureFloor(twoRooms(wallWithDoor(700, 1_000)));
    expect(total(drawn, (zone) => zone.cutOffM2)).toBeGreaterThan(farRoomM2 - 0.2);
    expect(zoneNamed(drawn).tight[0]?.blockedBy?.passage.id).toBe('d1');
  });
  it('too low cuts off as well', () => {
    const [piece] = zoneNamed(measureFloor(twoRooms(wallWithDoor(1_000, 1_000, 1_100)))).tight;
    expect(piece?.blockedBy).toMatchObject({ needsMm: 1_200, what: 'height' });
    expect(cutOffM2(twoRooms(wallWithDoor(1_000, 1_000, 1_200)))).toBe(0);
  });
  it('less than half a millimetre short still passes', () => {
    expect(cutOffM2(twoRooms(wallWithDoor(799.6)))).toBe(0);
    expect(cutOffM2(twoRooms(wallWithDoor(799)))).toBeGreaterThan(20);
  });
  it('leaves no edge metres in the room cut off: its faces are hidden', () => {
    const zone = zoneNamed(measureFloor(twoRooms(wallWithDoor(790))));
    const nearRoom = 2 * (6 + 6) - 0.79;
    const farRoom = 2 * (3.9 + 6) - 0.79;
    // The way through is worked from the near room: its two reveals, 0.1 m each, are edge.
    expect(zone.faces.wall).toBeCloseTo(nearRoom + 2 * 0.1, 6);
    expect(zone.faces.hidden).toBeCloseTo(farRoom, 6);
    expect(zone.fieldM2 + zone.stripM2 + zone.tightM2).toBeCloseTo(zone.netM2, 4);
  });
  it('with no entrance every room counts as entered', () => {
    expect(cutOffM2(twoRooms(wallWithDoor(790), SMALL, { entrances: [] }))).toBe(0);
  });
});

describe('an entrance', () => {
  const door = (widthMm: number, faces: 'run' | 'stop'): FloorShape => {
    const ring = [
      [0, 0],
      [6_000, 0],
      [6_000, 6_000],
      [3_000 + widthMm, 6_000],
      [3_000, 6_000],
      [0, 6_000],
    ] as const;
    return floorOf([slab(ring, ['wall', 'wall', 'wall', faces, 'wall', 'wall'])], SMALL, {
      entrances: [{ id: 'e1', at: [3_000 + widthMm / 2, 6_000], widthMm: null, heightMm: null }],
    });
  };
  it('through an edge where the floor runs on must be wide enough as drawn', () => {
    expect(cutOffM2(door(790, 'run'))).toBeGreaterThan(35);
    expect(cutOffM2(door(800, 'run'))).toBe(0);
  });
  it('at a stop line enters the room behind it', () => {
    expect(cutOffM2(door(1_000, 'stop'))).toBe(0);
  });
  it('narrower or lower than the machine keeps it out and is named', () => {
    const narrow = floorOf([HALL], SMALL, { entrances: [{ id: 'e1', at: [0, 3_000], widthMm: 750, heightMm: null }] });
    const [piece] = zoneNamed(measureFloor(narrow)).tight;
    expect(piece).toMatchObject({ kind: 'cutOff', blockedBy: { passage: { id: 'e1' }, needsMm: 800, what: 'width' } });
    expect(zoneNamed(measureFloor(narrow)).fieldM2).toBe(0);
    const low = floorOf([HALL], SMALL, { entrances: [{ id: 'e1', at: [0, 3_000], widthMm: null, heightMm: 900 }] });
    expect(zoneNamed(measureFloor(low)).tight[0]?.blockedBy?.what).toBe('height');
  });
  it('on a wall beside another room enters only its own room', () => {
    const shape = twoRooms(wallWithDoor(790), SMALL, {
      entrances: [{ id: 'e1', at: [6_000, 4_000], widthMm: null, heightMm: null }],
    });
    expect(cutOffM2(shape)).toBeCloseTo(cutOffM2(twoRooms(wallWithDoor(790))), 6);
  });
  it('off the slab is a fault and shuts nothing', () => {
    const measure = measureFloor(
      floorOf([HALL], SMALL, { entrances: [{ id: 'e9', at: [-900, 0], widthMm: null, heightMm: null }] }),
    );
    expect(measure.faults).toEqual([{ record: 'e9', code: 'entranceOutsideSlab', at: [-900, 0] }]);
    expect(zoneNamed(measure).fieldM2).toBeGreaterThan(50);
  });
});

describe('a gap between solids', () => {
  const between = (gapMm: number) => {
    const solids = [column('b1', 6_000, 0, 100, 2_000), column('b2', 6_000, 2_000 + gapMm, 100, 4_000 - gapMm)];
    return cutOffM2(
      floorOf([HALL], SMALL, { solids, entrances: [{ id: 'e1', at: [1_000, 1_000], widthMm: null, heightMm: null }] }),
    );
  };
  it('counts as drawn', () => {
    expect(between(790)).toBeGreaterThan(23);
    expect(between(800)).toBe(0);
  });
});

describe('a drop', () => {
  const faces = ['wall', 'drop', 'wall', 'wall'] as const;
  it('with a clearance beyond 400 mm leaves hand area, no metres', () => {
    const one = machine(250, 50, 50, { clearanceMm: { wall: 50, obstruction: 50, drop: 600, stop: 50 } });
    const zone = zoneNamed(measureFloor(floorOf([slab(rectangle(0, 0, 10_000, 6_000), faces)], one)));
    expect(zone.faces.drop).toBe(0);
    expect(zone.faces.wall).toBeGreaterThan(24);
    expect(zone.faces.hidden).toBeGreaterThanOrEqual(6);
    // The band holds clearance and lap, 650 mm, less what is edge strip of the walls beside it.
    expect(zone.tightM2).toBeGreaterThan(0.65 * (6 - 0.2) - 0.01);
    expect(zone.tightM2).toBeLessThan(0.65 * 6 + 0.1);
    expect(zone.fieldM2 + zone.stripM2 + zone.tightM2).toBeCloseTo(60, 4);
    // All of it lies along the drop, and that is why it is there; it is not too small for anything.
    const [along, ...others] = zone.tight;
    expect(along).toMatchObject({ kind: 'gap', keptOff: { kind: 'drop', clearanceMm: 600 } });
    expect(others.filter(({ keptOff }) => keptOff)).toEqual([]);
  });
  it('is the reason too where the hand area goes on past its ends, along the walls beside it', () => {
    const one = machine(250, 50, 50, { clearanceMm: { wall: 50, obstruction: 50, drop: 600, stop: 50 } });
    const ring = [...rectangle(0, 0, 10_000, 6_000), [0, 4_000], [0, 2_000]] as const;
    const kinds = ['wall', 'wall', 'wall', 'wall', 'drop', 'wall'] as const;
    const [along] = zoneNamed(measureFloor(floorOf([slab(ring, kinds)], one))).tight;
    expect(along?.areaM2).toBeGreaterThan(0.65 * 2);
    expect(along?.keptOff).toEqual({ kind: 'drop', clearanceMm: 600 });
  });
  it('says nothing of the drop where a niche is too small for the head', () => {
    const one = machine(250, 50, 50, { clearanceMm: { wall: 50, obstruction: 50, drop: 600, stop: 50 } });
    const block = column('b1', 3_000, 300, 1_000);
    const zone = zoneNamed(
      measureFloor(floorOf([slab(rectangle(0, 0, 10_000, 6_000), faces)], one, { solids: [block] })),
    );
    const niche = zone.tight.find(({ at }) => Math.hypot(at[0] - 3_500, at[1] - 150) < 400);
    expect(niche).toMatchObject({ kind: 'gap', keptOff: null });
  });
  it('with 300 mm has metres and a strip', () => {
    const one = machine(250, 50, 50, { clearanceMm: { wall: 50, obstruction: 50, drop: 300, stop: 50 } });
    const zone = zoneNamed(measureFloor(floorOf([slab(rectangle(0, 0, 10_000, 6_000), faces)], one)));
    expect(zone.faces.drop).toBeCloseTo(6, 6);
    expect(zone.faces.hidden).toBe(0);
  });
});

describe('tight floor', () => {
  it('of a niche the head does not enter hides the faces of the niche', () => {
    const ring = [
      [0, 0],
      [6_000, 0],
      [6_000, 6_000],
      [3_400, 6_000],
      [3_400, 6_900],
      [3_000, 6_900],
      [3_000, 6_000],
      [0, 6_000],
    ] as const;
    const zone = zoneNamed(measureFloor(floorOf([slab(ring)], SMALL)));
    expect(zone.tight[0]?.kind).toBe('gap');
    expect(zone.faces.hidden).toBeGreaterThan(1.9);
    expect(zone.faces.wall).toBeGreaterThan(23);
  });
  it('is the whole of a zone without a machine', () => {
    const shape = floorOf([HALL], SMALL, {
      zones: [{ id: 'z1', ring: rectangle(-100, -100, 3_100, 7_000), machine: null }],
    });
    const zone = zoneNamed(measureFloor(shape), 'z1');
    expect(zone).toMatchObject({ fieldM2: 0, stripM2: 0, cutOffM2: 0 });
    expect(zone.tightM2).toBeCloseTo(18, 6);
    expect(zone.faces.hidden).toBeCloseTo(12, 6);
    expect(zone.tight.map((piece) => piece.kind)).toEqual(['gap']);
  });
});
