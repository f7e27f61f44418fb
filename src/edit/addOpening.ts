import type { Point } from '../geometry/floorShape.ts';
import { toGrid } from '../geometry/grid.ts';
import { between, distance } from '../geometry/point.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';
import type { Corner } from '../model/records/slab.ts';
import type { Command } from './command.ts';
import { cornerAt, outlineOf, type Beyond } from './edges.ts';
import { newRecordCells, refuseNewId } from './newItem.ts';
import { highestTag, nextTag, tagOf } from './tags.ts';
import { edgeLength, startOfEdge } from './wallOpenings.ts';

/*
 *   on a wall:       a record of its own, counted along the wall's path
 *   on a slab edge:  i ---wall--- near ==doorway== far ---wall--- i+1     two corners more
 */

export type AddOpeningArgs = {
  /** Of the opening record; not used on a slab's edge. */
  readonly id: RecordId;
  /** The wall or slab. */
  readonly on: RecordId;
  readonly edge: number;
  /** From the start of that edge to the near jamb. */
  readonly atMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Of a slab's edge; a doorway starts as a stop. */
  readonly beyond?: Beyond;
};

/** A jamb nearer than this to a corner is the corner. */
const SAME_MM = 0.01;

export const addOpening: Command<AddOpeningArgs> = {
  name: 'addOpening',
  refuse(doc, args) {
    if (!(args.widthMm > 0) || !(args.heightMm > 0)) return 'noSize';
    if (recordOf(doc, 'wall', args.on)) return refuseOnWall(doc, args);
    if (recordOf(doc, 'slab', args.on)) return refuseOnSlab(doc, args);
    return 'openingNeedsWall';
  },
  write: (doc, args) => (recordOf(doc, 'wall', args.on) ? onWall(doc, args) : onSlab(doc, args)),
};

function refuseOnWall(doc: Doc, args: AddOpeningArgs): string | null {
  const path = recordOf(doc, 'wall', args.on)?.path ?? [];
  const fits = fitFault(args, edgeLength(path, args.edge));
  return fits ?? refuseNewId(doc, args.id, 'opening');
}

function refuseOnSlab(doc: Doc, args: AddOpeningArgs): string | null {
  const edge = slabEdge(doc, args);
  if (!edge) return 'unknownEdge';
  if (edge.from.edge.kind !== 'wall') return 'edgeIsNoWall';
  return fitFault(args, edge.lengthMm);
}

function fitFault({ atMm, widthMm }: AddOpeningArgs, lengthMm: number): string | null {
  if (lengthMm === 0) return 'unknownEdge';
  return atMm < -SAME_MM || atMm + widthMm > lengthMm + SAME_MM ? 'openingTooLong' : null;
}

function onWall(doc: Doc, args: AddOpeningArgs): Cell[] {
  const wall = recordOf(doc, 'wall', args.on);
  if (!wall) return [];
  return newRecordCells(doc, args.id, {
    wall: args.on,
    tag: nextTag(doc, wall.floor, 'opening'),
    atMm: toGrid(startOfEdge(wall.path, args.edge) + Math.max(0, args.atMm)),
    widthMm: args.widthMm,
    heightMm: args.heightMm,
  });
}

function onSlab(doc: Doc, args: AddOpeningArgs): Cell[] {
  const slab = recordOf(doc, 'slab', args.on);
  const edge = slabEdge(doc, args);
  if (!slab || !edge) return [];
  const number = highestTag(doc, slab.floor, 'opening') + 1;
  const doorway = {
    kind: 'doorway',
    beyond: args.beyond ?? 'stop',
    heightMm: args.heightMm,
    tag: tagOf('opening', number),
  } as const;
  const place = (mm: number): Point => between(edge.start, edge.end, mm / edge.lengthMm);
  const startsAtCorner = args.atMm <= SAME_MM;
  const endsAtCorner = args.atMm + args.widthMm >= edge.lengthMm - SAME_MM;
  const corners: Corner[] = startsAtCorner
    ? [{ ...edge.from, edge: doorway }]
    : [edge.from, cornerAt(place(args.atMm), doorway)];
  if (!endsAtCorner) corners.push(cornerAt(place(args.atMm + args.widthMm), edge.from.edge));
  return [
    [args.on, 'outline', outlineOf(doc, args.on).toSpliced(args.edge, 1, ...corners)],
    [slab.floor, 'doorTags', number],
  ];
}

interface SlabEdge {
  readonly from: Corner;
  readonly start: Point;
  readonly end: Point;
  readonly lengthMm: number;
}

function slabEdge(doc: Doc, { on, edge }: AddOpeningArgs): SlabEdge | null {
  const outline = outlineOf(doc, on);
  const from = outline[edge];
  const to = outline[(edge + 1) % outline.length];
  if (!from || !to) return null;
  const start: Point = [from.x, from.y];
  const end: Point = [to.x, to.y];
  return { from, start, end, lengthMm: distance(start, end) };
}
