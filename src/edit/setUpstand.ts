import type { Cell, RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';
import type { Command } from './command.ts';
import { outlineOf } from './edges.ts';

export type UpstandArgs = {
  readonly kind: 'stemWall' | 'kerb' | 'platformSide' | 'pitWall' | 'coveBase';
  readonly heightMm: number;
  readonly treat: 'keep' | 'remove' | 'prepare';
};

export type SetUpstandArgs = {
  /** A slab, with the edges that rise, or an obstruction: all its faces. */
  readonly id: RecordId;
  readonly edges?: readonly number[];
  /** Null takes it away. */
  readonly upstand: UpstandArgs | null;
};

export const setUpstand: Command<SetUpstandArgs> = {
  name: 'setUpstand',
  refuse(doc, { id, edges, upstand }) {
    if (upstand && !(upstand.heightMm > 0)) return 'noSize';
    if (recordOf(doc, 'obstruction', id)) return null;
    if (!recordOf(doc, 'slab', id)) return 'upstandNeedsEdge';
    const count = outlineOf(doc, id).length;
    const known = edges !== undefined && edges.length > 0 && edges.every((edge) => edge >= 0 && edge < count);
    return known ? null : 'unknownEdge';
  },
  write: (doc, args) =>
    recordOf(doc, 'slab', args.id) ? [onEdges(doc, args)] : [[args.id, 'upstand', args.upstand ?? undefined]],
};

function onEdges(doc: Doc, { id, edges, upstand }: SetUpstandArgs): Cell {
  const outline = outlineOf(doc, id).map((corner, index) => {
    if (!edges?.includes(index)) return corner;
    const { upstand: _was, ...edge } = corner.edge;
    return { ...corner, edge: upstand ? { ...edge, upstand } : edge };
  });
  return [id, 'outline', outline];
}
