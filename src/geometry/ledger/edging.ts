import { boxOf, grownBox } from '../box.ts';
import { BEYOND_MM, type ChainParts, WIDEST_STRIP_MM, chainParts, edgedWidths, workedStretches } from '../faces.ts';
import type { Face } from '../hardFace.ts';
import { along } from '../point.ts';
import { type Cascades, fieldAt, isNet, layersOf } from './cells.ts';
import type { Cluster } from './clusters.ts';
import { type WidthByKind, bandOutlines } from './faceBands.ts';
import { ZONE, stripLayer } from './layers.ts';
import type { Outline } from './outline.ts';
import { type Place, homeOf } from './place.ts';
import type { Tile, TileGrid } from './tiles.ts';
import type { TileEdges } from './tileEdges.ts';
import { shareInBox, walk } from './walks.ts';

/*
 * What lies along the faces of a cluster: where a machine works beside them, and whose floor it is.
 *
 *      .....########field########.....        seen one strip width in from the face, tile by tile; the short runs
 *   =================================          around inner corners that a round head leaves count as worked
 */
export interface Edging {
  readonly cluster: Cluster;
  readonly faces: readonly Face[];
  /** Which faces each tile has to look at. */
  readonly inTile: ReadonlyMap<Tile, readonly number[]>;
  readonly seen: Map<Tile, readonly FaceBit[]>;
  readonly zones: Map<Tile, readonly FaceBit[]>;
  /** By cascade. */
  parts: readonly (readonly ChainParts[])[];
  strips: readonly (readonly Outline[] | null)[];
}

/** A stretch of a face with a cascade that works there, or a zone that lies there. */
export interface FaceBit {
  readonly face: number;
  readonly from: number;
  readonly to: number;
  readonly what: number;
}

/** The strip of a cascade: that of its last machine, the smallest. */
export interface CascadeEdge {
  readonly widths: WidthByKind;
  readonly standMm: WidthByKind;
}

/** How far inside the floor, in mm, the zone of a face is asked for. */
const INSIDE_MM = 1;

export function newEdging(cluster: Cluster, grid: TileGrid, edges: readonly CascadeEdge[]): Edging {
  const faces = cluster.faces.chains.flatMap((chain) => chain.faces);
  const widest = Math.max(INSIDE_MM, ...edges.flatMap(({ widths }) => Object.values(widths))) + BEYOND_MM + 1;
  const inTile = new Map<Tile, number[]>();
  for (const [i, { a, b }] of faces.entries()) {
    for (const tile of grid.meeting(grownBox(boxOf([a, b]), widest))) {
      const list = inTile.get(tile);
      if (list) list.push(i);
      else inTile.set(tile, [i]);
    }
  }
  return { cluster, faces, inTile, seen: new Map(), zones: new Map(), parts: [], strips: [] };
}

/** Looks along the faces of one tile again. */
export function lookAlong(
  edging: Edging,
  tile: Tile,
  edges: TileEdges,
  cascades: Cascades,
  widths: readonly CascadeEdge[],
): void {
  const place = homeOf(edges, layersOf(cascades));
  const numbers = edging.inTile.get(tile) ?? [];
  edging.seen.set(
    tile,
    widths.flatMap((edge, cascade) =>
      numbers.flatMap((i) => {
        const face = edging.faces[i] as Face;
        const isWorked = (at: Place): boolean => isNet(at) && fieldAt(at, cascade, cascades) >= 0;
        return besideFace(face, edge.widths[face.kind] + BEYOND_MM, tile, edges, place, isWorked)
          .filter(({ what }) => what)
          .map(({ from, to }) => ({ face: i, from, to, what: cascade }));
      }),
    ),
  );
  const isOneZone = !edges.rings.some(({ layer }) => layer === ZONE);
  edging.zones.set(
    tile,
    numbers.flatMap((i): FaceBit[] => {
      const face = edging.faces[i] as Face;
      if (isOneZone) {
        const share = shareBeside(face, INSIDE_MM, tile);
        return share ? [{ face: i, from: share[0], to: share[1], what: place.zone }] : [];
      }
      return besideFace(face, INSIDE_MM, tile, edges, place, (at) => at.zone).map(({ from, to, what }) => ({
        face: i,
        from,
        to,
        what,
      }));
    }),
  );
}

function shareBeside(face: Face, offMm: number, tile: Tile): readonly [number, number] | null {
  const [ax, ay] = along(face.a, face.inward, offMm);
  const [bx, by] = along(face.b, face.inward, offMm);
  return shareInBox(ax, ay, bx, by, tile.box);
}

function besideFace<T>(
  face: Face,
  offMm: number,
  tile: Tile,
  edges: TileEdges,
  place: Place,
  ask: (place: Place) => T,
) {
  const [ax, ay] = along(face.a, face.inward, offMm);
  const [bx, by] = along(face.b, face.inward, offMm);
  const share = shareInBox(ax, ay, bx, by, tile.box);
  return share ? walk(edges, place, ax, ay, bx, by, share, ask) : [];
}

/** Puts together what the tiles saw: the worked parts of each chain, and its strips; null where the whole band is strip. */
export function settleEdging(edging: Edging, edges: readonly CascadeEdge[]): void {
  const bits = [...edging.seen.values()].flat();
  edging.parts = edges.map(({ widths, standMm }, cascade) => {
    const byFace = sharesByFace(
      bits.filter((bit) => bit.what === cascade),
      edging.faces.length,
    );
    const numberOf = new Map(edging.faces.map((face, i) => [face, i]));
    return chainParts(
      edging.cluster.faces.chains,
      (face) => byFace[numberOf.get(face) as number] ?? [],
      widths,
      standMm,
    );
  });
  edging.strips = edges.map(({ widths }, cascade) => {
    const parts = edging.parts[cascade] ?? [];
    const isWhole = parts.every((chain) =>
      chain.parts.every((part) => part.worked && widths[part.face.kind] <= WIDEST_STRIP_MM),
    );
    if (isWhole) return null;
    const strip = edgedWidths(widths);
    return parts.flatMap((chain) =>
      workedStretches(chain).flatMap((stretch) => bandOutlines(stretch, strip, stripLayer(cascade))),
    );
  });
}

const SAME_SHARE = 1e-9;

/** Shares of each face in order; those that meet at the side of a tile are one. */
function sharesByFace(bits: readonly FaceBit[], count: number): (readonly [number, number])[][] {
  const byFace: (readonly [number, number])[][] = Array.from({ length: count }, () => []);
  for (const { face, from, to } of bits.toSorted((a, b) => a.from - b.from)) {
    const list = byFace[face] as (readonly [number, number])[];
    const last = list.at(-1);
    if (last && from - last[1] <= SAME_SHARE) list[list.length - 1] = [last[0], Math.max(last[1], to)];
    else list.push([from, to]);
  }
  return byFace;
}

export function zoneBits(edging: Edging): readonly FaceBit[] {
  return [...edging.zones.values()].flat().toSorted((a, b) => a.face - b.face || a.from - b.from);
}
