import { type FloorShape, type Point, REST, type Region, type Ring, type TightPiece } from '../floorShape.ts';
import { boxOf, grownBox } from '../box.ts';
import { WIDEST_STRIP_MM, bandWidths } from '../faces.ts';
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

const BY_HAND: Reason = { kind: 'gap', blockedBy: null, keptOff: null, gap: null };

/** Pieces by zone number. `fieldOf` is what all machines cover, for the way from there. */
export function tightPieces(
  state: LedgerState,
  shape: FloorShape,
  outlines: ReadonlyMap<string, Region>,
): ReadonlyMap<number, TightPiece[]> {
  const whole = (outlines.get(ALL_TIGHT) ?? []).filter((polygon) => !isSliver(polygon));
  const index = boxIndex(whole.map((polygon) => boxOf(polygon[0] ?? [])));
  const finder = reasonFinder(state, shape, outlines);
  const known = state.plan.sequences.map(() => new Map<readonly Ring[], Reason>());
  const reasonAt = (at: Point, cascade: number): Reason => {
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
  const zones = [NO_ZONE, ...present(state.items.zones).map((zone) => zone.number)];
  return new Map(
    zones.map((zone) => {
      const cascade = cascadeOfZone(zone, state.cascades);
      const id = present(state.items.zones).find((item) => item.number === zone)?.id ?? REST;
      const pieces = (outlines.get(partKey(zone, TIGHT)) ?? [])
        .filter((polygon) => !isSliver(polygon))
        .map((polygon): TightPiece => {
          const region = [polygon];
          const at = pieceSpot(region);
          return {
            ...(cascade < 0 ? BY_HAND : reasonAt(at, cascade)),
            areaM2: regionArea(region) / 1e6,
            region,
            at,
            zone: id,
          };
        });
      return [zone, pieces.toSorted((a, b) => b.areaM2 - a.areaM2)];
    }),
  );
}

/** Finds the reason of a whole piece. What it needs of the floor is made when first asked. */
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
    const box = boxOf(polygon[0] ?? []);
    const index = regionIndex([polygon]);
    const machine = state.plan.machines[sequence.at(-1) ?? -1]?.shape;
    if (!machine) return BY_HAND;
    const lost = spots.some(({ at, of }) => sequence.includes(of) && index.contains(at));
    const near = (byMm: number): Face[] => faceIndex.meeting(grownBox(box, byMm)).flatMap((i) => moved[i] ?? []);
    if (lost) {
      const blockedBy = blockerOf(index, reached(), machine, ways, shape);
      return {
        kind: 'cutOff',
        blockedBy,
        keptOff: null,
        gap: blockedBy ? null : narrowGap([polygon], near(machine.passageMm + 100), machine),
      };
    }
    const widths = bandWidths(machine);
    const face = near(1).find((each) => widths[each.kind] > WIDEST_STRIP_MM && liesAlong(polygon, each));
    if (face)
      return {
        kind: 'gap',
        blockedBy: null,
        keptOff: { kind: face.kind, clearanceMm: machine.clearanceMm[face.kind] },
        gap: null,
      };
    const isRest = regionArea([polygon]) < CORNER_REST_MM2;
    return {
      kind: 'gap',
      blockedBy: null,
      keptOff: null,
      gap: isRest ? null : narrowGap([polygon], near(machine.passageMm + 100), machine),
    };
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
