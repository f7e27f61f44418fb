import type { FaceKind, FloorShape, Passage, Point, Ring, SlabShape } from '../../src/geometry/floorShape.ts';
import { turned } from '../support/floors.ts';
import { mapped } from '../support/randomFloors.ts';
import type { Dice } from './dice.ts';

/**
 * The same floor, drawn otherwise: every number must stay. Null where a plan has nothing to draw otherwise.
 * `before` is what the variant is compared with, when that is not the plan as it came.
 */
type Variant = (shape: FloorShape, dice: Dice) => { readonly before?: FloorShape; readonly after: FloorShape } | null;

/** On steps that a float can hold after a move too, so that only the tiles move and no corner does. */
const STEPS_A_MM = 2 ** 24;
const FARTHEST_MM = 2 ** 27;

const moved: Variant = (shape, dice) => {
  const off: Point = [dice.whole(-20_000, 20_000) + 0.5, dice.whole(-20_000, 20_000) + 0.25];
  const onStep = (value: number): number => Math.round(value * STEPS_A_MM) / STEPS_A_MM;
  const before = mapped(shape, ([x, y]) => [onStep(x), onStep(y)]);
  const isFar = shape.slabs.some(({ ring }) => ring.some(([x, y]) => Math.abs(x) + Math.abs(y) > FARTHEST_MM));
  return isFar ? null : { before, after: mapped(before, ([x, y]) => [x + off[0], y + off[1]]) };
};

const otherDirection: Variant = (shape, dice) => {
  const turn = (ring: Ring): Ring => (dice.chance(0.6) ? ring.toReversed() : ring);
  return {
    after: { ...withRings(shape, turn), slabs: shape.slabs.map((slab) => (dice.chance(0.6) ? reversed(slab) : slab)) },
  };
};

/** Edge i of the reversed ring runs between the same corners as edge n - 2 - i. */
function reversed({ id, ring, faces, passages }: SlabShape): SlabShape {
  const back = <T>(list: readonly T[]): T[] => [...list.slice(0, -1).toReversed(), ...list.slice(-1)];
  return { id, ring: ring.toReversed(), faces: back(faces), passages: back(passages) };
}

const otherStart: Variant = (shape, dice) => {
  const first = dice.next();
  const shift = <T>(list: readonly T[]): T[] => {
    const from = Math.floor(first * list.length);
    return [...list.slice(from), ...list.slice(0, from)];
  };
  const slabs = shape.slabs.map(({ id, ring, faces, passages }) => ({
    id,
    ring: shift(ring),
    faces: shift(faces),
    passages: shift(passages),
  }));
  return { after: { ...withRings(shape, shift), slabs } };
};

/** Order of records says nothing, but for zones, where later lies on top. */
const otherOrder: Variant = (shape) => ({
  after: {
    ...shape,
    slabs: shape.slabs.toReversed(),
    walls: shape.walls.map((wall) => ({ ...wall, gaps: wall.gaps.toReversed() })).toReversed(),
    solids: shape.solids.toReversed(),
    outOfScope: shape.outOfScope.toReversed(),
    findings: shape.findings.toReversed(),
    lines: shape.lines.toReversed(),
    machines: shape.machines.toReversed(),
  },
});

/** A corner in the middle of edges along x or y, where a float can lie on the edge exactly. */
const splitEdges: Variant = (shape, dice) => {
  const middle = (a: Point, b: Point): Point[] =>
    (a[0] === b[0] || a[1] === b[1]) && dice.chance(0.5) ? [[(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]] : [];
  const split = (ring: Ring): Ring => ring.flatMap((a, i) => [a, ...middle(a, ring[(i + 1) % ring.length] ?? a)]);
  const slabs = shape.slabs.map((slab): SlabShape => {
    const corners: { at: Point; face: FaceKind; passage: Passage | null }[] = slab.ring.flatMap((a, i) => {
      const passage = slab.passages[i] ?? null;
      const face = slab.faces[i] ?? 'wall';
      const more = passage ? [] : middle(a, slab.ring[(i + 1) % slab.ring.length] ?? a);
      return [a, ...more].map((at) => ({ at, face, passage }));
    });
    return {
      id: slab.id,
      ring: corners.map(({ at }) => at),
      faces: corners.map(({ face }) => face),
      passages: corners.map(({ passage }) => passage),
    };
  });
  return { after: { ...withRings(shape, split), slabs } };
};

const columnAgain: Variant = (shape, dice) => {
  const again = shape.solids.filter(() => dice.chance(0.7)).map((solid, i) => ({ ...solid, id: `again${i}` }));
  return again.length > 0 ? { after: { ...shape, solids: [...shape.solids, ...again] } } : null;
};

/** Exact in floats, unlike a turn by another angle. */
const quarterTurned: Variant = (shape) => ({ after: mapped(shape, ([x, y]) => [-y, x]) });
const mirrored: Variant = (shape) => ({ after: mapped(shape, ([x, y]) => [-x, y]) });

/** Every corner gets a rounding of its own: what lay on one line lies beside it by 1e-12 mm. */
const turnedAnyWay: Variant = (shape, dice) => {
  const angle = dice.between(0.1, 3);
  return { after: mapped(shape, (at) => turned(at, angle)) };
};

/** A zone somewhere else. */
const emptyZone: Variant = (shape) => {
  const ring: Ring = [
    [-9e6, -9e6],
    [-9e6 + 1, -9e6],
    [-9e6, -9e6 + 1],
  ];
  return { after: { ...shape, zones: [...shape.zones, { id: 'far', ring, machine: null }] } };
};

/** Everything but slabs, whose edges have kinds. */
function withRings(shape: FloorShape, change: (ring: Ring) => Ring): FloorShape {
  const each = <T extends { readonly ring: Ring }>(list: readonly T[]): T[] =>
    list.map((one) => ({ ...one, ring: change(one.ring) }));
  return {
    ...shape,
    walls: shape.walls.map((wall) => ({ ...wall, body: change(wall.body), gaps: each(wall.gaps) })),
    solids: each(shape.solids),
    outOfScope: each(shape.outOfScope),
    zones: each(shape.zones),
    findings: each(shape.findings),
  };
}

export const VARIANTS = {
  moved,
  otherDirection,
  otherStart,
  otherOrder,
  splitEdges,
  columnAgain,
  quarterTurned,
  mirrored,
  turnedAnyWay,
  emptyZone,
} as const satisfies Record<string, Variant>;
