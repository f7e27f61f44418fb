import { boxOf, grownBox } from '../box.ts';
import { BEYOND_MM, type ChainParts, chainParts, edgedWidths, isEdgeStrip, workedStretches } from '../faces.ts';
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
  /** How wide its band is along each kind of face, in mm. */
  readonly widths: WidthByKind;
  /** How near the middle of its body comes, in mm: so long are the runs in corners that it cannot see. */
  readonly bodyMm: WidthByKind;
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
  strips: readonly CascadeEdge[],
): void {
  const view = { tile, edges, place: homeOf(edges, layersOf(cascades)) };
  const worked = strips.flatMap(({ widths }, cascade) => workedBits(edging, view, cascade, widths, cascades));
  edging.seen.set(tile, worked);
  edging.zones.set(tile, zoneBitsIn(edging, view));
}

/** A tile with what the ledger sweeps there and the place at its left side. */
interface View {
  readonly tile: Tile;
  readonly edges: TileEdges;
  readonly place: Place;
}

/** Stretches of faces in a tile along which a cascade works. */
function workedBits(
  edging: Edging,
  view: View,
  cascade: number,
  widths: WidthByKind,
  cascades: Cascades,
): readonly FaceBit[] {
  const isWorked = (at: Place): boolean => isNet(at) && fieldAt(at, cascade, cascades) >= 0;
  return (edging.inTile.get(view.tile) ?? []).flatMap((i) => {
    const face = edging.faces[i] as Face;
    return besideFace(face, widths[face.kind] + BEYOND_MM, view, isWorked)
      .filter(({ what }) => what)
      .map(({ from, to }) => ({ face: i, from, to, what: cascade }));
  });
}

/** Stretches of faces in a tile with the zone just inside. */
function zoneBitsIn(edging: Edging, view: View): readonly FaceBit[] {
  const { tile, edges, place } = view;
  const numbers = edging.inTile.get(tile) ?? [];
  if (edges.rings.some(({ layer }) => layer === ZONE))
    return numbers.flatMap((i) =>
      besideFace(edging.faces[i] as Face, INSIDE_MM, view, (at) => at.zone).map((bit) => ({ face: i, ...bit })),
    );
  return numbers.flatMap((i) => {
    const { share } = lineBeside(edging.faces[i] as Face, INSIDE_MM, tile);
    return share ? [{ face: i, from: share[0], to: share[1], what: place.zone }] : [];
  });
}

/** The line so far inside a face, and the share of it that lies in a tile. */
function lineBeside(face: Face, offMm: number, { box }: Tile) {
  const a = along(face.a, face.inward, offMm);
  const b = along(face.b, face.inward, offMm);
  return { a, b, share: shareInBox(a[0], a[1], b[0], b[1], box) };
}

function besideFace<T>(face: Face, offMm: number, { tile, edges, place }: View, ask: (place: Place) => T) {
  const { a, b, share } = lineBeside(face, offMm, tile);
  return share ? walk(edges, place, a[0], a[1], b[0], b[1], share, ask) : [];
}

/** Puts together what the tiles saw: the worked parts of each chain, and its strips; null where the whole band is strip. */
export function settleEdging(edging: Edging, edges: readonly CascadeEdge[]): void {
  const bits = [...edging.seen.values()].flat();
  const numberOf = new Map(edging.faces.map((face, i) => [face, i]));
  edging.parts = edges.map(({ widths, bodyMm }, cascade) => {
    const ownBits = bits.filter((bit) => bit.what === cascade);
    const byFace = sharesByFace(ownBits, edging.faces.length);
    const seenOf = (face: Face) => byFace[numberOf.get(face) as number] ?? [];
    return chainParts(edging.cluster.faces.chains, seenOf, widths, bodyMm);
  });
  edging.strips = edges.map(({ widths }, cascade) => {
    const parts = edging.parts[cascade] ?? [];
    const isWhole = parts.every((chain) =>
      chain.parts.every((part) => part.worked && isEdgeStrip(widths[part.face.kind])),
    );
    if (isWhole) return null;
    const strip = edgedWidths(widths);
    return parts.flatMap((chain) =>
      workedStretches(chain).flatMap((stretch) => bandOutlines(stretch, strip, stripLayer(cascade))),
    );
  });
}

/** Shares of a face nearer than this are one. */
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

/** All stretches of faces with the zone just inside, along each face in order. */
export function zoneBits(edging: Edging): readonly FaceBit[] {
  return [...edging.zones.values()].flat().toSorted((a, b) => a.face - b.face || a.from - b.from);
}
