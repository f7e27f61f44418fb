import type { Cell, RecordId } from '../model/cell.ts';
import { recordOf } from '../model/doc.ts';
import type { Edge } from '../model/records/slab.ts';
import type { Command } from './command.ts';
import { outlineOf, usualBeyond, type Beyond, type EdgeKind } from './edges.ts';
import { highestTag, tagOf } from './tags.ts';

/** Changes several edges of one slab at once; what is not named stays. */
export type SetEdgeArgs = {
  readonly id: RecordId;
  readonly edges: readonly number[];
  readonly kind?: EdgeKind;
  readonly beyond?: Beyond;
  /** Clear height of a doorway; null: not measured. */
  readonly heightMm?: number | null;
};

export const setEdge: Command<SetEdgeArgs> = {
  name: 'setEdge',
  refuse(doc, args) {
    if (!recordOf(doc, 'slab', args.id)) return 'unknownRecord';
    const outline = outlineOf(doc, args.id);
    if (args.edges.length === 0 || args.edges.some((edge) => !outline[edge])) return 'unknownEdge';
    const closed = args.edges.some((edge) => {
      const kind = args.kind ?? outline[edge]?.edge.kind;
      return kind === 'wall' || kind === 'drop';
    });
    return args.beyond && closed ? 'nothingBeyond' : null;
  },
  write(doc, args) {
    const slab = recordOf(doc, 'slab', args.id);
    if (!slab) return [];
    const before = highestTag(doc, slab.floor, 'opening');
    let number = before;
    const outline = outlineOf(doc, args.id).map((corner, index) => {
      if (!args.edges.includes(index)) return corner;
      const edge = changed(corner.edge, args);
      if (edge.kind !== 'doorway' || edge.tag) return { ...corner, edge };
      number += 1;
      return { ...corner, edge: { ...edge, tag: tagOf('opening', number) } };
    });
    const cells: Cell[] = [[args.id, 'outline', outline]];
    if (number > before) cells.push([slab.floor, 'doorTags', number]);
    return cells;
  },
};

/** Only doorways have a height and a tag, only doorways and open edges something beyond. */
function changed(was: Edge, args: SetEdgeArgs): Edge {
  const kind = args.kind ?? was.kind;
  const sameKind = kind === was.kind;
  const beyond = args.beyond ?? (sameKind ? was.beyond : undefined) ?? usualBeyond(kind);
  const heightMm = args.heightMm === undefined ? was.heightMm : (args.heightMm ?? undefined);
  const { beyond: _beyond, heightMm: _height, tag, ...kept } = was;
  return {
    ...kept,
    kind,
    ...(beyond ? { beyond } : {}),
    ...(kind === 'doorway' && heightMm !== undefined ? { heightMm } : {}),
    ...(kind === 'doorway' && tag ? { tag } : {}),
  };
}
