import { type FloorShape, type Point, REST, type Region, type Ring, type TightPiece } from '../floorShape.ts';
import { boxOf, grownBox } from '../box.ts';
import { bandWidths, isEdgeStrip } from '../faces.ts';
import type { Face } from '../hardFace.ts';
import { narrowGap } from '../narrowGap.ts';
import { plus } from '../point.ts';
import { type RegionIndex, regionIndex } from '../regionIndex.ts';
import { regionArea } from '../ring.ts';
import { boxIndex } from '../spatial.ts';
import { blockerOf, isSliver, liesAlong, pieceSpot } from '../tight.ts';
import { waysOf } from '../ways.ts';
import { partKey, ALL_TIGHT } from './partOutlines.ts';
import { STRIP, TIGHT, cascadeOfZone } from './cells.ts';
import { NO_ZONE } from './place.ts';
import { present } from './floorItems.ts';
import type { LedgerState } from './ledgerState.ts';

/*
 * Hand floor piece by piece, each with its reason.
 *
 *   cut off   a machine could stand there, but nothing leads in: the passage that is too narrow or too low, or the gap
 *   gap       too small for the head: the two faces that are too near, or the face that it keeps far off
 *
 * What hangs together has one reason for each cascade, however zones cut it: that of its last machine, the smallest.
 */
interface Reason {
  readonly kind: TightPiece['kind'];
  readonly blockedBy: TightPiece['blockedBy'];
  readonly keptOff: NonNullable<TightPiece['keptOff']> | null;
  readonly gap: NonNullable<TightPiece['gap']> | null;
}

/** Smaller pieces, in mm2, are what a round head leaves in corners: the reason is the head, and none is looked for. */
const CORNER_REST_MM2 = 20_000;

/** How far beyond the width that a machine needs, in mm, faces are looked for. */
const LOOK_MM = 100;

const BY_HAND: Reason = { kind: 'gap', blockedBy: null, keptOff: null, gap: null };

/** Pieces by zone number, the largest first. `outlines` are those of all parts, by `partKey`. */
export function tightPieces(
  state: LedgerState,
  shape: FloorShape,
  outlines: ReadonlyMap<string, Region>,
): ReadonlyMap<number, TightPiece[]> {
  const reasonAt = reasonsByPlace(state, shape, outlines);
  const zones = [{ number: NO_ZONE, id: REST }, ...present(state.items.zones)];
  return new Map(
    zones.map(({ number, id }) => {
      const cascade = cascadeOfZone(number, state.cascades);
      const polygons = (outlines.get(partKey(number, TIGHT)) ?? []).filter((polygon) => !isSliver(polygon));
      const pieces = polygons.map((polygon): TightPiece => {
        const region = [polygon];
        const at = pieceSpot(region);
        const reason = cascade < 0 ? BY_HAND : reasonAt(at, cascade);
        return { ...reason, areaM2: regionArea(region) / 1e6, region, at, zone: id };
      });
      return [number, pieces.toSorted((a, b) => b.areaM2 - a.areaM2)];
    }),
  );
}

/** The reason of what hangs together around a place, looked for once for each cascade. */
function reasonsByPlace(
  state: LedgerState,
  shape: FloorShape,
  outlines: ReadonlyMap<string, Region>,
): (at: Point, cascade: number) => Reason {
  const whole = (outlines.get(ALL_TIGHT) ?? []).filter((polygon) => !isSliver(polygon));
  const index = boxIndex(whole.map((polygon) => boxOf(polygon[0] ?? [])));
  const finder = reasonFinder(state, shape, outlines);
  const known = state.plan.sequences.map(() => new Map<readonly Ring[], Reason>());
  return (at, cascade) => {
    const reasons = known[cascade];
    const found = index
      .meeting(boxOf([at]))
      .map((i) => whole[i] as readonly Ring[])
      .find((polygon) => whole.length === 1 || regionIndex([polygon]).contains(at));
    if (!found || !reasons) return BY_HAND;
    const reason = reasons.get(found) ?? finder(found, state.plan.sequences[cascade] ?? []);
    reasons.set(found, reason);
    return reason;
  };
}

/** Finds the reason of a whole piece, in the coordinates of the plan. */
function reasonFinder(
  state: LedgerState,
  shape: FloorShape,
  outlines: ReadonlyMap<string, Region>,
): (polygon: readonly Ring[], sequence: readonly number[]) => Reason {
  const { origin } = state;
  const faces = state.clusters.flatMap((cluster) => cluster.faces.chains.flatMap((chain) => chain.faces));
  const moved = origin[0] === 0 && origin[1] === 0 ? faces : faces.map((face) => movedFace(face, origin));
  const faceIndex = boxIndex(moved.map((face) => boxOf([face.a, face.b])));
  const spots = unreachedSpots(state);
  const ways = waysOf(shape);
  let field: RegionIndex | null = null;
  const reached = (): RegionIndex =>
    (field ??= regionIndex([...outlines].flatMap(([key, region]) => (isField(key) ? region : []))));

  return (polygon, sequence) => {
    const machine = state.plan.machines[sequence.at(-1) ?? -1]?.shape;
    if (!machine) return BY_HAND;
    const box = boxOf(polygon[0] ?? []);
    const near = (byMm: number): Face[] => faceIndex.meeting(grownBox(box, byMm)).flatMap((i) => moved[i] ?? []);
    const narrowest = () => narrowGap([polygon], near(machine.passageMm + LOOK_MM), machine);

    const index = regionIndex([polygon]);
    if (spots.some(({ at, of }) => sequence.includes(of) && index.contains(at))) {
      const blockedBy = blockerOf(index, reached(), machine, ways, shape);
      return { ...BY_HAND, kind: 'cutOff', blockedBy, gap: blockedBy ? null : narrowest() };
    }
    const widths = bandWidths(machine);
    const face = near(1).find((each) => !isEdgeStrip(widths[each.kind]) && liesAlong(polygon, each));
    if (face) return { ...BY_HAND, keptOff: { kind: face.kind, clearanceMm: machine.clearanceMm[face.kind] } };
    const isCornerRest = regionArea([polygon]) < CORNER_REST_MM2;
    return { ...BY_HAND, gap: isCornerRest ? null : narrowest() };
  };
}

function movedFace(face: Face, origin: Point): Face {
  return { ...face, a: plus(face.a, origin), b: plus(face.b, origin) };
}

function isField(key: string): boolean {
  const part = Number(key.split(' ')[1]);
  return part < STRIP;
}

/** Places where a machine could stand but that it does not get to. */
export function unreachedSpots(state: LedgerState): { readonly at: Point; readonly of: number }[] {
  const [x, y] = state.origin;
  return state.plan.machines.flatMap((machine) =>
    state.grid.tiles.flatMap((tile) =>
      (tile.rooms[machine.number]?.spots ?? []).flatMap((spot, room) =>
        spot.isInTile && tile.reached[machine.number]?.[room] === false
          ? [{ at: [spot.x + x, spot.y + y] as const, of: machine.number }]
          : [],
      ),
    ),
  );
}
